namespace RangeMap.Change;

/// <summary>How change is measured. The defaults are those that the methods' pages describe.</summary>
public sealed record ChangeOptions
{
    /// <summary>Number of draws behind an interval that is found by drawing again; at least 100.</summary>
    public int Draws { get; init; } = 500;

    /// <summary>Seed of the draws: the same survey and seed give the same numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Visits in a period below which a square is not well surveyed; at least 1 (docs/methods/effort.md, eq. 6).</summary>
    public int WellSurveyedVisits { get; init; } = 5;

    /// <summary>Coverage of the lists of a period below which a square is not well surveyed; in [0, 1).</summary>
    public double WellSurveyedCoverage { get; init; } = 0.75;

    /// <summary>Side of the blocks that are drawn as a whole, in sides of a square; at least 1.</summary>
    public int BlockSquares { get; init; } = 10;

    /// <summary>Width of the strips that are drawn as a whole for margins, in sides of a square; at least 1.</summary>
    public int StripSquares { get; init; } = 6;

    /// <summary>Draws of blocks or strips behind a standard error; at least 100.</summary>
    public int BlockDraws { get; init; } = 200;

    /// <summary>Blocks, or strips, that must hold the taxon for an interval; at least 2.</summary>
    public int MinimumBlocks { get; init; } = 4;

    /// <summary>Squares of the earlier period below which no percentage is given; at least 1.</summary>
    public int MinimumSquares { get; init; } = 5;

    /// <summary>Squares of each period below which no margin is given; at least 10, for the mean of ten.</summary>
    public int MinimumMarginSquares { get; init; } = 20;

    /// <summary>Share of the occupied squares that lie behind the gamma margin, in (0, 1).</summary>
    public double MarginQuantile { get; init; } = 0.95;

    /// <summary>Direction in which the gamma margin looks: degrees clockwise from grid north, in [0, 360).</summary>
    public double MarginBearing { get; init; }

    /// <summary>Middles of all squares with land, on the plane of the survey; null when not known. With them a margin at the coast is told.</summary>
    public IReadOnlyList<PlanePoint>? LandSquares { get; init; }

    /// <summary>What the measures corrected for effort need, and their constants.</summary>
    public TrendOptions Trends { get; init; } = new();

    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    internal void ThrowIfOutOfRange()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Draws, 100);
        ArgumentOutOfRangeException.ThrowIfLessThan(WellSurveyedVisits, 1);
        Require(WellSurveyedCoverage is >= 0 and < 1, nameof(WellSurveyedCoverage), WellSurveyedCoverage);
        ArgumentOutOfRangeException.ThrowIfLessThan(BlockSquares, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(StripSquares, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(BlockDraws, 100);
        ArgumentOutOfRangeException.ThrowIfLessThan(MinimumBlocks, 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(MinimumSquares, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(MinimumMarginSquares, 10);
        Require(MarginQuantile is > 0 and < 1, nameof(MarginQuantile), MarginQuantile);
        Require(MarginBearing is >= 0 and < 360, nameof(MarginBearing), MarginBearing);
        Trends.ThrowIfOutOfRange();
    }

    private static void Require(bool holds, string name, double value)
    {
        if (!holds)
            throw new ArgumentOutOfRangeException(name, value, "This value of the options of change is out of its range.");
    }
}
