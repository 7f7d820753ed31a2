using System.Globalization;

namespace RangeMap.Change.Tests.Size;

/// <summary>
/// The measures against invented ranges that do not change but for chance. The table of docs/methods/range-size.md is printed by the
/// explicit test.
/// </summary>
/// <remarks>
/// 40 by 60 squares of 10 km. A taxon lives in a square with a probability that falls off from the middle of its range; in each period every
/// patch of 50 km (laid askew to the blocks of the estimators) is better or worse for it by chance, so squares side by side are gained and lost
/// together. Records of an occupied square are Poisson; squares without a record are not known.
/// </remarks>
public class RangeSizeValidation(ITestOutputHelper output)
{
    private const int Columns = 40;
    private const int Rows = 60;
    private static readonly SurveySquare[] _board = Surveys.Board(Columns, Rows);

    [Fact]
    public void NineIntervalsInTenHoldNoughtWhereNothingChanges()
    {
        var survey = World(new(), taxa: 100, seed: 1);
        foreach (var (method, holding, given, _) in Holding(survey, _ => 0))
            Assert.True(given >= 60 && holding >= 0.88 * given, $"{method}: {holding} of {given} intervals hold 0");
    }

    [Fact]
    public void FourTimesTheRecordsMoveNoLevelledMargin()
    {
        var survey = World(new() { RecordsBefore = 0.5, RecordsAfter = 2 }, taxa: 100, seed: 2);
        foreach (var (method, holding, given, _) in Holding(survey, _ => 0).Where(row => row.Method.StartsWith("margin", StringComparison.Ordinal)))
            Assert.True(given >= 50 && holding >= 0.88 * given, $"{method}: {holding} of {given} intervals hold 0");
    }

    [Theory(Explicit = true)]
    [InlineData(0, 20, 20, 0, 1)]
    [InlineData(1, 20, 20, 0, 1)]
    [InlineData(2, 20, 20, 0, 1)]
    [InlineData(1, 0.5, 0.5, 0, 1)]
    [InlineData(1, 0.5, 2, 0, 1)]
    [InlineData(1, 20, 20, 60, 1)]
    [InlineData(1, 0.5, 2, 60, 1)]
    [InlineData(1, 20, 20, 0, 0.84)]
    [InlineData(1, 0.5, 0.5, 0, 0.84)]
    public void PrintTheTable(double patchiness, double before, double after, double northKm, double radius)
    {
        var survey = World(new() { Patchiness = patchiness, RecordsBefore = before, RecordsAfter = after, NorthKm = northKm, Radius = radius }, taxa: 400, seed: 3);
        double Truth(string method) => method switch
        {
            ChangeMethods.MarginNorth or ChangeMethods.MarginGamma or ChangeMethods.Centroid => northKm,
            ChangeMethods.MarginSouth => -northKm,
            ChangeMethods.Squares or ChangeMethods.SquaresBoth or ChangeMethods.SquaresSurveyed or ChangeMethods.Extent or ChangeMethods.OccupancyArea => 100 * (radius * radius - 1),
            _ => 0,
        };
        foreach (var (method, holding, given, telling) in Holding(survey, Truth))
        {
            var world = string.Create(CultureInfo.InvariantCulture, $"{patchiness}, {before}, {after}, {northKm}, {radius}");
            var shares = string.Create(CultureInfo.InvariantCulture, $"{100.0 * holding / Math.Max(1, given):0} % of {given} | {100.0 * telling / Math.Max(1, given):0} %");
            output.WriteLine($"| {world} | {method} | {shares} |");
        }
    }

    private static IEnumerable<(string Method, int Holding, int Given, int Telling)> Holding(GroupSurvey survey, Func<string, double> truth) =>
        Enumerable.Range(0, survey.Taxa).SelectMany(taxon => RangeSizeChange.Measure(survey, taxon, new())).GroupBy(estimate => estimate.Method).Select(method =>
        {
            var given = method.Where(estimate => estimate.Refused is null).ToList();
            return (method.Key, given.Count(e => e.Low <= truth(method.Key) && truth(method.Key) <= e.High), given.Count, given.Count(e => e.TellsChange));
        });

    private static GroupSurvey World(Kind kind, int taxa, ulong seed)
    {
        var (before, after) = (new List<(int, int, int)>(), new List<(int, int, int)>());
        for (var taxon = 0; taxon < taxa; taxon++)
        {
            var chance = new Pcg(seed, (ulong)taxon);
            var (x, y, radius) = (200 + 400 * chance.NextUnit(), 100 + 600 * chance.NextUnit(), 80 + 150 * chance.NextUnit());
            // A range that moves must not run against the northern or southern edge of the board.
            if (kind.NorthKm > 0)
                (y, radius) = (370, 80 + 0.4 * (radius - 80));
            AddPeriod(before, taxon, new(x, y), radius, kind.Patchiness, kind.RecordsBefore, ref chance);
            AddPeriod(after, taxon, new(x, y + kind.NorthKm), radius * kind.Radius, kind.Patchiness, kind.RecordsAfter, ref chance);
        }

        return Surveys.Visited(_board, taxa, before, after);
    }

    private static void AddPeriod(List<(int, int, int)> finds, int taxon, PlanePoint middle, double radius, double patchiness, double records, ref Pcg chance)
    {
        var patches = new double[(Columns / 5 + 1) * (Rows / 5 + 1)];
        for (var patch = 0; patch < patches.Length; patch++)
            patches[patch] = patchiness * chance.NextNormal();
        for (var square = 0; square < _board.Length; square++)
        {
            var patch = (square % Columns + 2) / 5 * (Rows / 5 + 1) + (square / Columns + 3) / 5;
            var logit = 8 * (1 - PlanePoint.Km(_board[square].Centre, middle) / radius) + patches[patch];
            if (!chance.NextChance(1 / (1 + Math.Exp(-logit))))
                continue;
            var number = Poisson(records, ref chance);
            if (number > 0)
                finds.Add((square, taxon, number));
        }
    }

    private static int Poisson(double mean, ref Pcg chance)
    {
        var (number, product, limit) = (0, chance.NextUnit(), Math.Exp(-mean));
        for (; product > limit; number++)
            product *= chance.NextUnit();
        return number;
    }

    /// <summary>What a world is like.</summary>
    private sealed record Kind
    {
        /// <summary>Standard deviation, in logits, of how good a patch is in a period.</summary>
        public double Patchiness { get; init; } = 1;

        /// <summary>Mean records of an occupied square in the earlier period.</summary>
        public double RecordsBefore { get; init; } = 20;

        /// <summary>Mean records of an occupied square in the later period.</summary>
        public double RecordsAfter { get; init; } = 20;

        /// <summary>How far every range moves north.</summary>
        public double NorthKm { get; init; }

        /// <summary>Radius of every range in the later period by that in the earlier.</summary>
        public double Radius { get; init; } = 1;
    }
}
