namespace RangeMap.Grids;

/// <summary>The plane of most web maps (EPSG:3857): Mercator on a sphere of radius 6,378,137 m, with latitudes of the ellipsoid put in unchanged.</summary>
public sealed class WebMercatorPlane : IPlane
{
    /// <summary>Half the width of the square world, metres: pi times the radius.</summary>
    public const double HalfWidth = Math.PI * Radius;

    /// <summary>The latitude at which the square world ends, degrees.</summary>
    public const double GreatestLatitude = 85.051128779806592;

    private const double Radius = 6_378_137;

    private WebMercatorPlane()
    {
    }

    /// <summary>The plane.</summary>
    public static WebMercatorPlane Instance { get; } = new();

    /// <inheritdoc/>
    public int Epsg => 3857;

    /// <summary>Latitude/longitude to metres; latitudes beyond <see cref="GreatestLatitude"/> are drawn on the edge of the world.</summary>
    public EastNorth FromLatLon(LatLon point)
    {
        var latitude = Math.Clamp(point.Latitude, -GreatestLatitude, GreatestLatitude) * Angle.RadiansPerDegree;
        return new(Radius * point.Longitude * Angle.RadiansPerDegree, Radius * Math.Asinh(Math.Tan(latitude)));
    }

    /// <inheritdoc/>
    public LatLon ToLatLon(EastNorth point) =>
        new(Math.Atan(Math.Sinh(point.Northing / Radius)) * Angle.DegreesPerRadian, point.Easting / Radius * Angle.DegreesPerRadian);
}
