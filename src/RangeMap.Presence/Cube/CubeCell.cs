namespace RangeMap.Presence;

/// <summary>
/// One cell of a taxon's cube: the records that share a square and a range of days. Counts are signed, because a
/// cube is also used as a change to another cube: what is taken back is added with a minus.
/// </summary>
/// <param name="SquareCode">Code of the records' own square, the finest they support; see <see cref="Grids.Square.Code"/>.</param>
/// <param name="FirstDay">First possible day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="LastDay">Last possible day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="Counts">How many records, by quality.</param>
public readonly record struct CubeCell(long SquareCode, int FirstDay, int LastDay, QualityCounts Counts) : IComparable<CubeCell>
{
    /// <summary>Orders by square, then first day, then last day.</summary>
    public int CompareTo(CubeCell other)
    {
        if (SquareCode != other.SquareCode)
            return SquareCode < other.SquareCode ? -1 : 1;
        return FirstDay != other.FirstDay ? FirstDay.CompareTo(other.FirstDay) : LastDay.CompareTo(other.LastDay);
    }

    /// <summary>True when both cells count records of the same square and days.</summary>
    public bool SamePlaceAndTime(in CubeCell other) =>
        SquareCode == other.SquareCode && FirstDay == other.FirstDay && LastDay == other.LastDay;
}

/// <summary>Records counted at each quality; each level includes those to its right.</summary>
/// <param name="All">Records that are not rejected.</param>
/// <param name="Usable">Of these, confirmed ones and unreviewed ones without a serious doubt.</param>
/// <param name="Confirmed">Of these, confirmed ones.</param>
public readonly record struct QualityCounts(int All, int Usable, int Confirmed)
{
    /// <summary>True when nothing is counted.</summary>
    public bool IsZero => All == 0 && Usable == 0 && Confirmed == 0;

    /// <summary>The count at one quality.</summary>
    public int At(Quality quality) => quality switch
    {
        Quality.Usable => Usable,
        Quality.Confirmed => Confirmed,
        _ => All,
    };

    /// <summary>Adds level by level.</summary>
    public static QualityCounts operator +(QualityCounts a, QualityCounts b) =>
        new(a.All + b.All, a.Usable + b.Usable, a.Confirmed + b.Confirmed);

    /// <summary>Turns an addition into a taking back.</summary>
    public static QualityCounts operator -(QualityCounts a) => new(-a.All, -a.Usable, -a.Confirmed);
}
