using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;
using NetTopologySuite.Triangulate.QuadEdge;

namespace RangeMap.Change;

/// <summary>The Delaunay triangles of the corners of squares, and the mean length of their edges.</summary>
internal sealed class Triangulation
{
    private Triangulation(Coordinate[][] triangles, double meanEdgeKm) => (Triangles, MeanEdgeKm) = (triangles, meanEdgeKm);

    /// <summary>The triangles, each with its first corner again at its end.</summary>
    public Coordinate[][] Triangles { get; }

    /// <summary>Mean length of the edges, each taken once; 0 without any.</summary>
    public double MeanEdgeKm { get; }

    /// <summary>Joins the corners of squares.</summary>
    public static Triangulation Of(IEnumerable<SurveySquare> squares)
    {
        var corners = squares.SelectMany(ExtentOfOccurrence.CornersOf).Distinct().Select(corner => new Coordinate(corner.X, corner.Y)).ToArray();
        if (corners.Length == 0)
            return new([], 0);
        var builder = new DelaunayTriangulationBuilder();
        builder.SetSites(corners);
        var joined = builder.GetSubdivision();
        return new([.. joined.GetTriangleCoordinates(false)], joined.GetPrimaryEdges(false).Average(Length));
    }

    /// <summary>Area of the triangle in km², or 0 where one of its edges is longer than the cut-off.</summary>
    public static double Km2(Coordinate[] triangle, double cutKm)
    {
        for (var i = 0; i < 3; i++)
        {
            if (triangle[i].Distance(triangle[i + 1]) > cutKm)
                return 0;
        }

        return Triangle.Area(triangle[0], triangle[1], triangle[2]);
    }

    private static double Length(QuadEdge edge) => edge.Orig.Coordinate.Distance(edge.Dest.Coordinate);
}
