namespace RangeMap.Change;

/// <summary>How fast the boundary moved within one sector of bearings.</summary>
/// <param name="Bearing">Middle of the sector, degrees clockwise from grid north.</param>
/// <param name="N">Squares in the sector.</param>
public sealed record SectorSpeed(double Bearing, int N)
{
    /// <summary>Kilometres per year, or per <see cref="SpreadOptions.TimeUnit"/>; null when refused.</summary>
    public double? KmPerYear { get; init; }

    /// <summary>Lower end of the interval, same unit.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of the interval, same unit.</summary>
    public double? High { get; init; }

    /// <summary>Farthest distance reached, km; null without squares.</summary>
    public double? FarthestKm { get; init; }

    /// <summary>When the boundary last moved; well before the last year where the sector is full or ends at a coast.</summary>
    public double? LastAdvance { get; init; }

    /// <summary>Why there is no speed; null when there is one.</summary>
    public string? Refused { get; init; }
}
