namespace RangeMap.Change;

/// <summary>What the simulated world is like. The defaults are those of the demonstration.</summary>
public sealed record SimulatedOptions
{
    /// <summary>Number of observations, at least 0.</summary>
    public long Rows { get; init; } = 300_000;

    /// <summary>First year of recording, 1900 to 2100.</summary>
    public int FirstYear { get; init; } = 1985;

    /// <summary>Number of years, 1 to 200.</summary>
    public int Years { get; init; } = 40;

    /// <summary>Recorders in the last year, at least 1; the first year has a seventh of them.</summary>
    public int Recorders { get; init; } = 400;

    /// <summary>Towns that recorders live near, at least 1.</summary>
    public int Towns { get; init; } = 60;

    /// <summary>The same seed gives the same world and the same stream, on every machine.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Years after the first in which the arriving species lands.</summary>
    public double LandingAfter { get; init; } = 16;

    /// <summary>True speed of the arriving species, km a year.</summary>
    public double ArrivingSpeed { get; init; } = 12;

    /// <summary>Standard deviation of the year in which a cell is reached, years.</summary>
    public double ArrivalDeviation { get; init; } = 1.2;

    /// <summary>True speed of the stalling species while it spreads, km a year.</summary>
    public double StallingSpeed { get; init; } = 14;

    /// <summary>Years after the first in which the stalling species lands.</summary>
    public double StallingLandsAfter { get; init; } = 4;

    /// <summary>Years after the first in which it stands still.</summary>
    public double StallsAfter { get; init; } = 19;

    /// <summary>Speed at which the southern limit of the retreating species moves north, km a year.</summary>
    public double RetreatSpeed { get; init; } = 6;

    /// <summary>Throws when a value lies outside the range stated on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Names the value.</exception>
    internal void ThrowIfOutOfRange()
    {
        ArgumentOutOfRangeException.ThrowIfNegative(Rows);
        ArgumentOutOfRangeException.ThrowIfLessThan(FirstYear, 1900);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(FirstYear, 2100);
        ArgumentOutOfRangeException.ThrowIfLessThan(Years, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Years, 200);
        ArgumentOutOfRangeException.ThrowIfLessThan(Recorders, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Towns, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ArrivingSpeed);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(StallingSpeed);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(RetreatSpeed);
        ArgumentOutOfRangeException.ThrowIfNegative(ArrivalDeviation);
    }
}
