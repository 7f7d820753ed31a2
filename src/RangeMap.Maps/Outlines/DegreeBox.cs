using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>A box in degrees (WGS84); one whose west lies east of its east goes across the antimeridian (RFC 7946, section 5.2).</summary>
/// <param name="West">Degrees east of the western edge.</param>
/// <param name="South">Degrees north of the southern edge.</param>
/// <param name="East">Degrees east of the eastern edge.</param>
/// <param name="North">Degrees north of the northern edge.</param>
public readonly record struct DegreeBox(double West, double South, double East, double North)
{
    private static readonly OutlineStore<double> Kept = new(Around);

    /// <summary>The smallest box round a square.</summary>
    public static DegreeBox Of(Square square)
    {
        var edges = Kept.Of(square);
        return new(edges[0], edges[1], edges[2], edges[3]);
    }

    /// <summary>True when the two boxes share a point; the other one does not cross the antimeridian.</summary>
    public bool Intersects(in DegreeBox other)
    {
        if (other.South > North || other.North < South)
            return false;
        return West <= East ? other.West <= East && other.East >= West : other.East >= West || other.West <= East;
    }

    /// <summary>The smallest box round two boxes that do not cross the antimeridian.</summary>
    public DegreeBox Union(in DegreeBox other) => new(Math.Min(West, other.West), Math.Min(South, other.South), Math.Max(East, other.East), Math.Max(North, other.North));

    private static double[] Around(Square square)
    {
        var ring = SquareOutline.InLatLon(square);
        return [ring.Min(point => point.Longitude), ring.Min(point => point.Latitude), ring.Max(point => point.Longitude), ring.Max(point => point.Latitude)];
    }
}
