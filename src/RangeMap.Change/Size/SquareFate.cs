namespace RangeMap.Change;

/// <summary>What became of a square between two periods. Where nobody looked, nothing is known: that is no loss.</summary>
public enum SquareFate
{
    /// <summary>Found in the later period, and not in the earlier one, in which the square was surveyed.</summary>
    Gained,

    /// <summary>Found in the earlier period, and not in the later one, in which the square was surveyed.</summary>
    Lost,

    /// <summary>Found in both.</summary>
    Stable,

    /// <summary>Found in the later period; nobody looked in the earlier one.</summary>
    FoundOnlyLater,

    /// <summary>Found in the earlier period; nobody looked in the later one.</summary>
    NotVisitedAgain,
}

/// <summary>The fates of the squares of one taxon.</summary>
public static class SquareFates
{
    /// <summary>Every square where the taxon was found in the first or the last period of a survey, ascending, with what became of it.</summary>
    public static IReadOnlyList<(int Square, SquareFate Fate)> Of(GroupSurvey survey, int taxon)
    {
        if (survey.Periods.Count < 2)
            return [];
        var (first, last) = (survey.Periods[0], survey.Periods[^1]);
        var (before, after) = (Found(first, taxon), Found(last, taxon));
        return [.. before.Union(after).Order().Select(square => (square, FateOf(square)))];

        SquareFate FateOf(int square) => (before.Contains(square), after.Contains(square)) switch
        {
            (true, true) => SquareFate.Stable,
            (true, false) => last.Surveyed(square) ? SquareFate.Lost : SquareFate.NotVisitedAgain,
            _ => first.Surveyed(square) ? SquareFate.Gained : SquareFate.FoundOnlyLater,
        };
    }

    private static HashSet<int> Found(SurveyPeriod period, int taxon)
    {
        var squares = new HashSet<int>();
        foreach (var find in period.Found.OfTaxon(taxon))
            squares.Add(find.Index);
        return squares;
    }
}
