namespace RangeMap.Change;

/// <summary>When a margin is not given.</summary>
internal static class MarginRules
{
    /// <summary>A sentence where the squares are too few; null where a margin can be tried.</summary>
    internal static string? ReasonAgainst(SurveyFrame frame, TaxonRange range) =>
        Math.Min(range.CountBefore, range.CountAfter) < frame.Options.MinimumMarginSquares
            ? MarginWords.TooFew(range.CountBefore, range.CountAfter, frame.Options.MinimumMarginSquares)
            : null;

    internal static ChangeEstimate Refuse(TaxonRange range, MarginFrame margin, string reason) =>
        ChangeEstimate.Refuse(range.Taxon, margin.Axis.Method, "km", range.Squares.Length, reason);
}
