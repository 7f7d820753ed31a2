using System.Diagnostics;
using System.Globalization;
using RangeMap.Change;

namespace RangeMap.Benchmarks;

/// <summary>All measures of change, those corrected for effort and those of size and margins: 3,000 taxa, 3,000 squares, two periods, 20 visits a square and period, lists of 10 to 20 taxa.</summary>
internal static class MeasureChange
{
    private const int Side = 60;
    private const int Squares = 3_000;
    private const int Taxa = 3_000;
    private const int Visits = 20;

    public static async Task RunAsync()
    {
        var survey = Survey();
        var (before, clock) = (GC.GetTotalMemory(true), Stopwatch.StartNew());
        var prepared = ChangeMeasures.Prepare(survey, new());
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"prepare: {clock.Elapsed.TotalSeconds:0.00} s, keeps {(GC.GetTotalMemory(true) - before) / 1e6:0} MB; the survey itself {before / 1e6:0} MB"));
        clock.Restart();
        for (var taxon = 0; taxon < 100; taxon++)
            prepared.Of(taxon);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"one taxon: {clock.Elapsed.TotalMilliseconds / 100:0.0} ms, mean of 100"));

        IReadOnlyList<ChangeEstimate> all = [];
        var timing = await Timing.OfAsync("change, all taxa", () => Task.FromResult(all = All(survey)));
        timing.Print(Taxa, "taxa");
        foreach (var method in all.GroupBy(estimate => estimate.Method))
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {method.Key}: {method.Count(estimate => estimate.Refused is null)} of {method.Count()} given"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  most memory of the process {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB"));
    }

    private static List<ChangeEstimate> All(GroupSurvey survey)
    {
        var measures = ChangeMeasures.Prepare(survey, new());
        var ofTaxon = new IReadOnlyList<ChangeEstimate>[survey.Taxa];
        Parallel.For(0, ofTaxon.Length, taxon => ofTaxon[taxon] = measures.Of(taxon));
        return [.. ofTaxon.SelectMany(estimates => estimates)];
    }

    private static GroupSurvey Survey()
    {
        var chance = new Random(1);
        SurveySquare[] squares = [.. Enumerable.Range(0, Squares).Select(i => SurveySquare.Upright(i % Side * 10, i / Side * 10, 10))];
        var living = Living(squares, chance);
        return new(squares, Taxa, [Period("1990/1999", 1990, living, chance), Period("2010/2019", 2010, living, chance)]);
    }

    /// <summary>The taxa of each square: every taxon has a disc for its range.</summary>
    private static int[][] Living(SurveySquare[] squares, Random chance)
    {
        var ranges = Enumerable.Range(0, Taxa).Select(_ => (Middle: new PlanePoint(600 * chance.NextDouble(), 500 * chance.NextDouble()), Km: 20 + 180 * chance.NextDouble())).ToArray();
        return Array.ConvertAll(squares, square => Enumerable.Range(0, Taxa).Where(taxon => PlanePoint.Km(ranges[taxon].Middle, square.Centre) < ranges[taxon].Km).ToArray());
    }

    private static SurveyPeriod Period(string label, int first, int[][] living, Random chance)
    {
        var visits = new List<(int Square, int Day, int Recorder, int[] Taxa)>();
        for (var square = 0; square < Squares; square++)
        {
            for (var visit = 0; visit < Visits; visit++)
            {
                var list = Enumerable.Range(0, 10 + chance.Next(11)).Select(_ => living[square][(int)(living[square].Length * chance.NextDouble() * chance.NextDouble())]).Distinct().ToArray();
                visits.Add((square, new DateOnly(first + chance.Next(10), 5 + chance.Next(4), 1 + chance.Next(28)).DayNumber, 1 + chance.Next(500), list));
            }
        }

        var finds = visits.SelectMany(visit => visit.Taxa.Select(taxon => (visit.Square, taxon, 1)));
        return new(label, first, first + 9, FoundTable.Of(Squares, Taxa, finds), VisitTable.Of(Squares, visits));
    }
}
