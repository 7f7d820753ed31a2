using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Draws land, coast and borders.</summary>
internal static class LandDrawing
{
    /// <summary>What a point must stand out by to be drawn, millimetres: less than the width of the coast line.</summary>
    private const double ToleranceMm = 0.04;

    /// <summary>Islands and lakes smaller than this on paper are left out, millimetres.</summary>
    private const double LeastMm = 0.15;

    /// <summary>Rings end this far outside the frame, millimetres, so that the cut does not show.</summary>
    private const double BeyondMm = 1;

    private const double CoastMm = 0.12, BorderMm = 0.14, BorderDashMm = 0.8;

    /// <summary>Draws the land, for squares to be drawn upon.</summary>
    public static void DrawLand(IMapPen pen, PlanarBase land, MapFrame frame, MapInks inks, int index)
    {
        if (inks.Near is { } near)
            DrawRings(pen, string.Create(CultureInfo.InvariantCulture, $"near-land-{index}"), land.Near, frame, new(near));
        // The line in the colour of the land closes the seam between parts that share a border.
        DrawRings(pen, string.Create(CultureInfo.InvariantCulture, $"land-{index}"), land.Land, frame, new(inks.Land, inks.Land, CoastMm));
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
        ring.Bounds.Overlaps(frame.Bounds) && ring.Bounds.LongerSide() * frame.MmPerMetre >= LeastMm;
}
