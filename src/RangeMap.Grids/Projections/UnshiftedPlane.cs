namespace RangeMap.Grids;

/// <summary>A projected plane on WGS84 or ETRS89 itself: degrees in and out, no datum shift.</summary>
internal sealed class UnshiftedPlane(IProjection projection)
{
    /// <summary>Degrees to the plane.</summary>
    public EastNorth FromLatLon(LatLon point) =>
        projection.Forward(point.Latitude * Angle.RadiansPerDegree, point.Longitude * Angle.RadiansPerDegree);

    /// <summary>The plane to degrees.</summary>
    public LatLon ToLatLon(EastNorth point)
    {
        var (latitude, longitude) = projection.Inverse(point);
        return new(latitude * Angle.DegreesPerRadian, longitude * Angle.DegreesPerRadian);
    }
}
