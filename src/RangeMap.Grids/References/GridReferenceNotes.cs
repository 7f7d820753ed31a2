namespace RangeMap.Grids;

/// <summary>What a reader of a grid reference should be told although it was understood.</summary>
[Flags]
public enum GridReferenceNotes
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>More than ten figures were given and it was read to 1 m.</summary>
    ReadToOneMetre = 1,

    /// <summary>A leading I before an Irish letter was left out: IJ3374 was read as J3374.</summary>
    LeadingILeftOut = 2,

    /// <summary>The letters WA or WV exist on two datums about 240 m apart; which one was read is the square's grid.</summary>
    ChannelIslandsDatumAssumed = 4,

    /// <summary>Easting and northing were given in metres and read to 1 m, however many zeros they end in.</summary>
    MetresTakenAsWritten = 8,
}
