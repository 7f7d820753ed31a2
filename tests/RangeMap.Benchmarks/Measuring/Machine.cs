using System.Globalization;
using System.Runtime.InteropServices;

namespace RangeMap.Benchmarks;

/// <summary>Tells what the figures were measured on.</summary>
internal static class Machine
{
    private const string Processors = "/proc/cpuinfo";
    private const string LoadFile = "/proc/loadavg";
    private const string References = "/proc/self/clear_refs";
    private const string Self = "/proc/self/stat";

    /// <summary>The kernel tells processor times in this unit on every machine that Linux runs on today (USER_HZ).</summary>
    private const double TicksPerSecond = 100;

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

    /// <summary>
    /// Processor time of all programs that this one ran to their end, by the fields 16 and 17 of /proc/self/stat (see proc(5)), which
    /// follow the bracket that ends the program's name as numbers 14 and 15. The .NET process class tells none after the end.
    /// </summary>
    public static double ChildrenSeconds()
    {
        var fields = File.ReadAllText(Self).Split(") ")[^1].Split(' ');
        return (double.Parse(fields[13], CultureInfo.InvariantCulture) + double.Parse(fields[14], CultureInfo.InvariantCulture)) / TicksPerSecond;
    }

    /// <summary>Others on the machine lengthen wall times; the processor times beside them tell.</summary>
    public static void DescribeLoad()
    {
        if (File.Exists(LoadFile))
            Console.WriteLine($"load average: {Load()}");
    }

    /// <summary>Load averages of the last one, five and fifteen minutes.</summary>
    public static string Load() => File.Exists(LoadFile) ? string.Join(' ', File.ReadAllText(LoadFile).Split(' ')[..3]) : "not told";

    /// <summary>Lets go of what is not used and begins anew to look for the most memory held (proc(5), clear_refs).</summary>
    public static void ForgetPeak()
    {
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        if (File.Exists(References))
            File.WriteAllText(References, "5");
    }

    /// <summary>The most memory that this process has held so far, or since <see cref="ForgetPeak"/>, megabytes.</summary>
    public static long PeakMb() => System.Diagnostics.Process.GetCurrentProcess().PeakWorkingSet64 >> 20;
}
