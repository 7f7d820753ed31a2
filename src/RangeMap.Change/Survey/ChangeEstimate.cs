namespace RangeMap.Change;

/// <summary>
/// One measure of change of one taxon with its interval, or the reason why there is none: the three numbers are all present and
/// <see cref="Refused"/> is null, or they are all null and <see cref="Refused"/> is a sentence. In every method 0 means no change, so an
/// interval that leaves 0 out tells of a change, at the stated confidence and for that method alone.
/// </summary>
/// <param name="Taxon">Index of the taxon.</param>
/// <param name="Method">One of <see cref="ChangeMethods"/>.</param>
/// <param name="Unit">Unit of the numbers, such as <c>%</c>, <c>km</c> or <c>logit per decade</c>.</param>
/// <param name="N">Number of squares (or of visits, or taxa, as <see cref="Note"/> says) behind the numbers.</param>
public sealed record ChangeEstimate(int Taxon, string Method, string Unit, int N)
{
    /// <summary>The change.</summary>
    public double? Value { get; private init; }

    /// <summary>Lower end of the 95 % interval.</summary>
    public double? Low { get; private init; }

    /// <summary>Upper end of the 95 % interval.</summary>
    public double? High { get; private init; }

    /// <summary>The quantity in the earlier period, in the method's own measure; null where the method has none.</summary>
    public double? Before { get; init; }

    /// <summary>The quantity in the later period.</summary>
    public double? After { get; init; }

    /// <summary>
    /// Two-sided p-value of no change, in [0, 1], by the same reckoning as the interval: below 0.05 where that leaves 0 out. Null where
    /// the method has none.
    /// </summary>
    public double? P { get; init; }

    /// <summary>What to bear in mind when reading the numbers.</summary>
    public string? Note { get; init; }

    /// <summary>Why there are no numbers; null when there are.</summary>
    public string? Refused { get; private init; }

    /// <summary>True where the interval leaves 0 out.</summary>
    public bool TellsChange => Low > 0 || High < 0;

    internal static ChangeEstimate Of(int taxon, string method, string unit, int n, double value, Interval interval) =>
        double.IsFinite(value) && double.IsFinite(interval.Low) && double.IsFinite(interval.High)
            ? new(taxon, method, unit, n) { Value = value, Low = interval.Low, High = interval.High }
            : Refuse(taxon, method, unit, n, "The numbers leave the change without bounds, so none is given.");

    internal static ChangeEstimate Refuse(int taxon, string method, string unit, int n, string reason) => new(taxon, method, unit, n) { Refused = reason };
}
