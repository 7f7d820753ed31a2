namespace RangeMap.Grids;

/// <summary>The squares that touch a square by an edge or a corner.</summary>
public static class SquareNeighbours
{
    private static readonly (int East, int North)[] Directions = [(0, 1), (1, 1), (1, 0), (1, -1), (0, -1), (-1, -1), (-1, 0), (-1, 1)];

    /// <summary>Up to eight squares of the same size and grid, clockwise from the north; those outside the lettered area are left out.</summary>
    public static IReadOnlyList<Square> Of(Square square)
    {
        var grid = NationalGrid.Get(square.Grid);
        var neighbours = new List<Square>(Directions.Length);
        foreach (var (east, north) in Directions)
        {
            int easting = square.Easting + east * square.SideMetres, northing = square.Northing + north * square.SideMetres;
            if (grid.Contains(new(easting, northing)))
                neighbours.Add(new(square.Grid, square.Size, easting, northing));
        }

        return neighbours;
    }
}
