using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>Kilometres from land of a square that lies wholly in the sea; null when it touches land, or where the coast is not known.</summary>
public delegate double? KmAtSea(Square square);

/// <summary>
/// Kilometres by which a square lies further out than the line that 99 in 100 arrivals stay behind, on a day, in the forecast of
/// a taxon's moving front; null or less than 0 when it does not, or when there is no forecast. Should answer at once for a taxon without one.
/// </summary>
public delegate double? KmAheadOfFront(Taxon taxon, Square square, DateOnly day);

/// <summary>The name of the town whose centre, as a gazetteer gives it, is exactly this point; null if there is none.</summary>
public delegate string? TownAt(LatLon point);

/// <summary>Named regions, for known areas. Answers may be slow: they are remembered.</summary>
public interface IKnownAreas
{
    /// <summary>Kilometres from the nearest edge of a square to a region; 0 when they touch; null when the name is not known.</summary>
    double? KmOutside(string area, Square square);

    /// <summary>True when a square lies wholly in a region; null when the name is not known.</summary>
    bool? Covers(string area, Square square);
}

/// <summary>What checks may ask beside the record. A check whose answer is missing here stays silent.</summary>
public sealed record CheckContext
{
    /// <summary>From when on something is in doubt.</summary>
    public CheckLimits Limits { get; init; } = CheckLimits.Default;

    /// <summary>The taxon list, for the names of confusable taxa and aggregates.</summary>
    public TaxonList Taxa { get; init; } = TaxonList.Empty;

    /// <summary>How far out at sea a square lies.</summary>
    public KmAtSea? Sea { get; init; }

    /// <summary>True for a square of 10 km without any sea; spares the question how far out its small squares lie.</summary>
    public Func<Square, bool>? HasNoSea { get; init; }

    /// <summary>Named regions.</summary>
    public IKnownAreas? Areas { get; init; }

    /// <summary>The name of the island on which a square wholly lies; null for the mainland and the sea.</summary>
    public Func<Square, string?>? IslandOf { get; init; }

    /// <summary>The forecast front of arriving species.</summary>
    public KmAheadOfFront? Front { get; init; }

    /// <summary>Centres of towns.</summary>
    public TownAt? Town { get; init; }

    /// <summary>Other records of a record's recorder on its day; used for words alone, not on import.</summary>
    public Func<Record, IEnumerable<Record>>? OthersOfDay { get; init; }
}
