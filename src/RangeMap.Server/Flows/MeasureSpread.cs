using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Measures how a taxon spread, from the first arrivals of its squares.</summary>
public static class MeasureSpread
{
    private const double MetresPerKm = 1000;

    /// <summary>The spread report of a taxon.</summary>
    /// <param name="data">The data.</param>
    /// <param name="taxon">The taxon.</param>
    /// <param name="size">The side of the squares.</param>
    /// <param name="origin">The square where the spread began; null to take the earliest cluster.</param>
    /// <param name="withModel">True to list the speed of the arrival model too, whose first fit takes some seconds.</param>
    public static SpreadAnswer Answer(DataSnapshot data, Taxon taxon, SquareSize size, Square? origin, bool withModel = false) =>
        data.Answers.GetOrMake((taxon.Number, size, origin, withModel, "spread"), () =>
        {
            var arrivals = AnswerPresence.Arrivals(data, taxon, size, Quality.Usable);
            var centre = origin is { } square ? Arrival.CommonCentre(square) : (EastNorth?)null;
            var options = new SpreadOptions
            {
                SquareSideKm = (int)size / MetresPerKm,
                RecordedFrom = OfGroup(data, taxon).Min(summary => summary.FirstYear),
                RecordedUntil = OfGroup(data, taxon).Max(summary => summary.LastYear),
                Land = LandOf(data, size),
                Origin = centre is { } given ? new(given.Easting / MetresPerKm, given.Northing / MetresPerKm) : null,
            };
            var points = arrivals.Select(Point).ToList();
            var report = Spread.Measure(points, options, VisitsOf(data, taxon, size, arrivals), withModel ? ForecastSpread.Fit(data, taxon, size).Answer : null);
            return new SpreadAnswer(taxon, size, report, arrivals, FrontChart.Of(points, report), OriginSquare(report, size));
        });

    /// <summary>Centres of the squares with land on both islands; null for sizes of which there is no list of them.</summary>
    private static List<PlanePoint>? LandOf(DataSnapshot data, SquareSize size) => size is not (SquareSize.Km10 or SquareSize.Km5 or SquareSize.Km2 or SquareSize.Km1) ? null : data.Answers.GetOrMake((size, "land"), () =>
        new[] { GridId.British, GridId.Irish }.SelectMany(grid => BaseGeography.Squares.Of(grid, size)).Select(Arrival.CommonCentre).Select(centre => new PlanePoint(centre.Easting / MetresPerKm, centre.Northing / MetresPerKm)).ToList());

    /// <summary>
    /// Visits that could have found the taxon: those that noted anything of its group, or looked for the taxon itself. A find counts only where the map
    /// has it too; a visit whose find is not to be trusted tells neither of presence nor of absence.
    /// </summary>
    private static List<SquareVisit> VisitsOf(DataSnapshot data, Taxon taxon, SquareSize size, IReadOnlyList<Arrival> arrivals)
    {
        var own = data.WithMembers(taxon).Select(member => member.Number).ToHashSet();
        var first = arrivals.ToDictionary(arrival => arrival.Square, arrival => arrival.Year);
        var centres = new Dictionary<Square, EastNorth>();
        var visits = new List<SquareVisit>();
        foreach (var visit in data.VisitLists(taxon.Group, size))
        {
            var (year, found) = (DateOnly.FromDayNumber(visit.Day).Year, visit.Taxa.Any(own.Contains));
            if (found ? !(first.TryGetValue(visit.Square, out var arrived) && arrived <= year) : visit.Taxa.Length == 0 && !own.Any(visit.LookedFor))
                continue;
            if (!centres.TryGetValue(visit.Square, out var centre))
                centres.Add(visit.Square, centre = Arrival.CommonCentre(visit.Square));
            visits.Add(new(centre.Easting / MetresPerKm, centre.Northing / MetresPerKm, year, found));
        }

        return visits;
    }

    /// <summary>The taxa recorded together with this one: while any of them was recorded, its own absence means something.</summary>
    private static IEnumerable<TaxonSummary> OfGroup(DataSnapshot data, Taxon taxon) =>
        data.Summaries.Where(summary => summary.Taxon.Group == taxon.Group);

    private static Square? OriginSquare(SpreadReport report, SquareSize size)
    {
        if (report.Origin is not { } origin)
            return null;
        var point = new EastNorth(origin.X * MetresPerKm, origin.Y * MetresPerKm);
        return NationalGrid.Get(GridId.British).Contains(point) ? Square.At(GridId.British, size, point) : null;
    }

    private static ArrivalPoint Point(Arrival arrival) =>
        new(arrival.Centre.Easting / MetresPerKm, arrival.Centre.Northing / MetresPerKm, arrival.Year);
}

/// <summary>A taxon's spread with the arrivals it was measured from.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Size">The side of the squares.</param>
/// <param name="Report">The measurements.</param>
/// <param name="Arrivals">First arrivals by square.</param>
/// <param name="Chart">Distances of the arrivals, and the front's line.</param>
/// <param name="Origin">The square of the British grid in which the origin lies; null where it lies outside, or there is none.</param>
public sealed record SpreadAnswer(
    Taxon Taxon, SquareSize Size, SpreadReport Report, IReadOnlyList<Arrival> Arrivals, FrontChart Chart, Square? Origin);
