namespace RangeMap.Grids;

/// <summary>Polygons cut along the 10 km lines of one grid, so that the land of a square is found without walking the coast of a whole island.</summary>
internal sealed class LandTiles
{
    private const int Side = (int)SquareSize.Km10;
    private readonly Dictionary<(int Column, int Row), List<(EastNorth[] Ring, int Sign)>> _tiles = [];

    /// <summary>Cuts the polygons, which must not overlap.</summary>
    public LandTiles(IEnumerable<GeoPolygon> polygons, INationalGrid grid)
    {
        foreach (var rings in polygons.Select(polygon => polygon.On(grid)))
        {
            for (var k = 0; k < rings.Length; k++)
                Add(rings[k], k == 0 ? 1 : -1);
        }
    }

    /// <summary>The part of the square that the polygons cover, 0 to 1.</summary>
    public double Share(Square square)
    {
        double east = square.Easting + square.SideMetres, north = square.Northing + square.SideMetres;
        var area = 0.0;
        for (var column = square.Easting / Side; column * (double)Side < east; column++)
        {
            for (var row = square.Northing / Side; row * (double)Side < north; row++)
            {
                if (_tiles.TryGetValue((column, row), out var pieces))
                    area += pieces.Sum(piece => piece.Sign * RingCut.AreaIn(piece.Ring, new(square.Easting, square.Northing, east, north)));
            }
        }

        return Math.Clamp(area / ((double)square.SideMetres * square.SideMetres), 0, 1);
    }

    private void Add(EastNorth[] ring, int sign)
    {
        foreach (var (column, strip) in RingCut.Strips(ring, Axis.East, Side))
        {
            foreach (var (row, piece) in RingCut.Strips(strip, Axis.North, Side))
            {
                if (!_tiles.TryGetValue((column, row), out var pieces))
                    _tiles[(column, row)] = pieces = [];
                pieces.Add((piece, sign));
            }
        }
    }
}
