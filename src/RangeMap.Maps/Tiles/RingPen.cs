using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Draws one ring into a tile: projects it to tile units, clips it to the tile and its buffer, rounds it to whole units
/// and writes it as commands. Keeps its working memory from ring to ring; one pen serves one thread.
/// </summary>
internal sealed class RingPen
{
    private TilePoint[] _points = new TilePoint[64];
    private TilePoint[] _clipped = new TilePoint[64];
    private readonly WholeRing _ring = new();

    /// <summary>Writes the ring's geometry; false, with nothing written, when no area of it is left in the tile.</summary>
    /// <param name="outline">Closed, anticlockwise with north up.</param>
    /// <param name="needsClip">False when the outline lies wholly in the tile and its buffer.</param>
    /// <param name="frame">The tile.</param>
    /// <param name="geometry">Receives the commands.</param>
    public bool TryDraw(ReadOnlySpan<EastNorth> outline, bool needsClip, in TileFrame frame, ProtobufBuffer geometry)
    {
        var count = Project(outline, frame);
        if (needsClip)
            count = Clip(count);
        _ring.Clear();
        for (var i = 0; i < count; i++)
            _ring.Add((int)Math.Floor(_points[i].X + 0.5), (int)Math.Floor(_points[i].Y + 0.5));
        return _ring.TryWrite(geometry);
    }

    /// <summary>Backwards, because an exterior ring must run clockwise on the screen, and without the repeated point.</summary>
    private int Project(ReadOnlySpan<EastNorth> outline, in TileFrame frame)
    {
        // Clipping a ring at one edge adds at most one point for each two it had; four edges stay below this.
        var room = outline.Length * 6 + 8;
        if (_points.Length < room)
            (_points, _clipped) = (new TilePoint[room], new TilePoint[room]);
        var count = 0;
        for (var i = outline.Length - 1; i > 0; i--)
            _points[count++] = frame.ToTile(outline[i]);
        return count;
    }

    /// <summary>Sutherland and Hodgman (1974): cuts the ring at one edge of the box after the other.</summary>
    private int Clip(int count)
    {
        const double low = -TileFrame.Buffer, high = TileFrame.Extent + TileFrame.Buffer;
        count = CutBelow(count, low, alongY: false, sign: 1);
        count = CutBelow(count, -high, alongY: false, sign: -1);
        count = CutBelow(count, low, alongY: true, sign: 1);
        return CutBelow(count, -high, alongY: true, sign: -1);
    }

    /// <summary>Keeps what has sign * coordinate >= limit.</summary>
    private int CutBelow(int count, double limit, bool alongY, int sign)
    {
        var kept = 0;
        for (var i = 0; i < count; i++)
        {
            var (a, b) = (_points[i], _points[i + 1 == count ? 0 : i + 1]);
            var (da, db) = (sign * (alongY ? a.Y : a.X) - limit, sign * (alongY ? b.Y : b.X) - limit);
            if (da >= 0)
                _clipped[kept++] = a;
            if (da >= 0 != db >= 0)
                _clipped[kept++] = Between(a, b, da / (da - db), alongY, sign * limit);
        }

        (_points, _clipped) = (_clipped, _points);
        return kept;
    }

    private static TilePoint Between(TilePoint a, TilePoint b, double share, bool alongY, double edge) => alongY
        ? new(a.X + (b.X - a.X) * share, edge)
        : new(edge, a.Y + (b.Y - a.Y) * share);
}
