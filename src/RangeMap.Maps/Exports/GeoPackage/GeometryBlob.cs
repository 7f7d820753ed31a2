using System.Buffers.Binary;

namespace RangeMap.Maps;

/// <summary>A geometry as a GeoPackage stores it (OGC 12-128r18, clause 2.1.3): a header, the box round it, then well-known binary.</summary>
internal static class GeometryBlob
{
    private const int HeaderBytes = 8, BoxBytes = 32;
    private const byte LittleEndian = 1, WithBox = 1 << 1;

    public static byte[] Of(in DegreeBox box, ReadOnlySpan<byte> binary, bool withBox)
    {
        var bytes = new byte[HeaderBytes + (withBox ? BoxBytes : 0) + binary.Length];
        "GP"u8.CopyTo(bytes);
        bytes[3] = (byte)(LittleEndian | (withBox ? WithBox : 0));
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(4), 4326);
        if (withBox)
        {
            var at = bytes.AsSpan(HeaderBytes);
            BinaryPrimitives.WriteDoubleLittleEndian(at, box.West);
            BinaryPrimitives.WriteDoubleLittleEndian(at[8..], box.East);
            BinaryPrimitives.WriteDoubleLittleEndian(at[16..], box.South);
            BinaryPrimitives.WriteDoubleLittleEndian(at[24..], box.North);
        }

        binary.CopyTo(bytes.AsSpan(bytes.Length - binary.Length));
        return bytes;
    }
}
