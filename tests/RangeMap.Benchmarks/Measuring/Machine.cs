using System.Globalization;
using System.Runtime.InteropServices;

namespace RangeMap.Benchmarks;

/// <summary>Tells what the figures were measured on.</summary>
internal static class Machine
{
    private const string Processors = "/proc/cpuinfo";
    private const string Load = "/proc/loadavg";

    public static void Describe()
    {
        var kind = File.Exists(Processors)
            ? File.ReadLines(Processors).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[1].Trim()
            : null;
        var memory = GC.GetGCMemoryInfo().TotalAvailableMemoryBytes >> 30;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Environment.ProcessorCount} cores, {kind ?? "kind of processor not told"}, {memory} GB; {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.OSDescription}"));
        DescribeLoad();
    }

    /// <summary>Others on the machine lengthen wall times; the processor times beside them tell.</summary>
    public static void DescribeLoad()
    {
        if (File.Exists(Load))
            Console.WriteLine($"load average: {string.Join(' ', File.ReadAllText(Load).Split(' ')[..3])}");
    }
}
