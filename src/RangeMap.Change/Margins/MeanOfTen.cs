namespace RangeMap.Change;

/// <summary>
/// Shift of a margin: the mean of the ten outermost squares, in km outwards, with the recording of the two periods levelled
/// (docs/methods/margins.md, eq. 1 to 6; Thomas and Lennon 1999).
/// </summary>
internal static class MeanOfTen
{
    internal static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range, MarginFrame margin)
    {
        if (MarginRules.ReasonAgainst(frame, range) is { } reason)
            return MarginRules.Refuse(range, margin, reason);
        var (blocks, options) = (HeldBlocks.Of(margin.Strips, range.Squares), frame.Options);
        if (blocks.Count < options.MinimumBlocks)
            return MarginRules.Refuse(range, margin, MarginWords.TooFewStrips(blocks.Count, options.MinimumBlocks, options.StripSquares * frame.SideKm));

        var order = margin.OutermostFirst(range.Squares);
        var before = OutwardSquares.Of(range, range.Before, order, margin, blocks);
        var after = OutwardSquares.Of(range, range.After, order, margin, blocks);
        var (pool, wanted) = (frame.Thinned.Pool, frame.Thinned.Wanted);
        if (LevelledShift.Of(frame, before.Mean(), after.Mean(), chance => before.Mean(pool, wanted, chance), chance => after.Mean(pool, wanted, chance)) is not { } levelled)
            return MarginRules.Refuse(range, margin, MarginWords.TooThin);
        if (blocks.Variance(times => after.Mean(times) - before.Mean(times)) is not { } drawn)
            return MarginRules.Refuse(range, margin, SizeWords.NoDraws);

        var place = frame.SideKm * frame.SideKm / 12 * (2.0 / OutwardSquares.Ten);
        var half = frame.Student(blocks.Count) * Math.Sqrt(Math.Max(drawn, place) + levelled.Variance);
        var coast = MarginWords.Coast(margin.AtCoast(before.Outermost), margin.AtCoast(after.Outermost));
        return ChangeEstimate.Of(range.Taxon, margin.Axis.Method, "km", range.Squares.Length, levelled.Km, new(levelled.Km - half, levelled.Km + half)) with
        {
            Before = levelled.Before * margin.Axis.Sign,
            After = levelled.After * margin.Axis.Sign,
            Note = MarginWords.Levelled(frame, levelled, after.Mean() - before.Mean()) + coast,
        };
    }
}
