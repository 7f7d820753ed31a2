namespace RangeMap.Change;

/// <summary>Measures how the size, the middle and the margins of a taxon's range changed from the first to the last period of a survey.</summary>
public static class RangeSizeChange
{
    /// <summary>The methods, in the order in which they come.</summary>
    public static IReadOnlyList<string> Methods { get; } =
    [
        ChangeMethods.Squares, ChangeMethods.SquaresBoth, ChangeMethods.SquaresSurveyed, ChangeMethods.Extent, ChangeMethods.OccupancyArea, ChangeMethods.Centroid,
        ChangeMethods.MarginNorth, ChangeMethods.MarginSouth, ChangeMethods.MarginEast, ChangeMethods.MarginWest, ChangeMethods.MarginGamma,
    ];

    /// <summary>Measures one taxon by every method.</summary>
    /// <param name="survey">The survey. What its taxa share is computed once and kept with it.</param>
    /// <param name="taxon">Index of the taxon.</param>
    /// <param name="options">How. Give the same in every call for one survey, the same list of land squares too, or what is shared is computed anew.</param>
    /// <returns>One estimate a method, always all, each with numbers or with a sentence that says why not.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range, or the survey has no such taxon.</exception>
    public static IReadOnlyList<ChangeEstimate> Measure(GroupSurvey survey, int taxon, ChangeOptions options)
    {
        options.ThrowIfOutOfRange();
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)taxon, (uint)survey.Taxa, nameof(taxon));
        var (frame, fault) = SurveyFrame.For(survey, options);
        if (frame is null)
            return RefuseAll(taxon, fault!);
        var range = TaxonRange.Of(taxon, frame.From.Found.OfTaxon(taxon), frame.To.Found.OfTaxon(taxon));
        if (range.Squares.Length == 0)
            return RefuseAll(taxon, SizeWords.NotFound);
        return
        [
            SquareCounts.All(frame, range),
            SquareCounts.SurveyedBoth(frame, range),
            SquareCounts.WellSurveyedBoth(frame, range),
            ExtentOfOccurrence.Measure(frame, range),
            AreaOfOccupancy.Measure(frame, range),
            RangeCentroid.Measure(frame, range),
            .. frame.Margins.Select((margin, i) => i < 4 ? MeanOfTen.Measure(frame, range, margin) : GammaMargin.Measure(frame, range, margin)),
        ];
    }

    private static ChangeEstimate[] RefuseAll(int taxon, string reason) =>
        [.. Methods.Select(method => ChangeEstimate.Refuse(taxon, method, UnitOf(method), 0, reason))];

    private static string UnitOf(string method) =>
        method is ChangeMethods.Squares or ChangeMethods.SquaresBoth or ChangeMethods.SquaresSurveyed or ChangeMethods.Extent or ChangeMethods.OccupancyArea ? "%" : "km";
}
