namespace RangeMap.Grids;

/// <summary>Finds the square of a place.</summary>
public static class SquareFinder
{
    /// <summary>The sizes, finest first.</summary>
    public static IReadOnlyList<SquareSize> Sizes { get; } = Enum.GetValues<SquareSize>();

    /// <summary>The square of a size that holds the place, or null outside the grid's lettered area.</summary>
    public static Square? SquareAt(INationalGrid grid, LatLon place, SquareSize size)
    {
        var point = grid.FromLatLon(place);
        return grid.Contains(point) ? Square.At(grid.Id, size, point) : null;
    }

    /// <summary>The square itself and every coarser one that wholly contains it, finest first.</summary>
    public static IEnumerable<Square> WithCoarser(Square square)
    {
        foreach (var size in Sizes)
        {
            if (square.TryCoarsen(size, out var container))
                yield return container;
        }
    }

    /// <summary>
    /// The smallest square that a place with an uncertainty supports: its side is at least twice the radius, and it holds
    /// the whole circle. Null when even the 100 km square does not, or the place lies outside the grid's lettered area.
    /// </summary>
    /// <param name="grid">The national grid.</param>
    /// <param name="place">The middle of the circle.</param>
    /// <param name="radiusMetres">The uncertainty, 0 or more; 0 gives the 1 m square. Taken as a distance on the grid's plane, which differs from that on the ground by less than 0.4 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative or no number.</exception>
    public static Square? SquareForCircle(INationalGrid grid, LatLon place, double radiusMetres)
    {
        if (!(radiusMetres >= 0))
            throw new ArgumentOutOfRangeException(nameof(radiusMetres), radiusMetres, "The radius must be 0 m or more.");
        var point = grid.FromLatLon(place);
        if (!grid.Contains(point))
            return null;
        foreach (var size in Sizes)
        {
            if ((int)size < 2 * radiusMetres)
                continue;
            var square = Square.At(grid.Id, size, point);
            if (HoldsCircle(square, point, radiusMetres))
                return square;
        }

        return null;
    }

    /// <summary>The circle with its rim must lie in the square; a rim that touches the eastern or northern edge already lies in the next square.</summary>
    private static bool HoldsCircle(Square square, EastNorth middle, double radius) =>
        square.Contains(new(middle.Easting - radius, middle.Northing - radius)) &&
        square.Contains(new(middle.Easting + radius, middle.Northing + radius));
}
