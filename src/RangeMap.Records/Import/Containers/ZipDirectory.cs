using System.Buffers.Binary;

namespace RangeMap.Records;

/// <summary>
/// Measures the list of entries at the end of a zip file before the framework reads all of it into memory. Layout: the
/// public ZIP application note, 4.3.14 to 4.3.16.
/// </summary>
internal static class ZipDirectory
{
    private const int EndLength = 22;
    private const int LongestComment = 65_535;
    private const int Zip64LocatorLength = 20;
    private const uint EndMark = 0x06054B50;
    private const uint Zip64LocatorMark = 0x07064B50;
    private const uint Zip64EndMark = 0x06064B50;
    private const int OffsetInEnd = 16;
    private const int OffsetInZip64End = 48;

    /// <exception cref="ImportProblemException">There is no such list, or it is longer than allowed.</exception>
    public static void Check(Stream stream, FileLimits limits)
    {
        var tail = new byte[(int)Math.Min(stream.Length, EndLength + LongestComment + Zip64LocatorLength)];
        var tailAt = stream.Length - tail.Length;
        ReadAt(stream, tailAt, tail);
        for (var at = tail.Length - EndLength; at >= 0; at--)
        {
            if (BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(at)) != EndMark)
                continue;
            long begin = BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(at + OffsetInEnd));
            if (begin == uint.MaxValue)
                begin = BeginOfZip64(stream, tail.AsSpan(0, at));
            if (begin < 0 || tailAt + at - begin is < 0)
                break;
            if (tailAt + at - begin > limits.ZipDirectoryBytes)
                throw ContainerProblem.Of("The zip file has a list of entries that is too long to be that of a table or an archive.", "zip file", "Pack the table alone.");
            return;
        }

        throw ContainerProblem.Damaged("The zip file", "Its end is missing.");
    }

    private static long BeginOfZip64(Stream stream, ReadOnlySpan<byte> before)
    {
        if (before.Length < Zip64LocatorLength)
            return -1;
        var locator = before[^Zip64LocatorLength..];
        var endAt = BinaryPrimitives.ReadInt64LittleEndian(locator[8..]);
        if (BinaryPrimitives.ReadUInt32LittleEndian(locator) != Zip64LocatorMark || endAt < 0 || endAt > stream.Length - OffsetInZip64End - 8)
            return -1;
        var end = new byte[OffsetInZip64End + 8];
        ReadAt(stream, endAt, end);
        return BinaryPrimitives.ReadUInt32LittleEndian(end) == Zip64EndMark ? BinaryPrimitives.ReadInt64LittleEndian(end.AsSpan(OffsetInZip64End)) : -1;
    }

    private static void ReadAt(Stream stream, long position, Span<byte> target)
    {
        stream.Position = position;
        stream.ReadExactly(target);
        stream.Position = 0;
    }
}
