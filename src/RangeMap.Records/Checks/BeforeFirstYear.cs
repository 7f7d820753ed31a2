namespace RangeMap.Records;

/// <summary>A record dated before the taxon was first known from the country.</summary>
internal static class BeforeFirstYear
{
    /// <summary>In doubt when every possible day lies before the taxon's first year.</summary>
    public static Doubts Of(Taxon taxon, DayRange days) =>
        days.Last.Year < taxon.FirstYear ? Doubts.BeforeFirstYear : Doubts.None;
}
