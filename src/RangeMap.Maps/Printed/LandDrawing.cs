using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Draws land, coast and borders.</summary>
internal static class LandDrawing
{
    /// <summary>What a point must stand out by to be drawn, millimetres: less than the width of the coast line.</summary>
    private const double ToleranceMm = 0.05;

    /// <summary>Islands smaller than this on paper are left out, and lakes, which would look like dirt. Millimetres.</summary>
    private const double LeastIslandMm = 0.2, LeastLakeMm = 1.4;

    /// <summary>A lake of fewer points has lost its shape in the simplified coast: a triangle is drawn for no lake.</summary>
    private const int LeastLakePoints = 7;

    /// <summary>Rings end this far outside the frame, millimetres, so that the cut does not show.</summary>
    private const double BeyondMm = 1;

    private const double CoastMm = 0.12, BorderMm = 0.14, BorderDashMm = 0.8, RegionMm = 0.2;

    /// <summary>Draws the land, for squares to be drawn upon.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="land">The land.</param>
    /// <param name="region">The region that the map is of; what lies outside it is paler. Empty for all.</param>
    /// <param name="frame">The map.</param>
    /// <param name="inks">The colours.</param>
    /// <param name="index">Number of the frame.</param>
    public static void DrawLand(IMapPen pen, PlanarBase land, IReadOnlyList<GeoPolygon> region, MapFrame frame, MapInks inks, int index)
    {
        var colour = region.Count == 0 ? inks.Land : inks.Near ?? inks.Land;
        if (inks.Near is { } near)
            DrawRings(pen, string.Create(CultureInfo.InvariantCulture, $"near-land-{index}"), land.Near, frame, new(near));
        DrawRings(pen, string.Create(CultureInfo.InvariantCulture, $"land-{index}"), land.Land, frame, new(colour));
        // A line in the colour of the land closes the seam between parts that share a border.
        var seams = land.Land.Where(ring => Shows(ring, frame)).SelectMany(ring => ring.Runs).Where(run => run.IsBorder).Select(run => run.Points);
        DrawLines(pen, string.Create(CultureInfo.InvariantCulture, $"seams-{index}"), seams, frame, new(null, colour, CoastMm));
        if (region.Count > 0)
            Draw(pen, "region", [.. Rings(region, frame).Where(ring => ring.Length > 2).Select(ring => new Strand(ring, true))], frame, new(inks.Land, inks.Coast, RegionMm));
    }

    /// <summary>Draws coast and borders, above the squares.</summary>
    public static void DrawLines(IMapPen pen, PlanarBase land, MapFrame frame, MapInks inks, int index)
    {
        var runs = land.Land.Where(ring => Shows(ring, frame)).SelectMany(ring => ring.Runs).ToLookup(run => run.IsBorder, run => run.Points);
        DrawLines(pen, string.Create(CultureInfo.InvariantCulture, $"coast-{index}"), runs[false], frame, new(null, inks.Coast, CoastMm));
        // Each border is an edge of both lands beside it; once is enough.
        var borders = runs[true].DistinctBy(points => (Math.Min(points[0].Easting, points[^1].Easting), points.Length)).Concat(land.Borders);
        DrawLines(pen, string.Create(CultureInfo.InvariantCulture, $"borders-{index}"), borders, frame, new(null, inks.Coast, BorderMm, BorderDashMm));
    }

    private static IEnumerable<PaperPoint[]> Rings(IReadOnlyList<GeoPolygon> region, MapFrame frame) => region.SelectMany(polygon => polygon.Rings)
        .Select(ring => BoxClip.Ring([.. LineThinning.Thin(frame.On(Array.ConvertAll(ring, frame.Plane.FromLatLon)), ToleranceMm)], frame.Box.Shrunk(-BeyondMm)));

    private static void DrawRings(IMapPen pen, string name, IReadOnlyList<LandRing> rings, MapFrame frame, Paint paint)
    {
        var beyond = frame.Box.Shrunk(-BeyondMm);
        var strands = new List<Strand>();
        foreach (var ring in rings.Where(ring => Shows(ring, frame)))
        {
            var points = ring.Runs.SelectMany(run => LineThinning.Thin(frame.On(run.Points), ToleranceMm).Skip(1)).ToArray();
            var cut = BoxClip.Ring(points, beyond);
            if (cut.Length > 2)
                strands.Add(new(cut, true));
        }

        Draw(pen, name, strands, frame, paint);
    }

    private static void DrawLines(IMapPen pen, string name, IEnumerable<EastNorth[]> lines, MapFrame frame, Paint paint)
    {
        var beyond = frame.Box.Shrunk(-BeyondMm);
        var strands = lines.SelectMany(line => BoxClip.Line([.. LineThinning.Thin(frame.On(line), ToleranceMm)], beyond)).Select(line => new Strand(line, false)).ToList();
        Draw(pen, name, strands, frame, paint);
    }

    private static void Draw(IMapPen pen, string name, List<Strand> strands, MapFrame frame, Paint paint)
    {
        if (strands.Count == 0)
            return;
        pen.StartGroup(name, paint, frame.Box);
        pen.Shape(strands);
        pen.EndGroup();
    }

    private static bool Shows(LandRing ring, MapFrame frame) =>
        ring.Bounds.Overlaps(frame.Bounds) && !(ring.IsLake && ring.Runs.Sum(run => run.Points.Length) < LeastLakePoints) && ring.Bounds.LongerSide() * frame.MmPerMetre >= (ring.IsLake ? LeastLakeMm : LeastIslandMm);
}
