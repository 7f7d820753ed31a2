using System.Buffers.Binary;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Places of rows as well-known binary (OGC Simple Feature Access 06-103r4): little-endian, longitude before latitude.</summary>
internal static class WellKnownBinary
{
    private const int PointType = 1, PolygonType = 3;

    private static readonly OutlineStore<byte> Kept = new(Polygon);

    /// <summary>The geometry of a row; callers must not change it.</summary>
    public static byte[] Of(ExportTable table, ExportRow row) => table.Geometry == ExportGeometry.Square ? Kept.Of(row.Square) : Point(row.Point);

    /// <summary>The box round a row's geometry.</summary>
    public static DegreeBox BoxOf(ExportTable table, ExportRow row) =>
        table.Geometry == ExportGeometry.Square ? DegreeBox.Of(row.Square) : new(row.Point.Longitude, row.Point.Latitude, row.Point.Longitude, row.Point.Latitude);

    private static byte[] Point(LatLon point)
    {
        var bytes = new byte[1 + 4 + 16];
        bytes[0] = 1;
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(1), PointType);
        Write(bytes.AsSpan(5), point);
        return bytes;
    }

    private static byte[] Polygon(Square square)
    {
        var ring = SquareOutline.InLatLon(square);
        var bytes = new byte[1 + 4 + 4 + 4 + ring.Length * 16];
        bytes[0] = 1;
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(1), PolygonType);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(5), 1);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(9), ring.Length);
        for (var i = 0; i < ring.Length; i++)
            Write(bytes.AsSpan(13 + i * 16), ring[i]);
        return bytes;
    }

    private static void Write(Span<byte> to, LatLon point)
    {
        BinaryPrimitives.WriteDoubleLittleEndian(to, point.Longitude);
        BinaryPrimitives.WriteDoubleLittleEndian(to[8..], point.Latitude);
    }
}
