namespace RangeMap.Change;

/// <summary>When a margin is not given.</summary>
internal static class MarginRules
{
    /// <summary>A sentence where the squares are too few or lie in too few strips; null where a margin can be tried.</summary>
    internal static string? ReasonAgainst(SurveyFrame frame, TaxonRange range, MarginFrame margin, out HeldBlocks blocks)
    {
        var options = frame.Options;
        blocks = HeldBlocks.Of(margin.Strips, range.Squares);
        if (Math.Min(range.CountBefore, range.CountAfter) < options.MinimumMarginSquares)
            return MarginWords.TooFew(range.CountBefore, range.CountAfter, options.MinimumMarginSquares);
        return blocks.Count < options.MinimumBlocks
            ? MarginWords.TooFewStrips(blocks.Count, options.MinimumBlocks, options.BlockSquares * frame.SideKm)
            : null;
    }

    internal static ChangeEstimate Refuse(TaxonRange range, MarginFrame margin, string reason) =>
        ChangeEstimate.Refuse(range.Taxon, margin.Axis.Method, "km", range.Squares.Length, reason);
}
