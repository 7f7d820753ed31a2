using System.Runtime.CompilerServices;
using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>What all taxa of a survey share when their ranges are measured: middles of squares, where recorders looked, blocks and their draws.</summary>
internal sealed class SurveyFrame
{
    private static readonly ConditionalWeakTable<GroupSurvey, Prepared> _prepared = [];
    private readonly double[] _student;

    private SurveyFrame(GroupSurvey survey, ChangeOptions options)
    {
        (Survey, Options) = (survey, options);
        var centres = survey.Squares.Select(square => square.Centre).ToArray();
        (X, Y) = (Array.ConvertAll(centres, c => c.X), Array.ConvertAll(centres, c => c.Y));
        SideKm = Math.Sqrt(survey.Squares.Select(square => square.AreaKm2).DefaultIfEmpty(1).Average());
        var draws = new BlockDraws(options.BlockDraws, options.Seed);
        Tiles = SquareBlocks.Tiles(X, Y, SideKm, options.BlockSquares, draws);
        Cells = OccupancyCells.Of(X, Y, SideKm);
        Margins = [.. MarginAxis.Four.Append(MarginAxis.At(options.MarginBearing)).Select(axis => new MarginFrame(axis, X, Y, SideKm, options, draws))];
        var (before, after) = (EffortTable.Of(survey, From, options), EffortTable.Of(survey, To, options));
        SurveyedBoth = [.. Enumerable.Range(0, X.Length).Select(square => before[square].Surveyed && after[square].Surveyed)];
        WellSurveyedBoth = [.. Enumerable.Range(0, X.Length).Select(square => before[square].WellSurveyed && after[square].WellSurveyed)];
        (Before, After) = (EffortSummary.Of(From, before), EffortSummary.Of(To, after));
        Thinned = new(Math.Max(Before.Records, After.Records), Math.Min(Before.Records, After.Records));
        _student = new double[Tiles.Count + 1];
    }

    public GroupSurvey Survey { get; }

    public ChangeOptions Options { get; }

    /// <summary>The earlier of the two periods that are compared.</summary>
    public SurveyPeriod From => Survey.Periods[0];

    /// <summary>The later of the two periods that are compared.</summary>
    public SurveyPeriod To => Survey.Periods[^1];

    /// <summary>Kilometres east of the middle of each square.</summary>
    public double[] X { get; }

    /// <summary>Kilometres north of the middle of each square.</summary>
    public double[] Y { get; }

    /// <summary>Side of a square of the mean area, km.</summary>
    public double SideKm { get; }

    /// <summary>Blocks of squares for what is measured all over the map.</summary>
    public SquareBlocks Tiles { get; }

    /// <summary>How squares lie in larger cells, for the area of occupancy.</summary>
    public OccupancyCells Cells { get; }

    /// <summary>The four margins, north, south, east and west, and the gamma margin's direction last.</summary>
    public MarginFrame[] Margins { get; }

    /// <summary>Squares surveyed in both periods.</summary>
    public bool[] SurveyedBoth { get; }

    /// <summary>Squares well surveyed in both periods.</summary>
    public bool[] WellSurveyedBoth { get; }

    /// <summary>The effort of the earlier period.</summary>
    public EffortSummary Before { get; }

    /// <summary>The effort of the later period.</summary>
    public EffortSummary After { get; }

    /// <summary>How the better recorded period is thinned to as many records as the other has.</summary>
    public KeptShares Thinned { get; }

    /// <summary>
    /// The frame of a survey, or why nothing can be measured from it. What was made last is kept as long as the survey lives, since
    /// thousands of taxa ask for it one after another with the same options.
    /// </summary>
    public static (SurveyFrame? Frame, string? Fault) For(GroupSurvey survey, ChangeOptions options)
    {
        if (!_prepared.TryGetValue(survey, out var made) || made.Options != options)
        {
            var fault = FaultOf(survey);
            made = new(options, fault is null ? new(survey, options) : null, fault);
            _prepared.AddOrUpdate(survey, made);
        }

        return (made.Frame, made.Fault);
    }

    /// <summary>Student's t at 97.5 % with one degree of freedom less than there are blocks.</summary>
    /// <param name="blocks">At least 2.</param>
    public double Student(int blocks)
    {
        // Threads that come at once write the same number.
        ref var known = ref _student[Math.Min(blocks, _student.Length - 1)];
        return known > 0 ? known : known = StudentT.InvCDF(0, 1, blocks - 1, 0.975);
    }

    private static string? FaultOf(GroupSurvey survey) =>
        survey.Periods.Count < 2 ? SizeWords.OnePeriod
        : survey.Squares.Any(square => !(square.AreaKm2 > 0 && double.IsFinite(square.AreaKm2 + square.Centre.X + square.Centre.Y))) ? SizeWords.NoPlace
        : null;

    private sealed record Prepared(ChangeOptions Options, SurveyFrame? Frame, string? Fault);
}
