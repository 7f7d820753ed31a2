using System.Diagnostics;
using System.Globalization;

namespace RangeMap.Benchmarks;

/// <summary>Times of many short questions, a line each with their median and 99th percentile.</summary>
internal sealed class Latency(string what)
{
    private readonly List<double> _milliseconds = [];

    /// <summary>Asks once and takes the time.</summary>
    public T Ask<T>(Func<T> question)
    {
        var start = Stopwatch.GetTimestamp();
        var answer = question();
        _milliseconds.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        return answer;
    }

    public void Print()
    {
        var sorted = _milliseconds.Order().ToArray();
        var total = sorted.Sum();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: median {At(sorted, 0.5):0.0000} ms, 99th percentile {At(sorted, 0.99):0.0000} ms, longest {sorted[^1]:0.000} ms; {sorted.Length:N0} asked, {sorted.Length / total * 1000:N0} a second on one thread"));
    }

    private static double At(double[] sorted, double share) => sorted[Math.Min(sorted.Length - 1, (int)(sorted.Length * share))];
}
