namespace RangeMap.Grids;

/// <summary>
/// A pyramid of map tiles on one plane: level z has 2^z by 2^z tiles of 256 by 256 cells, row 0 in the north, column 0 in
/// the west (OGC Two Dimensional Tile Matrix Set 2.0).
/// </summary>
public sealed class TileMatrixSet
{
    /// <summary>Cells along the side of a tile.</summary>
    public const int TileSize = 256;

    private TileMatrixSet(string id, IPlane plane, EastNorth topLeft, double worldSide, int maxZoom)
    {
        (Id, Plane, TopLeft, WorldSide, MaxZoom) = (id, plane, topLeft, worldSide, maxZoom);
    }

    /// <summary>The registered set of most web maps; its origin is the north-western corner of the square world.</summary>
    public static TileMatrixSet WebMercatorQuad { get; } = new(
        "WebMercatorQuad", WebMercatorPlane.Instance, new(-WebMercatorPlane.HalfWidth, WebMercatorPlane.HalfWidth), 2 * WebMercatorPlane.HalfWidth, 24);

    /// <summary>
    /// RangeMap's own set on the British National Grid plane, wide enough for Ireland and the Channel Islands: origin
    /// E -640,000 N 1,920,000, cells of 10,000 m / 2^z. At level 8 a tile is exactly one 10 km square, at level 16 a cell is 0.15 m.
    /// </summary>
    public static TileMatrixSet BritishNationalGrid { get; } = new(
        "BritishNationalGrid", NationalGrid.Get(GridId.British), new(-640_000, 1_920_000), 10_000.0 * TileSize, 16);

    /// <summary>Both sets.</summary>
    public static IReadOnlyList<TileMatrixSet> All { get; } = [WebMercatorQuad, BritishNationalGrid];

    /// <summary>The identifier, as in the address of a tile.</summary>
    public string Id { get; }

    /// <summary>The plane that the tiles cut up.</summary>
    public IPlane Plane { get; }

    /// <summary>The north-western corner of tile (z, 0, 0) for every z.</summary>
    public EastNorth TopLeft { get; }

    /// <summary>The side of the one tile of level 0, metres.</summary>
    public double WorldSide { get; }

    /// <summary>The finest level; the coarsest is 0.</summary>
    public int MaxZoom { get; }

    /// <summary>The set of an identifier, or null.</summary>
    public static TileMatrixSet? Find(string id) => All.FirstOrDefault(set => set.Id == id);

    /// <summary>Tiles in a row or a column of a level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level lies outside [0, MaxZoom].</exception>
    public int MatrixSize(int zoom) =>
        zoom >= 0 && zoom <= MaxZoom ? 1 << zoom : throw new ArgumentOutOfRangeException(nameof(zoom), zoom, $"Level must be 0 to {MaxZoom}.");

    /// <summary>Side of a tile of a level, metres.</summary>
    public double TileSide(int zoom) => WorldSide / MatrixSize(zoom);

    /// <summary>Side of a cell (one of 256 along a tile) of a level, metres.</summary>
    public double CellSize(int zoom) => TileSide(zoom) / TileSize;

    /// <summary>True when the set has this tile.</summary>
    public bool Contains(int zoom, int column, int row) =>
        zoom >= 0 && zoom <= MaxZoom && column >= 0 && row >= 0 && column < 1 << zoom && row < 1 << zoom;

    /// <summary>The box of a tile on the plane.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such tile.</exception>
    public PlaneBounds TileBounds(int zoom, int column, int row)
    {
        if (!Contains(zoom, column, row))
            throw new ArgumentOutOfRangeException(nameof(zoom), (zoom, column, row), $"{Id} has no such tile.");
        var side = TileSide(zoom);
        double west = TopLeft.Easting + column * side, north = TopLeft.Northing - row * side;
        return new(west, north - side, west + side, north);
    }

    /// <summary>Latitude/longitude to the plane.</summary>
    public EastNorth Project(LatLon point) => Plane.FromLatLon(point);

    /// <summary>The tiles of a level that a box on the plane overlaps; empty when it lies outside.</summary>
    public TileRange TilesOf(PlaneBounds box, int zoom)
    {
        int last = MatrixSize(zoom) - 1;
        var side = TileSide(zoom);
        int First(double distance) => (int)Math.Clamp(Math.Floor(distance / side), 0, last + 1.0);
        int Last(double distance) => (int)Math.Clamp(Math.Ceiling(distance / side) - 1, -1, last);
        return new(
            zoom,
            First(box.West - TopLeft.Easting), Last(box.East - TopLeft.Easting),
            First(TopLeft.Northing - box.North), Last(TopLeft.Northing - box.South));
    }
}
