namespace RangeMap.Grids;

/// <summary>The squares of a national grid that lie in a polygon.</summary>
public static class SquaresInPolygon
{
    /// <summary>The squares of a size by a rule, in the order of their codes; those outside the grid's area are left out.</summary>
    public static IReadOnlyList<Square> Of(INationalGrid grid, SquareSize size, GeoPolygon polygon, SquareRule rule)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(polygon);
        return OnPlane(grid, size, polygon.On(grid), rule);
    }

    internal static IReadOnlyList<Square> OnPlane(INationalGrid grid, SquareSize size, EastNorth[][] rings, SquareRule rule)
    {
        var side = (int)size;
        var cells = new HashSet<(int Column, int Row)>();
        LatticeWalk.Centres(rings, side, cells);
        if (rule != SquareRule.Centre)
            LatticeWalk.Edges(rings, side, cells);
        var squares = new List<Square>(cells.Count);
        foreach (var (column, row) in cells)
        {
            var corner = new EastNorth((double)column * side, (double)row * side);
            if (grid.Contains(corner) && (rule != SquareRule.Most || Share(rings, corner, side) > 0.5))
                squares.Add(new(grid.Id, size, column * side, row * side));
        }

        squares.Sort();
        return squares;
    }

    private static double Share(EastNorth[][] rings, EastNorth corner, int side) =>
        RingCut.AreaIn(rings, new(corner.Easting, corner.Northing, corner.Easting + side, corner.Northing + side)) / ((double)side * side);
}
