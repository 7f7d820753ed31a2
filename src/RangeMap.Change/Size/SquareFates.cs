namespace RangeMap.Change;

/// <summary>What became of a square of a taxon between two periods. A square that nobody searched is no loss.</summary>
public enum SquareFate
{
    /// <summary>Found in both periods.</summary>
    Kept,

    /// <summary>Surveyed in both periods, found in the later only.</summary>
    Gained,

    /// <summary>Surveyed in both periods, found in the earlier only.</summary>
    Lost,

    /// <summary>Found in the later period; nobody surveyed the square in the earlier, so it may have been there.</summary>
    NotSurveyedBefore,

    /// <summary>Found in the earlier period; nobody surveyed the square in the later, so it may be there still.</summary>
    NotSurveyedAfter,
}

/// <summary>The fate of every square of a taxon between the first and the last period of a survey.</summary>
public static class SquareFates
{
    /// <summary>The squares where the taxon was found in either period, ascending, with their fates; empty where there are not two periods.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The survey has no such taxon.</exception>
    public static IReadOnlyList<(int Square, SquareFate Fate)> Of(GroupSurvey survey, int taxon)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)taxon, (uint)survey.Taxa, nameof(taxon));
        if (survey.Periods.Count < 2)
            return [];
        var (from, to) = (survey.Periods[0], survey.Periods[^1]);
        var range = TaxonRange.Of(taxon, from.Found.OfTaxon(taxon), to.Found.OfTaxon(taxon));
        return [.. range.Squares.Select((square, i) => (square, FateOf(range.Before[i] > 0, range.After[i] > 0, from.Surveyed(square), to.Surveyed(square))))];
    }

    /// <summary>The fate of a square where the taxon was found before, after or both.</summary>
    /// <param name="before">Found in the earlier period.</param>
    /// <param name="after">Found in the later period.</param>
    /// <param name="surveyedBefore">Somebody looked for its group in the earlier period.</param>
    /// <param name="surveyedAfter">The same in the later period.</param>
    public static SquareFate FateOf(bool before, bool after, bool surveyedBefore, bool surveyedAfter) =>
        before && after ? SquareFate.Kept
        : after ? surveyedBefore ? SquareFate.Gained : SquareFate.NotSurveyedBefore
        : surveyedAfter ? SquareFate.Lost : SquareFate.NotSurveyedAfter;
}
