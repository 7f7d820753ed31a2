namespace RangeMap.Presence;

/// <summary>
/// One line of the visit log: a recorder, on one day, in one square, noted a taxon (or its absence). Only records dated
/// to the day make a visit. Counts are signed, like those of a <see cref="CubeCell"/>.
/// </summary>
/// <param name="SquareCode">The record's own square.</param>
/// <param name="Day">The day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="Recorder">The store's number of the recorder or party; 0 when not named.</param>
/// <param name="TaxonNumber">The store's number of the taxon.</param>
/// <param name="Present">False for a statement of absence, which makes the visit but does not lengthen its list.</param>
/// <param name="Count">Records that say so.</param>
/// <param name="Complete">True when they stand on a list of all taxa of the group that the recorder found.</param>
public readonly record struct VisitEntry(long SquareCode, int Day, int Recorder, int TaxonNumber, bool Present, int Count, bool Complete = false) : IComparable<VisitEntry>
{
    /// <summary>Orders by square, day, recorder, taxon, absence before presence, and complete lists after others.</summary>
    public int CompareTo(VisitEntry other)
    {
        // Millions are sorted at a time, and most differ in the square already.
        if (SquareCode != other.SquareCode)
            return SquareCode < other.SquareCode ? -1 : 1;
        if (Day != other.Day)
            return Day < other.Day ? -1 : 1;
        if (Recorder != other.Recorder)
            return Recorder < other.Recorder ? -1 : 1;
        if (TaxonNumber != other.TaxonNumber)
            return TaxonNumber < other.TaxonNumber ? -1 : 1;
        return Present != other.Present ? Present.CompareTo(other.Present) : Complete.CompareTo(other.Complete);
    }

    /// <summary>True when both entries say the same thing, whatever their counts.</summary>
    public bool SameNote(in VisitEntry other) =>
        SquareCode == other.SquareCode && Day == other.Day && Recorder == other.Recorder && TaxonNumber == other.TaxonNumber && Present == other.Present
        && Complete == other.Complete;
}
