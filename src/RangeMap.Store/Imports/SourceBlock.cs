using System.IO.Compression;
using System.Text;

namespace RangeMap.Store;

/// <summary>Some thousand rows of a file as they were sent, compressed: nothing that a user gave is lost.</summary>
/// <param name="FirstRow">Number of the first row, counted from 1 after the header.</param>
/// <param name="Count">Number of rows.</param>
/// <param name="Data">Deflated UTF-8, each row as <see cref="SourceRows.Add"/> writes it.</param>
public sealed record SourceBlock(long FirstRow, int Count, byte[] Data)
{
    /// <summary>Ends a row: U+001E, "record separator" by its definition, so that line ends within quotes stay as they are.</summary>
    internal const char RowEnd = '\u001E';

    /// <summary>Stands before a <see cref="RowEnd"/>, or another of itself, that belongs to a row: U+001B, "escape" by its definition.</summary>
    internal const char Escape = '\u001B';

    /// <summary>The text of a row, or null when the block does not hold it.</summary>
    /// <exception cref="InvalidDataException">The bytes are no packed rows.</exception>
    public static string? Read(byte[] data, long index) => index < 0 ? null : Rows(data).Skip((int)Math.Min(index, int.MaxValue)).FirstOrDefault();

    /// <summary>All rows of a block, in the order of the file.</summary>
    /// <exception cref="InvalidDataException">The bytes are no packed rows.</exception>
    public static IEnumerable<string> Rows(byte[] data)
    {
        using var reader = new StreamReader(new DeflateStream(new MemoryStream(data), CompressionMode.Decompress), Encoding.UTF8);
        var row = new StringBuilder();
        for (int next; (next = reader.Read()) >= 0;)
        {
            if (next == RowEnd)
            {
                yield return row.ToString();
                row.Clear();
            }
            else
            {
                row.Append((char)(next == Escape ? reader.Read() : next));
            }
        }
    }
}
