namespace RangeMap.Grids;

/// <summary>
/// Channel Islands on ED50, UTM zone 30 (EPSG:23030), the datum of older maps and references, through EPSG operation 1133
/// (the mean shift for western Europe; the other published shifts for ED50 here lie within 2 m of it).
/// </summary>
/// <remarks>Lettered area: eastings [500 km, 600 km), northings [5400 km, 5600 km).</remarks>
internal sealed class ChannelIslandsEd50Grid : INationalGrid
{
    private static readonly ShiftedPlane Plane = new(
        Ellipsoid.International1924,
        new KruegerTransverseMercator(Ellipsoid.International1924, 0, -3, 0.9996, 500_000, 0),
        PublishedShifts.Ed50);

    /// <inheritdoc/>
    public GridId Id => GridId.ChannelIslands;

    /// <inheritdoc/>
    public string Code => "CI";

    /// <inheritdoc/>
    public string Name => "Channel Islands grid (ED50)";

    /// <inheritdoc/>
    public int Epsg => 23030;

    /// <summary>10 m, as published for the shift.</summary>
    public double AccuracyMetres => 10;

    /// <inheritdoc/>
    public bool Contains(EastNorth point) => ChannelIslandsLetters.Contain(point);

    /// <inheritdoc/>
    public EastNorth FromLatLon(LatLon point) => Plane.FromLatLon(point);

    /// <inheritdoc/>
    public LatLon ToLatLon(EastNorth point) => Plane.ToLatLon(point);

    /// <inheritdoc/>
    public string? Letters(EastNorth point) => ChannelIslandsLetters.At(point);
}
