using RangeMap.Grids;

namespace RangeMap.Change;

/// <summary>How exactly a recorder writes a date.</summary>
public enum WrittenDate : byte
{
    /// <summary>The day.</summary>
    Day,

    /// <summary>Month and year only.</summary>
    Month,

    /// <summary>The year only.</summary>
    Year,
}

/// <summary>What an observation rests on.</summary>
public enum InventedEvidence : byte
{
    /// <summary>Seen.</summary>
    Sighting,

    /// <summary>Photographed.</summary>
    Photograph,

    /// <summary>Kept.</summary>
    Specimen,
}

/// <summary>Sex, where the recorder noted it.</summary>
public enum InventedSex : byte
{
    /// <summary>Not noted.</summary>
    NotNoted,

    /// <summary>Female.</summary>
    Female,

    /// <summary>Male.</summary>
    Male,
}

/// <summary>What a reviewer said.</summary>
public enum InventedReview : byte
{
    /// <summary>Nothing yet.</summary>
    Unreviewed,

    /// <summary>Accepted.</summary>
    Confirmed,

    /// <summary>Not convinced.</summary>
    Doubtful,

    /// <summary>Not accepted.</summary>
    Rejected,
}

/// <summary>One recorder at one place on one day.</summary>
/// <param name="Number">Counted from 0 in the order of the stream.</param>
/// <param name="Day">The true day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="Cell">Index of the land cell.</param>
/// <param name="Grid">Grid of the place.</param>
/// <param name="Easting">True place, metres east on that grid.</param>
/// <param name="Northing">True place, metres north on that grid.</param>
/// <param name="PrecisionMetres">Side of the square that the recorder states: 10, 100, 1,000, 2,000 or 10,000 m.</param>
/// <param name="Recorder">Index of the recorder.</param>
/// <param name="Written">How exactly the date is written.</param>
/// <param name="AsLatLon">True when the place is written as latitude and longitude.</param>
public readonly record struct SimulatedVisit(
    long Number, int Day, int Cell, GridId Grid, int Easting, int Northing, int PrecisionMetres, int Recorder, WrittenDate Written, bool AsLatLon);

/// <summary>One species seen on a visit.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Species">Index of the species that it truly was.</param>
/// <param name="NamedAs">Index of the species that the recorder took it for.</param>
/// <param name="ToAggregate">True when the recorder named only the aggregate of <paramref name="NamedAs"/>.</param>
/// <param name="Stage">Caste or stage.</param>
/// <param name="Sex">Sex, where noted.</param>
/// <param name="Count">Individuals, at least 1.</param>
/// <param name="LengthMm">Length, where measured.</param>
/// <param name="Plant">Index of the plant visited, where noted.</param>
/// <param name="Evidence">What it rests on.</param>
/// <param name="Review">What a reviewer said.</param>
public readonly record struct SimulatedObservation(
    SimulatedVisit Visit,
    int Species,
    int NamedAs,
    bool ToAggregate,
    InventedStage Stage,
    InventedSex Sex,
    int Count,
    float? LengthMm,
    int? Plant,
    InventedEvidence Evidence,
    InventedReview Review)
{
    /// <summary>True when the recorder took it for another species.</summary>
    public bool Mistaken => NamedAs != Species;
}
