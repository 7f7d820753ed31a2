namespace RangeMap.Records;

/// <summary>
/// Reasons to look at a record again, as found by the checks. The bits are stored and never change.
/// Codes, weights and titles stand in <see cref="DoubtCatalogue"/>.
/// </summary>
[Flags]
public enum Doubts
{
    /// <summary>No reason.</summary>
    None = 0,

    /// <summary>Grid reference and coordinates disagree by more than their precisions.</summary>
    PlacesDisagree = 1 << 0,

    /// <summary>Latitude and longitude look exchanged and were read in the other order.</summary>
    CoordinatesSwapped = 1 << 1,

    /// <summary>The uncertainty was not stated and is taken from the decimals given.</summary>
    UncertaintyAssumed = 1 << 2,

    /// <summary>The name carries a qualifier such as cf. or a question mark, or differs from the taxonID beside it.</summary>
    NameUncertain = 1 << 3,

    /// <summary>Dated before the taxon's first known year.</summary>
    BeforeFirstYear = 1 << 4,

    /// <summary>The count is zero although the row does not say that the taxon was absent.</summary>
    CountZero = 1 << 5,

    /// <summary>The same row stands in the file more than once.</summary>
    RepeatedRow = 1 << 6,

    /// <summary>The place lies in the sea, further out than its precision.</summary>
    AtSea = 1 << 7,

    /// <summary>Dated outside the weeks in which this stage is known.</summary>
    OutOfSeason = 1 << 8,

    /// <summary>The position in the file's own datum was not stated or not known and was taken as WGS84.</summary>
    DatumAssumed = 1 << 9,

    /// <summary>The date and the year, month and day given beside it have no day in common; the date counts.</summary>
    DatesDisagree = 1 << 10,

    /// <summary>The length lies outside the range that the taxon list gives for the sex, caste or stage.</summary>
    LengthOutOfRange = 1 << 11,

    /// <summary>The taxon has no such stage or caste, or the sex cannot be that of the caste.</summary>
    StageImpossible = 1 << 12,

    /// <summary>The place lies outside the area from which the taxon is known.</summary>
    OutsideKnownArea = 1 << 13,

    /// <summary>Another record has the same taxon, place, day and recorder.</summary>
    DuplicateRecord = 1 << 14,

    /// <summary>The recorder was at two places far from each other on one day.</summary>
    TwoFarPlaces = 1 << 15,

    /// <summary>The taxon is easily confused, and the evidence that the list asks for is not stated.</summary>
    EvidenceMissing = 1 << 16,

    /// <summary>The place lies further ahead of the species' moving front than 99 in 100 arrivals are expected to.</summary>
    AheadOfFront = 1 << 17,

    /// <summary>The date is one that programs fill in where none was known.</summary>
    DateDefault = 1 << 18,

    /// <summary>The place is one that people fill in where none was known, such as the middle of a town.</summary>
    PlaceDefault = 1 << 19,

    /// <summary>The dates under one recorder's name span more years than a person records.</summary>
    RecorderImplausible = 1 << 20,

    /// <summary>The stated stage is not about in that week and another one is.</summary>
    StageAgainstDate = 1 << 21,

    /// <summary>The taxon, place or date changed after somebody had decided on the record.</summary>
    ChangedSinceReview = 1 << 22,
}

/// <summary>Which doubts weigh enough to keep an unreviewed record off the default map.</summary>
public static class SeriousDoubts
{
    /// <summary>The doubts that make an unreviewed record unusable until a person has looked.</summary>
    public const Doubts Mask =
        Doubts.PlacesDisagree | Doubts.CoordinatesSwapped | Doubts.NameUncertain | Doubts.BeforeFirstYear | Doubts.OutOfSeason | Doubts.DatesDisagree
        | Doubts.LengthOutOfRange | Doubts.StageImpossible | Doubts.OutsideKnownArea | Doubts.EvidenceMissing | Doubts.AheadOfFront
        | Doubts.ChangedSinceReview;
}
