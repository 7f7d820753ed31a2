namespace RangeMap.Grids;

/// <summary>Which cells of a square lattice a polygon on a plane meets. Cells are counted from the plane's origin.</summary>
internal static class LatticeWalk
{
    /// <summary>The cells that an edge of the rings passes through; an edge that runs along a lattice line counts to the north and east of it.</summary>
    public static void Edges(EastNorth[][] rings, int side, HashSet<(int Column, int Row)> cells)
    {
        foreach (var ring in rings)
        {
            for (var k = 1; k < ring.Length; k++)
                Edge(ring[k - 1], ring[k], side, cells);
        }
    }

    /// <summary>The cells whose middle lies within the rings (even-odd rule), found row by row.</summary>
    public static void Centres(EastNorth[][] rings, int side, HashSet<(int Column, int Row)> cells)
    {
        foreach (var (row, crossings) in CrossingsOfRows(rings, side))
        {
            crossings.Sort();
            for (var k = 0; k + 1 < crossings.Count; k += 2)
            {
                for (var column = FirstCentre(crossings[k], side); (column + 0.5) * side < crossings[k + 1]; column++)
                    cells.Add((column, row));
            }
        }
    }

    private static void Edge(EastNorth from, EastNorth to, int side, HashSet<(int Column, int Row)> cells)
    {
        List<double> cuts = [0, 1];
        AddCuts(cuts, from.Easting, to.Easting, side);
        AddCuts(cuts, from.Northing, to.Northing, side);
        cuts.Sort();
        for (var k = 1; k < cuts.Count; k++)
        {
            var middle = (cuts[k - 1] + cuts[k]) / 2;
            cells.Add((Cell(from.Easting, to.Easting, middle, side), Cell(from.Northing, to.Northing, middle, side)));
        }
    }

    /// <summary>Parts of the way from a to b at which a lattice line is passed.</summary>
    private static void AddCuts(List<double> cuts, double a, double b, int side)
    {
        for (var line = Math.Floor(Math.Min(a, b) / side) + 1; line * side < Math.Max(a, b); line++)
            cuts.Add((line * side - a) / (b - a));
    }

    private static int Cell(double a, double b, double part, int side) => (int)Math.Floor((a + part * (b - a)) / side);

    private static Dictionary<int, List<double>> CrossingsOfRows(EastNorth[][] rings, int side)
    {
        var rows = new Dictionary<int, List<double>>();
        foreach (var ring in rings)
        {
            for (var k = 1; k < ring.Length; k++)
            {
                EastNorth a = ring[k - 1], b = ring[k];
                double south = Math.Min(a.Northing, b.Northing), north = Math.Max(a.Northing, b.Northing);
                for (var row = FirstCentre(south, side); (row + 0.5) * side < north; row++)
                {
                    if (!rows.TryGetValue(row, out var crossings))
                        rows[row] = crossings = [];
                    crossings.Add(a.Easting + ((row + 0.5) * side - a.Northing) / (b.Northing - a.Northing) * (b.Easting - a.Easting));
                }
            }
        }

        return rows;
    }

    /// <summary>The first cell whose middle is at or beyond the coordinate.</summary>
    private static int FirstCentre(double coordinate, int side) => (int)Math.Ceiling(coordinate / side - 0.5);
}
