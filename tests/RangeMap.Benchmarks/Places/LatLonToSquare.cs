using BenchmarkDotNet.Attributes;
using ProjNet.CoordinateSystems;
using ProjNet.CoordinateSystems.Transformations;
using RangeMap.Grids;

namespace RangeMap.Benchmarks;

/// <summary>
/// Latitude and longitude to the 100 m square of the British National Grid with OSTN15. The peer is ProjNET on the same points with
/// its seven-parameter shift, which is good to some metres only, without making a square. The time is that of one place.
/// </summary>
public class LatLonToSquare
{
    private const string BritishGrid = """
        PROJCS["British National Grid",GEOGCS["OSGB36",DATUM["OSGB36",SPHEROID["Airy 1830",6377563.396,299.3249646],
        TOWGS84[446.448,-125.157,542.06,0.15,0.247,0.842,-20.489]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433]],
        PROJECTION["Transverse_Mercator"],PARAMETER["latitude_of_origin",49],PARAMETER["central_meridian",-2],
        PARAMETER["scale_factor",0.9996012717],PARAMETER["false_easting",400000],PARAMETER["false_northing",-100000],UNIT["metre",1]]
        """;

    private readonly LatLon[] _places = SomePlaces.Positions();
    private readonly MathTransform _peer = new CoordinateTransformationFactory()
        .CreateFromCoordinateSystems(GeographicCoordinateSystem.WGS84, new CoordinateSystemFactory().CreateFromWkt(BritishGrid)).MathTransform;

    /// <summary>RangeMap.</summary>
    [Benchmark(OperationsPerInvoke = SomePlaces.Count, Baseline = true)]
    public long WithOstn15()
    {
        var grid = NationalGrid.Get(GridId.British);
        long sum = 0;
        foreach (var place in _places)
            sum += Square.At(GridId.British, SquareSize.M100, grid.FromLatLon(place)).Code;
        return sum;
    }

    /// <summary>The peer.</summary>
    [Benchmark(OperationsPerInvoke = SomePlaces.Count)]
    public double ProjNetSevenParameters()
    {
        double sum = 0;
        foreach (var place in _places)
        {
            var (x, y) = _peer.Transform(place.Longitude, place.Latitude);
            sum += x + y;
        }

        return sum;
    }
}
