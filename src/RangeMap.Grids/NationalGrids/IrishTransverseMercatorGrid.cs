namespace RangeMap.Grids;

/// <summary>Irish Transverse Mercator (EPSG:2157), on ETRS89 itself. Its numbers lie about 400 km east and 500 km north of those of the Irish Grid, so the two cannot be mixed up.</summary>
/// <remarks>Area: eastings [400 km, 800 km), northings [500 km, 1000 km). Lettered references of Ireland are on the Irish Grid, never here.</remarks>
internal sealed class IrishTransverseMercatorGrid() : NumberedGrid(new(400_000, 500_000, 800_000, 1_000_000))
{
    private static readonly UnshiftedPlane Plane = new(new KruegerTransverseMercator(Ellipsoid.Grs80, 53.5, -8, 0.99982, 600_000, 750_000));

    /// <inheritdoc/>
    public override GridId Id => GridId.IrishTransverseMercator;

    /// <inheritdoc/>
    public override string Code => "ITM";

    /// <inheritdoc/>
    public override string Name => "Irish Transverse Mercator";

    /// <inheritdoc/>
    public override int Epsg => 2157;

    /// <summary>0.001 m: there is no datum shift.</summary>
    public override double AccuracyMetres => 0.001;

    /// <inheritdoc/>
    public override EastNorth FromLatLon(LatLon point) => Plane.FromLatLon(point);

    /// <inheritdoc/>
    public override LatLon ToLatLon(EastNorth point) => Plane.ToLatLon(point);
}
