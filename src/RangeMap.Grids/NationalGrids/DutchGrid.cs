namespace RangeMap.Grids;

/// <summary>Dutch RD New (Amersfoort datum, EPSG:28992): oblique stereographic on Bessel, through the seven-parameter shift EPSG:9281.</summary>
/// <remarks>
/// Area: x [0, 300 km), y [300 km, 700 km). The official way adds a grid of corrections of up to 0.25 m, which is not used.
/// </remarks>
internal sealed class DutchGrid() : NumberedGrid(new(0, 300_000, 300_000, 700_000))
{
    private static readonly ShiftedPlane Plane = new(
        Ellipsoid.Bessel,
        new ObliqueStereographic(Ellipsoid.Bessel, 52 + 9 / 60.0 + 22.178 / 3600, 5 + 23 / 60.0 + 15.5 / 3600, 0.9999079, 155_000, 463_000),
        PublishedShifts.Amersfoort);

    /// <inheritdoc/>
    public override GridId Id => GridId.Dutch;

    /// <inheritdoc/>
    public override string Code => "RD";

    /// <inheritdoc/>
    public override string Name => "Dutch RD";

    /// <inheritdoc/>
    public override int Epsg => 28992;

    /// <summary>0.25 m, as published for the shift.</summary>
    public override double AccuracyMetres => 0.25;

    /// <inheritdoc/>
    public override EastNorth FromLatLon(LatLon point) => Plane.FromLatLon(point);

    /// <inheritdoc/>
    public override LatLon ToLatLon(EastNorth point) => Plane.ToLatLon(point);
}
