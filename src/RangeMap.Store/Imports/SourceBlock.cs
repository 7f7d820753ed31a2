using System.IO.Compression;
using System.Text;

namespace RangeMap.Store;

/// <summary>Some thousand rows of a file as they were sent, compressed: nothing that a user gave is lost.</summary>
/// <param name="FirstRow">Number of the first row, counted from 1 after the header.</param>
/// <param name="Count">Number of rows.</param>
/// <param name="Data">Deflated UTF-8, each row followed by <see cref="RowEnd"/>.</param>
public sealed record SourceBlock(long FirstRow, int Count, byte[] Data)
{
    /// <summary>Ends a row: U+001E, "record separator" by its definition, so that line ends within quotes stay as they are.</summary>
    public const char RowEnd = '\u001E';

    /// <summary>Packs rows.</summary>
    /// <param name="firstRow">Number of the first row.</param>
    /// <param name="count">Number of rows.</param>
    /// <param name="rows">The rows, each followed by <see cref="RowEnd"/>.</param>
    public static SourceBlock Pack(long firstRow, int count, StringBuilder rows)
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.Fastest))
        using (var writer = new StreamWriter(deflate, new UTF8Encoding(false)))
        {
            foreach (var chunk in rows.GetChunks())
                writer.Write(chunk.Span);
        }

        return new(firstRow, count, packed.ToArray());
    }

    /// <summary>The text of a row, or null when the block does not hold it.</summary>
    public static string? Read(byte[] data, long index)
    {
        using var reader = new StreamReader(new DeflateStream(new MemoryStream(data), CompressionMode.Decompress), Encoding.UTF8);
        var rows = reader.ReadToEnd().Split(RowEnd);
        return index >= 0 && index < rows.Length - 1 ? rows[index] : null;
    }
}
