using System.Diagnostics;
using System.Globalization;

namespace RangeMap.Change.Tests;

/// <summary>How fast rows come; run when asked for, as time never fails a test.</summary>
public class SimulationSpeed(ITestOutputHelper output)
{
    [Fact(Explicit = true)]
    public void PrintTheRowsASecond()
    {
        var world = InventedIsland.World(3_000_000);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        var rows = world.Observations().LongCount();
        var visits = world.Observations().Last().Visit.Number + 1;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{2 * rows / watch.Elapsed.TotalSeconds:0} rows a second, {(GC.GetAllocatedBytesForCurrentThread() - before) / 1e6:0.0} MB allocated for {2 * rows} rows, {rows / (double)visits:0.0} rows a visit"));
        Assert.Equal(3_000_000, rows);
    }
}
