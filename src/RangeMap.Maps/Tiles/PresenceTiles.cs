using System.Buffers;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>
/// A presence map made ready to be drawn as vector tiles of one tile matrix set: outlines projected, properties
/// encoded, squares ordered by place. Made once, drawn from many threads at once; it never changes.
/// </summary>
/// <remarks>
/// Tiles follow the Mapbox Vector Tile specification 2.1: one layer "presence", one polygon a square, extent 4096, clipped
/// to the tile with a buffer of 64. A square keeps its id, its code, in every tile and at every zoom. At zooms where all
/// squares are smaller than <see cref="PixelThinning.Side"/> units they are thinned to one a pixel. The properties are
/// those of <see cref="PropertyNames"/>.
/// </remarks>
public sealed class PresenceTiles
{
    /// <summary>The name of the layer.</summary>
    public const string LayerName = "presence";

    private readonly byte[] _layer;
    private readonly PresenceSquare[] _squares;
    private readonly EastNorth[][] _outlines;
    private readonly PlaneBounds[] _boxes;
    private readonly SquareTags _tags;
    private readonly SquareIndex _index;
    private readonly double _largestSide;
    private readonly Lazy<PixelThinning>[] _thinned;

    /// <summary>Makes a map ready.</summary>
    /// <param name="map">The map; squares of several national grids may occur.</param>
    /// <param name="set">The tile matrix set; its plane need not be the squares' own.</param>
    /// <param name="layer">Name of the layer; tiles of several maps put one after the other make one tile, if their layers have different names.</param>
    public PresenceTiles(PresenceMap map, TileMatrixSet set, string layer = LayerName)
    {
        Set = set;
        _layer = System.Text.Encoding.UTF8.GetBytes(layer);
        var store = Outlines.On(set);
        var outlines = map.Squares.Select(square => store.Of(square.Square)).ToArray();
        var boxes = Array.ConvertAll(outlines, outline => PlaneBounds.Around(outline));
        _index = new SquareIndex(boxes);
        _squares = Array.ConvertAll(_index.Order, i => map.Squares[i]);
        _outlines = Array.ConvertAll(_index.Order, i => outlines[i]);
        _boxes = Array.ConvertAll(_index.Order, i => boxes[i]);
        _largestSide = _boxes.Select(box => box.LongerSide()).DefaultIfEmpty(0).Max();
        _tags = new SquareTags(map.Periods.Count);
        foreach (var square in _squares)
            _tags.Add(square);
        // Without locks: two threads may thin the same zoom at once, to equal results, of which one is kept.
        _thinned = [.. Enumerable.Range(0, ThinnedZooms()).Select(zoom => new Lazy<PixelThinning>(
            () => PixelThinning.Of(_squares, _boxes, Frame(zoom, 0, 0)), LazyThreadSafetyMode.PublicationOnly))];
        Extent = _boxes.Length == 0 ? null : _boxes.Aggregate((a, b) => a.Union(b));
    }

    /// <summary>The tile matrix set that the tiles belong to.</summary>
    public TileMatrixSet Set { get; }

    /// <summary>The smallest box round all squares on the set's plane, metres; null for a map without squares.</summary>
    public PlaneBounds? Extent { get; }

    /// <summary>The tiles of a zoom that the extent meets; others are empty but for buffers. Null for a map without squares.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such zoom.</exception>
    public TileRange? Covering(int zoom) => Extent is { } extent ? Set.TilesOf(extent, zoom) : null;

    /// <summary>The tiles of a zoom that may have bytes: those that the extent meets, and neighbours whose buffer it reaches. Null for a map without squares.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such zoom.</exception>
    public TileRange? Drawn(int zoom) => Extent is { } extent ? Set.TilesOf(extent.Grown(TileFrame.Buffer * Set.TileSide(zoom) / TileFrame.Extent), zoom) : null;

    /// <summary>Draws a tile. A tile without squares has no bytes at all, which is a valid empty tile.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such tile.</exception>
    public byte[] Draw(int zoom, int column, int row)
    {
        var output = new ArrayBufferWriter<byte>(1024);
        Draw(zoom, column, row, output);
        return output.WrittenSpan.ToArray();
    }

    /// <summary>Draws a tile to an output.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such tile.</exception>
    public void Draw(int zoom, int column, int row, IBufferWriter<byte> output)
    {
        if (!Set.Contains(zoom, column, row))
            throw new ArgumentOutOfRangeException(nameof(zoom), (zoom, column, row), $"{Set.Id} has no tile of this zoom, column and row.");
        if (_squares.Length == 0)
            return;
        using var layer = new LayerWriter(_tags, Frame(zoom, column, row));
        if (zoom < _thinned.Length)
            DrawPixels(_thinned[zoom].Value.In(row, column), layer);
        else
            DrawSquares(layer, Frame(zoom, column, row).Drawn);
        layer.Finish(output, _layer);
    }

    private void DrawSquares(LayerWriter layer, PlaneBounds drawn)
    {
        foreach (var (from, to) in _index.Rows(drawn))
        {
            for (var i = from; i < to; i++)
            {
                if (drawn.Overlaps(_boxes[i]))
                    layer.Add(i, (ulong)_squares[i].Square.Code, _outlines[i], !drawn.Covers(_boxes[i]));
            }
        }
    }

    private void DrawPixels(IReadOnlyList<PixelThinning.Pixel> pixels, LayerWriter layer)
    {
        foreach (var pixel in pixels)
            layer.AddBox(pixel.Square, (ulong)_squares[pixel.Square].Square.Code, pixel.Left, pixel.Top, PixelThinning.Side);
    }

    private int ThinnedZooms()
    {
        var zoom = 0;
        while (_squares.Length > 0 && zoom <= Set.MaxZoom && _largestSide * TileFrame.Extent / Set.TileSide(zoom) < PixelThinning.Side)
            zoom++;
        return zoom;
    }

    private TileFrame Frame(int zoom, int column, int row)
    {
        var side = Set.TileSide(zoom);
        return new(Set.TopLeft.Easting + column * side, Set.TopLeft.Northing - row * side, TileFrame.Extent / side);
    }
}
