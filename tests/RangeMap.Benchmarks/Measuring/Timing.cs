using System.Diagnostics;
using System.Globalization;

namespace RangeMap.Benchmarks;

/// <summary>Wall and processor time of some runs of a long piece of work.</summary>
/// <param name="What">What was run.</param>
/// <param name="Wall">Seconds on the clock, a run each.</param>
/// <param name="Cpu">Seconds of processor time of the process that did the work, a run each.</param>
/// <param name="AllocatedMb">Megabytes allocated by one run; null for another program.</param>
internal sealed record Timing(string What, double[] Wall, double[] Cpu, double? AllocatedMb)
{
    public const int Runs = 3;

    public double MedianWall => Median(Wall);

    public double MedianCpu => Median(Cpu);

    /// <summary>Runs the work of this process some times, in its own set-up each time.</summary>
    public static async Task<Timing> OfAsync(string what, Func<Task> work, Action? before = null, int runs = Runs)
    {
        double[] wall = new double[runs], cpu = new double[runs];
        long allocated = 0;
        for (var i = 0; i < runs; i++)
        {
            before?.Invoke();
            var (bytes, used, clock) = (GC.GetTotalAllocatedBytes(), Environment.CpuUsage.TotalTime, Stopwatch.StartNew());
            await work();
            (wall[i], cpu[i]) = (clock.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - used).TotalSeconds);
            allocated = GC.GetTotalAllocatedBytes() - bytes;
        }

        return new(what, wall, cpu, allocated / 1e6);
    }

    /// <summary>Runs another program some times.</summary>
    public static Timing OfProgram(string what, string program, IReadOnlyList<string> arguments, Action before, int runs = Runs)
    {
        double[] wall = new double[runs], cpu = new double[runs];
        for (var i = 0; i < runs; i++)
        {
            before();
            var (used, clock) = (Machine.ChildrenSeconds(), Stopwatch.StartNew());
            using var process = Process.Start(new ProcessStartInfo(program, arguments))!;
            process.WaitForExit();
            (wall[i], cpu[i]) = (clock.Elapsed.TotalSeconds, Machine.ChildrenSeconds() - used);
        }

        return new(what, wall, cpu, null);
    }

    public void Print(double items = 0, string unit = "")
    {
        var rate = items > 0 ? string.Create(CultureInfo.InvariantCulture, $"; {items / MedianWall:N0} {unit}/s") : "";
        var allocated = AllocatedMb is { } mb ? string.Create(CultureInfo.InvariantCulture, $"; {mb:N0} MB allocated") : "";
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{What}: wall {Wall.Min():0.000} / {MedianWall:0.000} / {Wall.Max():0.000} s (min/median/max of {Wall.Length}), processor {MedianCpu:0.000} s{rate}{allocated}"));
    }

    /// <summary>This and further runs of the same.</summary>
    public Timing And(Timing more) => this with { Wall = [.. Wall, .. more.Wall], Cpu = [.. Cpu, .. more.Cpu] };

    /// <summary>Prints how this compares with a peer of the same run.</summary>
    public void PrintRatio(Timing peer) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture, $"  {What} takes {MedianWall / peer.MedianWall:0.00} x the wall time and {MedianCpu / peer.MedianCpu:0.00} x the processor time of {peer.What}"));

    private static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);
}
