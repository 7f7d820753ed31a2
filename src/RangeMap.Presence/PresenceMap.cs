using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>Where a taxon was found, per square and period: the fold of the cube that every map and table is drawn from.</summary>
/// <param name="Size">The side of the squares.</param>
/// <param name="Quality">Which records count.</param>
/// <param name="Periods">The periods, in the order asked.</param>
/// <param name="Squares">The squares with at least one counted record in at least one period, ascending by code; several grids may occur.</param>
/// <param name="Omitted">What the rules left out, and why.</param>
public sealed record PresenceMap(
    SquareSize Size,
    Quality Quality,
    IReadOnlyList<Period> Periods,
    IReadOnlyList<PresenceSquare> Squares,
    Omissions Omitted);

/// <summary>One square of a presence map.</summary>
/// <param name="Square">The square.</param>
/// <param name="FirstYear">The first year, within the periods asked, by whose end the taxon was certainly there (Gregorian).</param>
/// <param name="LastYear">The last year, within the periods asked, since whose start it was certainly there.</param>
/// <param name="PerPeriod">One entry a period, in the map's order; an entry with zero records is an absence of records, not of the taxon.</param>
public sealed record PresenceSquare(Square Square, int FirstYear, int LastYear, IReadOnlyList<PeriodCount> PerPeriod);

/// <summary>What one square holds for one period.</summary>
/// <param name="Records">Counted records.</param>
/// <param name="Confirmed">Of these, confirmed by a reviewer.</param>
/// <param name="Visits">Visits to the square in the period by recorders of the taxon's group.</param>
/// <param name="FirstYear">First certain year in the period; 0 without records.</param>
/// <param name="LastYear">Last certain year in the period; 0 without records.</param>
public readonly record struct PeriodCount(int Records, int Confirmed, int Visits, int FirstYear, int LastYear);

/// <summary>Records that a presence map does not show, by reason. A reader can add them up with the shown ones to the whole.</summary>
/// <param name="TooCoarse">Their own square is larger than the map's, or straddles two of its squares.</param>
/// <param name="BetweenPeriods">Their range of dates lies wholly inside no period.</param>
/// <param name="BelowQuality">They do not reach the quality asked.</param>
public readonly record struct Omissions(int TooCoarse, int BetweenPeriods, int BelowQuality);

/// <summary>Which records count on a map.</summary>
public enum Quality
{
    /// <summary>Confirmed, or unreviewed without a serious doubt.</summary>
    Usable = 0,

    /// <summary>Confirmed by a reviewer.</summary>
    Confirmed = 1,

    /// <summary>Everything but rejected records.</summary>
    All = 2,
}
