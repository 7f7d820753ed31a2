using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>
/// Squares too small to be told apart at one zoom, thinned to one a pixel: of the squares whose middles share a pixel, the
/// one with the earliest first year is drawn as that pixel (then the most records, then the lowest code). The
/// properties stay those of that one square.
/// </summary>
internal sealed class PixelThinning
{
    /// <summary>
    /// Side of a drawn pixel in tile units. Maps show a tile at 256 to 512 pixels, so this is half a pixel to one; squares
    /// smaller than this are thinned.
    /// </summary>
    public const int Side = 8;

    private const int PixelsPerTile = TileFrame.Extent / Side;

    private readonly Dictionary<(int Row, int Column), List<Pixel>> _tiles = [];

    private PixelThinning()
    {
    }

    /// <summary>One drawn pixel: its top left corner in units of its tile, and the square that it stands for.</summary>
    public readonly record struct Pixel(int Left, int Top, int Square);

    /// <summary>Thins squares, given by the middles of their boxes, to the pixels of a zoom.</summary>
    public static PixelThinning Of(IReadOnlyList<PresenceSquare> squares, ReadOnlySpan<PlaneBounds> boxes, TileFrame wholeZoom)
    {
        var kept = new Dictionary<(int Row, int Column), int>();
        for (var i = 0; i < squares.Count; i++)
        {
            var middle = wholeZoom.ToTile(boxes[i].Middle());
            var pixel = ((int)Math.Floor(middle.Y / Side), (int)Math.Floor(middle.X / Side));
            if (!kept.TryGetValue(pixel, out var other) || Outranks(squares[i], squares[other]))
                kept[pixel] = i;
        }

        var thinned = new PixelThinning();
        foreach (var ((row, column), square) in kept.OrderBy(pair => squares[pair.Value].Square))
            thinned.Add(row, column, square);
        return thinned;
    }

    /// <summary>The pixels of a tile, ordered by the codes of their squares.</summary>
    public IReadOnlyList<Pixel> In(int row, int column) => _tiles.TryGetValue((row, column), out var pixels) ? pixels : [];

    private void Add(int row, int column, int square)
    {
        var (tileRow, tileColumn) = (Math.DivRem(row, PixelsPerTile), Math.DivRem(column, PixelsPerTile));
        var tile = (tileRow.Quotient, tileColumn.Quotient);
        if (!_tiles.TryGetValue(tile, out var pixels))
            _tiles.Add(tile, pixels = []);
        pixels.Add(new(tileColumn.Remainder * Side, tileRow.Remainder * Side, square));
    }

    private static bool Outranks(PresenceSquare a, PresenceSquare b)
    {
        if (a.FirstYear != b.FirstYear)
            return a.FirstYear < b.FirstYear;
        var (ofA, ofB) = (SquareSummary.Of(a).Records, SquareSummary.Of(b).Records);
        return ofA != ofB ? ofA > ofB : a.Square.Code < b.Square.Code;
    }
}
