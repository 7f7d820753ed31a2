namespace RangeMap.Change;

/// <summary>
/// Slope on the year of the chance that a list holds the taxon, at equal length of list (docs/methods/list-length.md; after Szabo and
/// others 2010). Wald interval with errors clustered by square, never narrower than that of independent lists.
/// </summary>
internal static class ListLength
{
    private const string Unit = "logit per decade";

    internal static ChangeEstimate Of(ListCells cells, int taxon, TrendOptions options)
    {
        var visits = cells.Visits;
        if (visits.Squares < options.LeastSquaresVisited)
            return Refuse(taxon, visits.Squares, TrendWords.NotEnough("squares visited in both periods", visits.Squares, options.LeastSquaresVisited));

        var finds = TaxonLists.Of(cells, taxon);
        if (finds.Finds < options.LeastFinds)
            return Refuse(taxon, visits.Squares, TrendWords.NotEnough(TrendWords.ListsWith(options.LeastOthers), finds.Finds, options.LeastFinds));
        if (finds.Squares < options.LeastSquaresFound)
            return Refuse(taxon, visits.Squares, TrendWords.NotEnough("squares with the taxon on such a list", finds.Squares, options.LeastSquaresFound));
        if (LogisticPlane.Fit(finds.Cells()) is not { } plane)
            return Refuse(taxon, visits.Squares, TrendWords.Separated);

        var independent = plane.Covariance[1, 1];
        var error = Math.Sqrt(Math.Max(independent, finds.ClusteredVariance(plane)));
        var wald = Wald.Of(plane.Coefficients[1], error, finds.Squares - 1);
        return ChangeEstimate.Of(taxon, ChangeMethods.ListLength, Unit, visits.Squares, plane.Coefficients[1], wald.Interval) with
        {
            P = wald.P,
            Note = TrendWords.ListLengthNote(finds.Finds, options.LeastOthers, error * error / independent),
        };
    }

    private static ChangeEstimate Refuse(int taxon, int squares, string reason) => ChangeEstimate.Refuse(taxon, ChangeMethods.ListLength, Unit, squares, reason);
}
