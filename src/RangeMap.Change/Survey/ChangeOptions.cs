namespace RangeMap.Change;

/// <summary>How change is measured. The defaults are those that the methods' pages describe.</summary>
public sealed record ChangeOptions
{
    /// <summary>Number of draws behind an interval that is found by drawing again; at least 100.</summary>
    public int Draws { get; init; } = 200;

    /// <summary>Seed of the draws: the same survey and seed give the same numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Side of a square, km; more than 0.</summary>
    public double SquareSideKm { get; init; } = 10;

    /// <summary>Side, in squares, of the blocks that count as independent of each other: neighbouring squares share ground and recorders. At least 1; even.</summary>
    public int BlockSquares { get; init; } = 4;

    /// <summary>Visits that a well surveyed square has at least.</summary>
    public int WellSurveyedVisits { get; init; } = 5;

    /// <summary>Sample coverage of lists that a well surveyed square has at least, 0 to 1.</summary>
    public double WellSurveyedCoverage { get; init; } = 0.75;

    /// <summary>Occupied squares, in the two periods together, below which no change of size is given.</summary>
    public int LeastSquares { get; init; } = 10;

    /// <summary>Occupied squares in each period below which no margin is given.</summary>
    public int LeastMarginSquares { get; init; } = 20;

    /// <summary>Taxa of a group below which the relative index is not given.</summary>
    public int LeastTaxaOfIndex { get; init; } = 20;

    /// <summary>Squares in the earlier period below which a taxon has no relative index.</summary>
    public int LeastSquaresOfIndex { get; init; } = 5;

    /// <summary>Taxa of a group below which neighbourhood frequencies are not scaled.</summary>
    public int LeastTaxaOfNeighbourhood { get; init; } = 50;

    /// <summary>Squares below which neighbourhood frequencies are not scaled.</summary>
    public int LeastSquaresOfNeighbourhood { get; init; } = 100;

    /// <summary>Visits with the taxon, and visits without it, below which visits tell no trend.</summary>
    public int LeastVisits { get; init; } = 20;

    /// <summary>Squares visited at least twice in a period below which detection cannot be told from occupancy.</summary>
    public int LeastRepeatedSquares { get; init; } = 20;

    /// <summary>Where land ends, so that a margin at the coast is recognised; null where it is not known.</summary>
    public LandExtent? Land { get; init; }

    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    internal void ThrowIfOutOfRange()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Draws, 100);
        ArgumentOutOfRangeException.ThrowIfLessThan(BlockSquares, 1);
        ArgumentOutOfRangeException.ThrowIfNotEqual(BlockSquares % 2, 0, nameof(BlockSquares));
        ArgumentOutOfRangeException.ThrowIfLessThan(WellSurveyedVisits, 1);
        if (!(SquareSideKm > 0) || !(WellSurveyedCoverage is >= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(SquareSideKm), "The side must be more than 0 and the coverage between 0 and 1.");
    }
}

/// <summary>The outermost land of the country, km on the plane of the survey.</summary>
/// <param name="North">Northing of its northern end.</param>
/// <param name="South">Northing of its southern end.</param>
/// <param name="East">Easting of its eastern end.</param>
/// <param name="West">Easting of its western end.</param>
public sealed record LandExtent(double North, double South, double East, double West);
