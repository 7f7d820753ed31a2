namespace RangeMap.Records;

/// <summary>
/// From when on something is in doubt. The first three are defaults of columns of the taxon list (<see cref="TaxonMarks"/>).
/// All are conventions of this program, to be set by whoever knows the group; none is a measured value.
/// </summary>
public sealed record CheckLimits
{
    /// <summary>The limits that hold where nobody stated others.</summary>
    public static CheckLimits Default { get; } = new();

    /// <summary>Weeks by which a date may lie outside the season, 0 or more.</summary>
    public double SeasonMarginWeeks { get; init; }

    /// <summary>Millimetres by which a length may lie outside the range; the rounding of a length read from a rule.</summary>
    public double LengthMarginMm { get; init; } = 0.5;

    /// <summary>Kilometres by which a square may lie outside the known area.</summary>
    public double AreaMarginKm { get; init; }

    /// <summary>Kilometres between two places of one recorder on one day that are far; a day's journey that few recorders make.</summary>
    public double FarPlacesKm { get; init; } = 200;

    /// <summary>Years between the first and the last date of one recorder's name that one person can hardly fill.</summary>
    public int RecorderYears { get; init; } = 80;

    /// <summary>Records of one file at the centre of one town from which on its place looks filled in.</summary>
    public int TownCentreRecords { get; init; } = 10;
}
