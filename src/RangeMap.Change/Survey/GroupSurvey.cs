namespace RangeMap.Change;

/// <summary>
/// What the recorders of one group found and where they looked, in one period or several: all that size, change and effort are
/// measured from. Squares and taxa are indices from 0, the same in every period.
/// </summary>
public sealed class GroupSurvey
{
    /// <summary>Puts a survey together.</summary>
    /// <param name="squares">Every square that has a find or a visit in any of the periods, all on one plane.</param>
    /// <param name="taxa">Number of taxa of the group.</param>
    /// <param name="periods">The periods, the earliest first, none overlapping another.</param>
    public GroupSurvey(IReadOnlyList<SurveySquare> squares, int taxa, IReadOnlyList<SurveyPeriod> periods) => (Squares, Taxa, Periods) = (squares, taxa, periods);

    /// <summary>The squares.</summary>
    public IReadOnlyList<SurveySquare> Squares { get; }

    /// <summary>Number of taxa.</summary>
    public int Taxa { get; }

    /// <summary>The periods, the earliest first.</summary>
    public IReadOnlyList<SurveyPeriod> Periods { get; }
}

/// <summary>One period of a survey.</summary>
/// <param name="Label">The period as it was asked, for words and tables.</param>
/// <param name="FirstYear">Calendar year of its first day; of the first find or visit where its start is open.</param>
/// <param name="LastYear">Calendar year of its last day; of the last find or visit where its end is open.</param>
/// <param name="Found">Records of every date range that lies wholly inside.</param>
/// <param name="Visits">Visits on its days. A find dated to a month or a year makes no visit, so a square can have finds without one.</param>
public sealed record SurveyPeriod(string Label, int FirstYear, int LastYear, FoundTable Found, VisitTable Visits)
{
    /// <summary>Years between the middles of two periods: the span over which a change took place.</summary>
    public static double YearsBetween(SurveyPeriod from, SurveyPeriod to) => (to.FirstYear + to.LastYear - from.FirstYear - from.LastYear) / 2.0;

    /// <summary>True where a square was looked at in the period: it has a visit, or a find of any taxon of the group.</summary>
    public bool Surveyed(int square) => !Visits.To(square).IsEmpty || !Found.InSquare(square).IsEmpty;
}
