using RangeMap.Grids;

namespace RangeMap.Store;

/// <summary>Which records of a taxon that is split belong to one of its parts. All that is given must hold; a rule without conditions takes the rest.</summary>
/// <param name="ToTaxonId">taxonID of the part.</param>
public sealed record SplitRule(string ToTaxonId)
{
    /// <summary>Squares, in one of which the record's own must wholly lie; null for anywhere.</summary>
    public IReadOnlyList<Square>? Within { get; init; }

    /// <summary>First day that the record may be of; all its possible days must be this or later.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Last day that the record may be of; all its possible days must be this or earlier.</summary>
    public DateOnly? To { get; init; }

    /// <summary>Stage or caste, as the record has it.</summary>
    public string? Stage { get; init; }

    /// <summary>Sex, as the record has it.</summary>
    public string? Sex { get; init; }
}

/// <summary>A rename, merge or split of a taxon.</summary>
public sealed record TaxonChange
{
    /// <summary>Its number.</summary>
    public long Number { get; init; }

    /// <summary>rename, merge or split.</summary>
    public string Kind { get; init; } = "";

    /// <summary>taxonID of the taxon that was changed.</summary>
    public string TaxonId { get; init; } = "";

    /// <summary>Its name now.</summary>
    public string TaxonName { get; init; } = "";

    /// <summary>When, ISO 8601 in UTC.</summary>
    public string MadeAt { get; init; } = "";

    /// <summary>Who.</summary>
    public string MadeBy { get; init; } = "";

    /// <summary>Why.</summary>
    public string Reason { get; init; } = "";

    /// <summary>What was done, a sentence.</summary>
    public string Words { get; init; } = "";

    /// <summary>The decision by which records were identified afresh; null where none were.</summary>
    public long? DecisionSet { get; init; }

    /// <summary>When it was taken back, ISO 8601 in UTC; null while it counts.</summary>
    public string? UndoneAt { get; init; }

    internal string Before { get; init; } = "[]";
}

/// <summary>What a change of a taxon did.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Words">What was done, a sentence.</param>
/// <param name="Records">Records that were identified afresh.</param>
/// <param name="DecidedLater">Of an undo: records on which somebody decided later; they were left alone.</param>
public sealed record TaxonChangeAnswer(long Number, string Words, int Records, int DecidedLater = 0);
