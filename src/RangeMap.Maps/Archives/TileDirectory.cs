using System.IO.Compression;

namespace RangeMap.Maps;

/// <summary>An entry of a directory.</summary>
/// <param name="Id">Number of the first tile.</param>
/// <param name="Offset">Where its bytes begin.</param>
/// <param name="Length">How many they are.</param>
/// <param name="Run">How many tiles in a row have these bytes; 0 for a leaf directory.</param>
internal readonly record struct TileEntry(ulong Id, ulong Offset, uint Length, uint Run);

/// <summary>Directories of an archive (PMTiles specification 3, section 4.2): one root, and leaves where it would not fit at the head of the file.</summary>
internal static class TileDirectory
{
    /// <summary>The root must end within the first 16 KiB of the file, after the header of 127 bytes.</summary>
    public const int MostRootBytes = 16_384 - 127;

    private const int EntriesALeaf = 4_096;

    /// <summary>Packs entries, ascending, into the root's bytes and those of all leaves.</summary>
    public static (byte[] Root, byte[] Leaves) Pack(IReadOnlyList<TileEntry> entries)
    {
        var whole = Serialise(entries);
        if (whole.Length <= MostRootBytes)
            return (whole, []);
        for (var size = EntriesALeaf; ; size *= 2)
        {
            using var leaves = new MemoryStream();
            var root = new List<TileEntry>();
            foreach (var part in entries.Chunk(size))
            {
                var leaf = Serialise(part);
                root.Add(new(part[0].Id, (ulong)leaves.Length, (uint)leaf.Length, 0));
                leaves.Write(leaf);
            }

            var packed = Serialise(root);
            if (packed.Length <= MostRootBytes)
                return (packed, leaves.ToArray());
        }
    }

    private static byte[] Serialise(IReadOnlyList<TileEntry> entries)
    {
        using var bytes = new MemoryStream();
        using (var zip = new GZipStream(bytes, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            using var plain = new BufferedStream(zip);
            Write(plain, (ulong)entries.Count);
            ulong last = 0;
            foreach (var entry in entries)
            {
                Write(plain, entry.Id - last);
                last = entry.Id;
            }

            foreach (var entry in entries)
                Write(plain, entry.Run);
            foreach (var entry in entries)
                Write(plain, entry.Length);
            for (var i = 0; i < entries.Count; i++)
            {
                var follows = i > 0 && entries[i].Offset == entries[i - 1].Offset + entries[i - 1].Length;
                Write(plain, follows ? 0 : entries[i].Offset + 1);
            }
        }

        return bytes.ToArray();
    }

    private static void Write(Stream to, ulong value)
    {
        while (value >= 0x80)
        {
            to.WriteByte((byte)(value | 0x80));
            value >>= 7;
        }

        to.WriteByte((byte)value);
    }
}
