namespace RangeMap.Grids;

/// <summary>The European reference grid on ETRS89-LAEA (EPSG:3035), whose squares are named by cell codes such as 10kmE342N321.</summary>
/// <remarks>
/// Area: eastings [900 km, 7400 km), northings [900 km, 5500 km), as Commission Implementing Regulation (EU) 2018/1799, article 3, bounds it. On an
/// equal-area plane squares are equal in area and not in shape: 1,000 km from the middle (52 N 10 E) a side is up to 0.3 % longer or shorter.
/// </remarks>
internal sealed class EuropeanGrid : INationalGrid
{
    private static readonly PlaneBounds Area = new(900_000, 900_000, 7_400_000, 5_500_000);
    private static readonly UnshiftedPlane Plane = new(new LambertAzimuthalEqualArea(Ellipsoid.Grs80, 52, 10, 4_321_000, 3_210_000));

    /// <inheritdoc/>
    public GridId Id => GridId.European;

    /// <inheritdoc/>
    public string Code => "EU";

    /// <inheritdoc/>
    public string Name => "European reference grid (ETRS89-LAEA)";

    /// <inheritdoc/>
    public int Epsg => 3035;

    /// <summary>0.001 m: there is no datum shift.</summary>
    public double AccuracyMetres => 0.001;

    /// <inheritdoc/>
    public bool Contains(EastNorth point) => Area.Contains(point);

    /// <inheritdoc/>
    public EastNorth FromLatLon(LatLon point) => Plane.FromLatLon(point);

    /// <inheritdoc/>
    public LatLon ToLatLon(EastNorth point) => Plane.ToLatLon(point);

    /// <inheritdoc/>
    public string? Letters(EastNorth point) => Contains(point) ? CellCode.Of(Square.At(Id, SquareSize.Km100, point)) : null;

    /// <summary>The cell code, such as 10kmE342N321.</summary>
    /// <inheritdoc/>
    public bool TryWriteName(Square square, Span<char> destination, out int length)
    {
        if (!Contains(new(square.Easting, square.Northing)))
            throw new ArgumentOutOfRangeException(nameof(square), "The square lies outside the area of its grid.");
        return CellCode.TryWrite(square, destination, out length);
    }
}
