namespace RangeMap.Change;

/// <summary>What is true in the simulated world, whoever looks or not.</summary>
public sealed class SimulatedTruth
{
    private readonly float[][] _abundance;
    private readonly float[][] _from;
    private readonly float[][] _until;

    internal SimulatedTruth(float[][] abundance, float[][] from, float[][] until) =>
        (_abundance, _from, _until) = (abundance, from, until);

    /// <summary>Cell at which the arriving species lands.</summary>
    public required int ArrivingPort { get; init; }

    /// <summary>Time at which the arriving species lands, years with a fraction.</summary>
    public required double ArrivingLands { get; init; }

    /// <summary>True speed of the arriving species, km a year.</summary>
    public required double ArrivingSpeed { get; init; }

    /// <summary>Cell at which the stalling species lands.</summary>
    public required int StallingPort { get; init; }

    /// <summary>Time from which the stalling species stands still.</summary>
    public required double Stalls { get; init; }

    /// <summary>Abundance of a species in a cell while it is there, 0 to 1; 0 where it never lives.</summary>
    public double Abundance(int species, int cell) => _abundance[species][cell];

    /// <summary>
    /// When a species reached a cell, years with a fraction; null where it never lives. A resident has always been there:
    /// negative infinity.
    /// </summary>
    public double? Arrival(int species, int cell) => _abundance[species][cell] > 0 ? _from[species][cell] : null;

    /// <summary>When a species was lost from a cell; null where it never was.</summary>
    public double? Loss(int species, int cell) =>
        _abundance[species][cell] > 0 && float.IsFinite(_until[species][cell]) ? _until[species][cell] : null;

    /// <summary>True when the species lives in the cell at a time, years with a fraction.</summary>
    public bool Present(int species, int cell, double time) =>
        _abundance[species][cell] > 0 && time >= _from[species][cell] && time < _until[species][cell];
}
