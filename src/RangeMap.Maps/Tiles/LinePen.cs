using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Draws lines into a tile: projects them, cuts them at the tile and its buffer, rounds them to whole units and writes them as commands.</summary>
internal static class LinePen
{
    private const double Low = -TileFrame.Buffer, High = TileFrame.Extent + TileFrame.Buffer;

    /// <summary>Writes the geometry; false, with nothing written, when no part of a line is left in the tile.</summary>
    public static bool TryDraw(EastNorth[][] lines, in TileFrame frame, ProtobufBuffer geometry)
    {
        var at = (X: 0, Y: 0);
        var run = new List<(int X, int Y)>();
        foreach (var line in lines)
        {
            for (var i = 1; i < line.Length; i++)
            {
                var (from, to) = (frame.ToTile(line[i - 1]), frame.ToTile(line[i]));
                if (!TryCut(from, to, out var start, out var end))
                    continue;
                // Where the line left the tile and comes back, another part begins.
                if (run.Count > 0 && run[^1] != Whole(start))
                    Write(run, ref at, geometry);
                if (run.Count == 0)
                    run.Add(Whole(start));
                if (run[^1] != Whole(end))
                    run.Add(Whole(end));
            }

            Write(run, ref at, geometry);
        }

        return geometry.Length > 0;
    }

    private static (int X, int Y) Whole(TilePoint point) => ((int)Math.Floor(point.X + 0.5), (int)Math.Floor(point.Y + 0.5));

    /// <summary>Writes a part of two points or more, and empties it.</summary>
    private static void Write(List<(int X, int Y)> run, ref (int X, int Y) at, ProtobufBuffer geometry)
    {
        for (var i = 0; i < run.Count && run.Count > 1; i++)
        {
            if (i == 0)
                geometry.Varint(TileFields.Command(TileFields.MoveTo, 1));
            if (i == 1)
                geometry.Varint(TileFields.Command(TileFields.LineTo, run.Count - 1));
            geometry.Zigzag(run[i].X - at.X);
            geometry.Zigzag(run[i].Y - at.Y);
            at = run[i];
        }

        run.Clear();
    }

    /// <summary>Liang and Barsky (1984): the part of a step within the box.</summary>
    private static bool TryCut(TilePoint from, TilePoint to, out TilePoint start, out TilePoint end)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        double first = 0, last = 1;
        var within = Narrow(-dx, from.X - Low, ref first, ref last) && Narrow(dx, High - from.X, ref first, ref last)
            && Narrow(-dy, from.Y - Low, ref first, ref last) && Narrow(dy, High - from.Y, ref first, ref last);
        start = new(from.X + first * dx, from.Y + first * dy);
        end = new(from.X + last * dx, from.Y + last * dy);
        return within;
    }

    /// <summary>Narrows the share of the step that lies on the inner side of one edge; false where none does.</summary>
    private static bool Narrow(double outwards, double room, ref double first, ref double last)
    {
        if (outwards == 0)
            return room >= 0;
        if (outwards < 0)
            first = Math.Max(first, room / outwards);
        else
            last = Math.Min(last, room / outwards);
        return first <= last;
    }
}
