namespace RangeMap.Maps.Tests;

/// <summary>The rings of a tile as they stand in its commands, read by the letter of the vector tile specification 2.1, section 4.3.</summary>
internal static class RawTile
{
    /// <summary>The tile's message as NetTopologySuite's protobuf classes read it.</summary>
    public static NetTopologySuite.IO.VectorTiles.Mapbox.Tile Message(byte[] tile)
    {
        using var stream = new MemoryStream(tile);
        return ProtoBuf.Serializer.Deserialize<NetTopologySuite.IO.VectorTiles.Mapbox.Tile>(stream);
    }

    /// <summary>The one ring of a feature; fails where a command breaks the rules.</summary>
    public static IReadOnlyList<(int X, int Y)> Ring(IReadOnlyList<uint> geometry)
    {
        var points = new List<(int X, int Y)>();
        var at = 0;
        Assert.Equal(9u, geometry[at++]); // MoveTo, once
        points.Add(Step((0, 0)));
        var lineTo = geometry[at++];
        Assert.Equal(2u, lineTo & 7);
        Assert.True(lineTo >> 3 >= 2);
        for (var i = 0; i < lineTo >> 3; i++)
        {
            var next = Step(points[^1]);
            Assert.NotEqual(points[^1], next);
            points.Add(next);
        }

        Assert.Equal(15u, geometry[at++]); // ClosePath, once
        Assert.Equal(geometry.Count, at);
        Assert.NotEqual(points[0], points[^1]);
        return points;

        (int X, int Y) Step((int X, int Y) from) => (from.X + Signed(geometry[at++]), from.Y + Signed(geometry[at++]));
    }

    /// <summary>Twice the area by the surveyor's formula; positive for an exterior ring.</summary>
    public static long DoubledArea(IReadOnlyList<(int X, int Y)> ring) =>
        ring.Select((a, i) => (A: a, B: ring[(i + 1) % ring.Count])).Sum(side => (long)side.A.X * side.B.Y - (long)side.B.X * side.A.Y);

    private static int Signed(uint zigzag) => (int)(zigzag >> 1) ^ -(int)(zigzag & 1);
}
