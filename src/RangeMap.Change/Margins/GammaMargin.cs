namespace RangeMap.Change;

/// <summary>
/// Shift of the gamma margin: a high quantile of a gamma distribution of the distances from the rear of the range, with the recording of
/// the two periods levelled (docs/methods/margins.md, eq. 7 and 8; Hassall and Thompson 2010).
/// </summary>
internal static class GammaMargin
{
    internal static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range, MarginFrame margin)
    {
        if (MarginRules.ReasonAgainst(frame, range) is { } reason)
            return MarginRules.Refuse(range, margin, reason);
        var (blocks, options) = (HeldBlocks.Of(margin.Strips, range.Squares), frame.Options);
        if (blocks.Count < options.MinimumBlocks)
            return MarginRules.Refuse(range, margin, MarginWords.TooFewStrips(blocks.Count, options.MinimumBlocks, options.StripSquares * frame.SideKm));

        var rear = range.Squares.Min(square => margin.Along[square]) - frame.SideKm / 2;
        var before = DistancesByBlock.Of(frame, range, range.Before, margin, blocks, rear);
        var after = DistancesByBlock.Of(frame, range, range.After, margin, blocks, rear);
        if (LevelledShift.Of(frame, before.Margin(), after.Margin(), before.Margin, after.Margin) is not { } levelled)
            return MarginRules.Refuse(range, margin, MarginWords.TooThin);
        if (blocks.Variance(times => after.Margin(times) - before.Margin(times)) is not { } drawn)
            return MarginRules.Refuse(range, margin, SizeWords.NoDraws);

        var place = frame.SideKm * frame.SideKm / 12 * (1.0 / range.CountBefore + 1.0 / range.CountAfter);
        var half = frame.Student(blocks.Count) * Math.Sqrt(Math.Max(drawn, place) + levelled.Variance);
        return ChangeEstimate.Of(range.Taxon, margin.Axis.Method, "km", range.Squares.Length, levelled.Km, new(levelled.Km - half, levelled.Km + half)) with
        {
            Before = levelled.Before,
            After = levelled.After,
            Note = MarginWords.Levelled(frame, levelled, after.Margin() - before.Margin())
                + MarginWords.Gamma(frame.Options.MarginQuantile, frame.Options.MarginBearing) + CoastNote(range, margin, blocks),
        };
    }

    private static string? CoastNote(TaxonRange range, MarginFrame margin, HeldBlocks blocks)
    {
        var order = margin.OutermostFirst(range.Squares);
        return MarginWords.Coast(
            margin.AtCoast(OutwardSquares.Of(range, range.Before, order, margin, blocks).Outermost),
            margin.AtCoast(OutwardSquares.Of(range, range.After, order, margin, blocks).Outermost));
    }
}
