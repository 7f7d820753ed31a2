using System.Buffers;
using System.IO.Compression;
using System.Text;

namespace RangeMap.Store;

/// <summary>Gathers rows of a file as they were sent, for <see cref="SourceBlock"/>; its memory is used again for the next rows.</summary>
public sealed class SourceRows
{
    private readonly ArrayBufferWriter<byte> _rows = new();

    /// <summary>Number of rows gathered.</summary>
    public int Count { get; private set; }

    /// <summary>Adds a row; characters that mark the ends of rows are escaped.</summary>
    public void Add(ReadOnlySpan<char> row)
    {
        for (int special; (special = row.IndexOfAny(SourceBlock.RowEnd, SourceBlock.Escape)) >= 0; row = row[(special + 1)..])
        {
            Write(row[..special]);
            Write([SourceBlock.Escape, row[special]]);
        }

        Write(row);
        Write([SourceBlock.RowEnd]);
        Count++;
    }

    /// <summary>The rows as a block; begins anew after it.</summary>
    /// <param name="firstRow">Number of the first row.</param>
    public SourceBlock Pack(long firstRow)
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.Fastest))
            deflate.Write(_rows.WrittenSpan);
        var block = new SourceBlock(firstRow, Count, packed.ToArray());
        _rows.ResetWrittenCount();
        Count = 0;
        return block;
    }

    private void Write(ReadOnlySpan<char> text) => Encoding.UTF8.GetBytes(text, _rows);
}
