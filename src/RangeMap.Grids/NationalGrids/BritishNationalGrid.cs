namespace RangeMap.Grids;

/// <summary>British National Grid (OSGB36, EPSG:27700) for Great Britain and the Isle of Man, through OSTN15.</summary>
/// <remarks>Lettered area: eastings [0, 700 km), northings [0, 1300 km).</remarks>
internal sealed class BritishNationalGrid : INationalGrid
{
    private const int Columns = 7, Rows = 13, Side = 100_000;

    // OSTN15 is defined on the National Grid projection applied to GRS80, not to Airy.
    internal static readonly RedfearnTransverseMercator Projection = new(Ellipsoid.Grs80, 49, -2, 0.9996012717, 400_000, -100_000);
    private static readonly string[] SquareLetters = MakeLetters();

    /// <inheritdoc/>
    public GridId Id => GridId.British;

    /// <inheritdoc/>
    public string Code => "GB";

    /// <inheritdoc/>
    public string Name => "British National Grid";

    /// <inheritdoc/>
    public int Epsg => 27700;

    /// <summary>0.001 m: of the way from ETRS89, as the grid is now defined by OSTN15.</summary>
    public double AccuracyMetres => 0.001;

    /// <inheritdoc/>
    public bool Contains(EastNorth point) => point.Easting is >= 0 and < Columns * Side && point.Northing is >= 0 and < Rows * Side;

    /// <inheritdoc/>
    public EastNorth FromLatLon(LatLon point) => Ostn15.ToOsgb36(Projection.Forward(point));

    /// <inheritdoc/>
    public LatLon ToLatLon(EastNorth point) => Projection.Inverse(Ostn15.ToEtrs89(point));

    /// <inheritdoc/>
    public bool IsApproximate(LatLon point) => !Ostn15.Defines(Projection.Forward(point));

    /// <inheritdoc/>
    public string? Letters(EastNorth point) =>
        Contains(point) ? SquareLetters[(int)(point.Northing / Side) * Columns + (int)(point.Easting / Side)] : null;

    /// <summary>The corner of the 100 km square of two capital letters; false when they name none in the lettered area.</summary>
    public static bool TryFindCorner(char first, char second, out int easting, out int northing)
    {
        easting = northing = 0;
        if (!LetterLattice.TryFind(first, out var column500, out var row500) || !LetterLattice.TryFind(second, out var column, out var row))
            return false;
        // The first letter's lattice of 500 km squares has S at the origin: third column, second row.
        column += 5 * (column500 - 2);
        row += 5 * (row500 - 1);
        (easting, northing) = (column * Side, row * Side);
        return column is >= 0 and < Columns && row is >= 0 and < Rows;
    }

    private static string[] MakeLetters()
    {
        var letters = new string[Columns * Rows];
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
                letters[row * Columns + column] = new([LetterLattice.At(column / 5 + 2, row / 5 + 1), LetterLattice.At(column % 5, row % 5)]);
        }

        return letters;
    }
}
