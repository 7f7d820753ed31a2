namespace RangeMap.Change;

/// <summary>How the arrival model is fitted. The defaults are those of docs/methods/arrival-surface.md.</summary>
public sealed record ArrivalOptions
{
    /// <summary>Knots of the smooth surface; 4 to 200. More follow finer detail and take longer.</summary>
    public int Knots { get; init; } = 60;

    /// <summary>Most rounds of fitting; at least 10.</summary>
    public int Rounds { get; init; } = 80;

    /// <summary>Draws of the surface behind intervals; at least 100.</summary>
    public int Draws { get; init; } = 200;

    /// <summary>Seed of the draws.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Chance that a visit before the arrival finds the species all the same: a stray, a mistake. In (0, 0.1).</summary>
    public double StrayRate { get; init; } = 0.001;

    /// <summary>Squares with a find below which nothing is fitted.</summary>
    public int LeastSquares { get; init; } = 30;

    /// <summary>Different years of first finds below which nothing is fitted.</summary>
    public int LeastYears { get; init; } = 6;

    /// <summary>True to find out how far the detection may be off, which only intervals of forecasts need; it takes as long as six rounds.</summary>
    public bool DetectionError { get; init; } = true;

    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    internal void ThrowIfOutOfRange()
    {
        if (Knots is < 4 or > 200 || Rounds < 10 || Draws < 100 || !(StrayRate is > 0 and < 0.1) || LeastSquares < 10 || LeastYears < 3)
            throw new ArgumentOutOfRangeException(nameof(ArrivalOptions), "Knots must be 4 to 200, rounds at least 10, draws at least 100, the stray rate between 0 and 0.1, and the minima at least 10 squares and 3 years.");
    }
}
