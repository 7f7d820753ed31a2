using System.Globalization;

namespace RangeMap.Grids;

/// <summary>
/// A grid without letters whose eastings and northings have six figures everywhere. A square is named by the grid's code and the leading figures of
/// its corner: one each for 100 km, three each for 1 km, six each for 1 m, so ITM715734 or RD155463; tetrads and quadrants as on lettered grids.
/// </summary>
/// <param name="area">Where squares have names; within [100 km, 1000 km) or with zeros written in front.</param>
internal abstract class NumberedGrid(PlaneBounds area) : INationalGrid
{
    /// <summary>Figures of each coordinate in whole metres.</summary>
    public const int Figures = 6;

    private const int Side = 100_000;

    /// <inheritdoc/>
    public abstract GridId Id { get; }

    /// <inheritdoc/>
    public abstract string Code { get; }

    /// <inheritdoc/>
    public abstract string Name { get; }

    /// <inheritdoc/>
    public abstract int Epsg { get; }

    /// <inheritdoc/>
    public abstract double AccuracyMetres { get; }

    /// <inheritdoc/>
    public bool Contains(EastNorth point) => area.Contains(point);

    /// <inheritdoc/>
    public abstract EastNorth FromLatLon(LatLon point);

    /// <inheritdoc/>
    public abstract LatLon ToLatLon(EastNorth point);

    /// <inheritdoc/>
    public string? Letters(EastNorth point) =>
        Contains(point) ? string.Create(CultureInfo.InvariantCulture, $"{Code}{(int)(point.Easting / Side)}{(int)(point.Northing / Side)}") : null;

    /// <inheritdoc/>
    public bool TryWriteName(Square square, Span<char> destination, out int length)
    {
        if (!Contains(new(square.Easting, square.Northing)))
            throw new ArgumentOutOfRangeException(nameof(square), "The square lies outside the area of its grid.");
        return LetteredName.TryWrite(Code, square, square.Easting, square.Northing, Figures, destination, out length);
    }
}
