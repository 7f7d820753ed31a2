using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Land and borders on one plane, metres.</summary>
/// <param name="Land">Rings of the islands' land, each as its runs of coast and of border.</param>
/// <param name="Near">Rings of the land of other countries.</param>
/// <param name="Borders">Lines of borders between nations.</param>
internal sealed record PlanarBase(IReadOnlyList<LandRing> Land, IReadOnlyList<LandRing> Near, IReadOnlyList<EastNorth[]> Borders)
{
    public static PlanarBase Of(INationalGrid plane, IReadOnlyList<GeoPolygon> land, IReadOnlyList<GeoPolygon> near, IReadOnlyList<LatLon[]> borders)
    {
        var shared = SharedEdges(land);
        return new(
            [.. land.SelectMany(polygon => polygon.Rings.Select((ring, i) => LandRing.Of(ring, i > 0, shared, plane)))],
            [.. near.SelectMany(polygon => polygon.Rings.Select((ring, i) => LandRing.Of(ring, i > 0, [], plane)))],
            [.. borders.Select(line => Array.ConvertAll(line, plane.FromLatLon))]);
    }

    /// <summary>The edges that two parts of the land share, one way round each: borders between them, where there is no coast.</summary>
    private static HashSet<(LatLon, LatLon)> SharedEdges(IReadOnlyList<GeoPolygon> land)
    {
        var (seen, shared) = (new HashSet<(LatLon, LatLon)>(), new HashSet<(LatLon, LatLon)>());
        foreach (var ring in land.SelectMany(polygon => polygon.Rings))
        {
            for (var i = 1; i < ring.Length; i++)
            {
                var edge = Canonical(ring[i - 1], ring[i]);
                if (!seen.Add(edge))
                    shared.Add(edge);
            }
        }

        return shared;
    }

    /// <summary>An edge by its ends in one order, whichever way it was drawn.</summary>
    public static (LatLon, LatLon) Canonical(LatLon a, LatLon b) =>
        (a.Longitude, a.Latitude).CompareTo((b.Longitude, b.Latitude)) <= 0 ? (a, b) : (b, a);
}

/// <summary>A ring of land as runs that follow each other, the last point of one being the first of the next.</summary>
/// <param name="Runs">The runs; a ring without a border is one run, closed.</param>
/// <param name="Bounds">The box round it.</param>
/// <param name="IsLake">True for a hole.</param>
internal sealed record LandRing(IReadOnlyList<LandRun> Runs, PlaneBounds Bounds, bool IsLake)
{
    public static LandRing Of(LatLon[] ring, bool isLake, HashSet<(LatLon, LatLon)> shared, INationalGrid plane)
    {
        var points = Array.ConvertAll(ring, plane.FromLatLon);
        var runs = new List<LandRun>();
        var start = 0;
        for (var i = 1; i < ring.Length; i++)
        {
            var border = IsShared(i);
            if (i + 1 < ring.Length && IsShared(i + 1) == border)
                continue;
            runs.Add(new(points[start..(i + 1)], border));
            start = i;
        }

        return new(runs, PlaneBounds.Around(points), isLake);

        bool IsShared(int end) => shared.Count > 0 && shared.Contains(PlanarBase.Canonical(ring[end - 1], ring[end]));
    }
}

/// <summary>A run of points along a ring of land.</summary>
/// <param name="Points">The points, metres.</param>
/// <param name="IsBorder">True where land lies on both sides.</param>
internal sealed record LandRun(EastNorth[] Points, bool IsBorder);
