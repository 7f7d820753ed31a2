using System.IO.Compression;

namespace RangeMap.Grids;

/// <summary>The nodes of OSTN15, unpacked once on first use from the embedded file (made by gis-data/ostn15/pack-ostn15.py).</summary>
/// <remarks>
/// A node is one 32-bit number: millimetres of east shift above <see cref="EastBase"/> in the low half, of north shift
/// above <see cref="NorthBase"/> in the high half. Node (i, j) stands at index i + j * <see cref="Columns"/> and at
/// ETRS89 easting i km, northing j km.
/// </remarks>
internal static class Ostn15Nodes
{
    /// <summary>Nodes from west to east, 0 to 700 km.</summary>
    public const int Columns = 701;

    /// <summary>Nodes from south to north, 0 to 1250 km.</summary>
    public const int Rows = 1251;

    /// <summary>Least east shift, millimetres.</summary>
    public const int EastBase = 82_140;

    /// <summary>Least north shift, millimetres.</summary>
    public const int NorthBase = -84_180;

    private const int Count = Columns * Rows;

    /// <summary>All nodes, row by row from the south-west.</summary>
    public static readonly uint[] Packed = Read();

    private static uint[] Read()
    {
        using var file = typeof(Ostn15Nodes).Assembly.GetManifestResourceStream("ostn15.bin")
            ?? throw new InvalidOperationException("The OSTN15 grid is missing from the program file.");
        using var unzipped = new ZLibStream(file, CompressionMode.Decompress);
        var planes = new byte[4 * Count];
        unzipped.ReadExactly(planes);
        var nodes = new uint[Count];
        Undo(planes.AsSpan(0, 2 * Count), nodes, 0);
        Undo(planes.AsSpan(2 * Count), nodes, 16);
        return nodes;
    }

    /// <summary>Sums the second differences up again, into the half of each node that <paramref name="shift"/> names.</summary>
    private static void Undo(ReadOnlySpan<byte> planes, uint[] nodes, int shift)
    {
        ReadOnlySpan<byte> low = planes[..Count], high = planes[Count..];
        Span<ushort> south = new ushort[Columns];
        for (var j = 0; j < Rows; j++)
        {
            var rise = (ushort)0; // west minus south-west, modulo 65536
            for (var i = 0; i < Columns; i++)
            {
                var k = i + j * Columns;
                var zigzag = (uint)(low[k] | high[k] << 8);
                rise = unchecked((ushort)(rise + ((zigzag >> 1) ^ (0 - (zigzag & 1)))));
                south[i] = unchecked((ushort)(south[i] + rise));
                nodes[k] |= (uint)south[i] << shift;
            }
        }
    }
}
