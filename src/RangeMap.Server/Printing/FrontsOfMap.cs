using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The lines of a front for a printed map: where the fitted surface of arrival passes the start of a year.</summary>
internal static class FrontsOfMap
{
    private const double MetresPerKm = 1000;

    /// <summary>The model needs visits with and without the taxon in many squares, so it is fitted to these whatever the map shows.</summary>
    private const SquareSize Side = SquareSize.Km10;

    /// <summary>The lines, or the reason why there are none.</summary>
    public static (IReadOnlyList<PrintedFront> Fronts, string? Refused) Of(DataSnapshot data, Taxon taxon, IReadOnlyList<int> years)
    {
        var fitted = ForecastSpread.Fit(data, taxon, Side);
        if (fitted.Answer.Fit is not { } fit)
            return ([], fitted.Answer.Refused);
        var lattices = fitted.Squares.Select((square, i) => (Square: square, Index: i)).GroupBy(entry => entry.Square.Grid).Select(grid => grid.ToDictionary(
            entry => (entry.Square.Easting / (int)Side, entry.Square.Northing / (int)Side),
            entry => (new PlanePoint(fit.Sites[entry.Index].X, fit.Sites[entry.Index].Y), fit.Squares[entry.Index].Surface))).ToList();
        return ([.. years.Select(year => new PrintedFront(year, [.. lattices.SelectMany(lattice => FrontLines.At(lattice, year)).Select(OnPlane)])).Where(front => front.Lines.Count > 0)], null);
    }

    private static IReadOnlyList<EastNorth> OnPlane(IReadOnlyList<PlanePoint> line) => [.. line.Select(point => new EastNorth(point.X * MetresPerKm, point.Y * MetresPerKm))];
}
