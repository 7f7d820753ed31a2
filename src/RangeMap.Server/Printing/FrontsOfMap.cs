using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The lines of a front for a printed map: squares behind the line of a year were reached, on the average, in time for its visits.</summary>
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
        var fronts = DrawFronts.Of(data, taxon, Side, fitted, fit);
        return ([.. years.Select(year => new PrintedFront(year, [.. fronts.At(year).Lines.Select(OnPlane)])).Where(front => front.Lines.Count > 0)], null);
    }

    private static IReadOnlyList<EastNorth> OnPlane(IReadOnlyList<PlanePoint> line) => [.. line.Select(point => new EastNorth(point.X * MetresPerKm, point.Y * MetresPerKm))];
}
