namespace RangeMap.Grids;

/// <summary>Channel Islands on WGS84, UTM zone 30 (EPSG:32630), the datum of newer maps: about 103 m west and 216 m south of ED50 in numbers.</summary>
/// <remarks>Lettered area: eastings [500 km, 600 km), northings [5400 km, 5600 km).</remarks>
internal sealed class ChannelIslandsWgs84Grid : INationalGrid
{
    private static readonly UnshiftedPlane Plane = new(new KruegerTransverseMercator(Ellipsoid.Wgs84, 0, -3, 0.9996, 500_000, 0));

    /// <inheritdoc/>
    public GridId Id => GridId.ChannelIslandsWgs84;

    /// <inheritdoc/>
    public string Code => "CI-WGS84";

    /// <inheritdoc/>
    public string Name => "Channel Islands grid (WGS84)";

    /// <inheritdoc/>
    public int Epsg => 32630;

    /// <summary>0.001 m: there is no datum shift.</summary>
    public double AccuracyMetres => 0.001;

    /// <inheritdoc/>
    public bool Contains(EastNorth point) => ChannelIslandsLetters.Contain(point);

    /// <inheritdoc/>
    public EastNorth FromLatLon(LatLon point) => Plane.FromLatLon(point);

    /// <inheritdoc/>
    public LatLon ToLatLon(EastNorth point) => Plane.ToLatLon(point);

    /// <inheritdoc/>
    public string? Letters(EastNorth point) => ChannelIslandsLetters.At(point);
}
