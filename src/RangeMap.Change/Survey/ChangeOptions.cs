namespace RangeMap.Change;

/// <summary>How change is measured. The defaults are those that the methods' pages describe.</summary>
public sealed record ChangeOptions
{
    /// <summary>Number of draws behind an interval that is found by drawing again; at least 100.</summary>
    public int Draws { get; init; } = 500;

    /// <summary>Seed of the draws: the same survey and seed give the same numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>What the measures corrected for effort need, and their constants.</summary>
    public TrendOptions Trends { get; init; } = new();

    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    internal void ThrowIfOutOfRange()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Draws, 100);
        Trends.ThrowIfOutOfRange();
    }
}
