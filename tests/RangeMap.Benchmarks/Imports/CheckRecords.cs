using System.Globalization;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Benchmarks;

/// <summary>
/// What the checks add to each row: invented records in visits of five rows, of 3,000 taxa, of which every second has a season, lengths
/// and evidence in the list. A million for the checks of a record by itself, as many as asked for the comparison.
/// </summary>
internal static class CheckRecords
{
    private const int Measured = 1_000_000;
    private const int RowsOfVisit = 5;

    public static async Task RunAsync(long rows)
    {
        var taxa = Enumerable.Range(0, 3000).Select(Taxon).ToArray();
        var recorders = Enumerable.Range(0, 3000).Select(i => string.Create(CultureInfo.InvariantCulture, $"Recorder {i}")).ToArray();
        var records = Enumerable.Range(0, Measured).Select(i => Record(i, taxa, recorders)).ToArray();
        var checks = new RecordChecks(new CheckContext { Sea = square => square.Northing < 20_000 ? 5 : null, Taxa = new TaxonList(taxa) });
        var byRow = await Timing.OfAsync("checks of a record by itself", () => Run(records, record => checks.FindByList(record) | checks.FindByPlace(record)));
        byRow.Print(Measured, "records");
        PrintNanoseconds(byRow);

        FileChecks? compared = null;
        long bytes = 0;
        long sum = 0;
        void Generate()
        {
            for (var i = 0L; i < rows; i++)
                sum += Compared(i, taxa, recorders).GetHashCode();
        }

        void Begin()
        {
            compared = null;
            bytes = GC.GetTotalMemory(forceFullCollection: true);
            compared = new(new CheckContext());
        }

        void Compare()
        {
            for (var i = 0L; i < rows; i++)
                compared!.Prime(Compared(i, taxa, recorders));
        }

        var alone = await Timing.OfAsync("making the rows alone", () => Done(Generate));
        var together = await Timing.OfAsync("making and comparing them", () => Done(Compare), Begin);
        bytes = GC.GetTotalMemory(forceFullCollection: true) - bytes;
        alone.Print(rows, "records");
        together.Print(rows, "records");
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  {(together.MedianWall - alone.MedianWall) / rows * 1e9:0} ns a record to compare (processor {(together.MedianCpu - alone.MedianCpu) / rows * 1e9:0}); state {bytes / 1e6:N0} MB, {bytes / (double)rows:0.0} bytes a record"));
        GC.KeepAlive((compared, sum));
    }

    private static Task Done(Action work)
    {
        work();
        return Task.CompletedTask;
    }

    private static void PrintNanoseconds(Timing timing) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {timing.MedianWall / Measured * 1e9:0} ns a record"));

    private static Task Run(Record[] records, Func<Record, Doubts> find)
    {
        long found = 0;
        foreach (var record in records)
            found += find(record) == Doubts.None ? 0 : 1;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {found:N0} in doubt"));
        return Task.CompletedTask;
    }

    private static Taxon Taxon(int i) => new(string.Create(CultureInfo.InvariantCulture, $"t{i}"), string.Create(CultureInfo.InvariantCulture, $"Inventa exempla{i}"))
    {
        Notes = i % 2 == 0
            ? new Dictionary<string, string>()
            : new Dictionary<string, string> { ["season"] = "queen 1-53; worker 16-44", ["lengthMm"] = "worker 11-17", ["stages"] = "queen; worker; male", ["evidence"] = "specimen" },
    };

    private static ComparedRecord Compared(long i, Taxon[] taxa, string[] recorders)
    {
        var (visit, square, day) = Visit(i);
        return new((UInt128)i, taxa[(int)(Mixed(i) % 3000)].Id, square.Code, DayRange.Day(day), recorders[(int)(Mixed(visit + 7) % 3000)], null, null, true);
    }

    private static Record Record(int i, Taxon[] taxa, string[] recorders)
    {
        var (visit, square, day) = Visit(i);
        return new()
        {
            Row = i + 1,
            Key = (UInt128)i,
            Content = 0,
            Taxon = taxa[(int)(Mixed(i) % 3000)],
            Square = square,
            Dates = DayRange.Day(day),
            Recorder = recorders[(int)(Mixed(visit + 7) % 3000)],
        };
    }

    /// <summary>Recorders stay within 100 km; visits fall on any day of 50 years.</summary>
    private static (long Visit, Square Square, DateOnly Day) Visit(long i)
    {
        var visit = i / RowsOfVisit;
        var home = Mixed(visit + 7) % 3000;
        var square = new Square(GridId.British, SquareSize.Km1, (int)(200 + home % 300 + Mixed(visit) % 100) * 1000, (int)(home / 10 + Mixed(visit + 3) % 100) * 1000);
        return (visit, square, new DateOnly(1970, 1, 2).AddDays((int)(Mixed(visit + 1) % 18_250)));
    }

    private static ulong Mixed(long i)
    {
        var z = (ulong)i * 0x9E3779B97F4A7C15;
        z = (z ^ z >> 29) * 0xBF58476D1CE4E5B9;
        return z ^ z >> 32;
    }
}
