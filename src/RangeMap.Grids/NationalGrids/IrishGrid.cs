namespace RangeMap.Grids;

/// <summary>Irish Grid (TM75, EPSG:29903) for the island of Ireland, through the seven-parameter shift EPSG:1954.</summary>
/// <remarks>Lettered area: eastings and northings [0, 500 km). References of the older TM65 (EPSG:29902) give the same results.</remarks>
internal sealed class IrishGrid : INationalGrid
{
    private const int Side = 100_000;
    private static readonly string[] SquareLetters = [.. Enumerable.Range(0, 25).Select(k => LetterLattice.At(k % 5, k / 5).ToString())];
    private static readonly ShiftedPlane Plane = new(
        Ellipsoid.AiryModified,
        new KruegerTransverseMercator(Ellipsoid.AiryModified, 53.5, -8, 1.000035, 200_000, 250_000),
        PublishedShifts.Tm75);

    /// <inheritdoc/>
    public GridId Id => GridId.Irish;

    /// <inheritdoc/>
    public string Code => "IE";

    /// <inheritdoc/>
    public string Name => "Irish Grid";

    /// <inheritdoc/>
    public int Epsg => 29903;

    /// <summary>1 m, as published for the shift.</summary>
    public double AccuracyMetres => 1;

    /// <inheritdoc/>
    public bool Contains(EastNorth point) => point.Easting is >= 0 and < 5 * Side && point.Northing is >= 0 and < 5 * Side;

    /// <inheritdoc/>
    public EastNorth FromLatLon(LatLon point) => Plane.FromLatLon(point);

    /// <inheritdoc/>
    public LatLon ToLatLon(EastNorth point) => Plane.ToLatLon(point);

    /// <inheritdoc/>
    public string? Letters(EastNorth point) =>
        Contains(point) ? SquareLetters[(int)(point.Northing / Side) * 5 + (int)(point.Easting / Side)] : null;

    /// <summary>The corner of the 100 km square of a capital letter; false for I and for anything but a letter.</summary>
    public static bool TryFindCorner(char letter, out int easting, out int northing)
    {
        var found = LetterLattice.TryFind(letter, out var column, out var row);
        (easting, northing) = (column * Side, row * Side);
        return found;
    }
}
