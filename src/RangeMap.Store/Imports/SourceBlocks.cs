using System.IO.Compression;
using System.Text;
using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Keeps the rows of a batch as they were sent, in compressed blocks; a row ends with the character U+001E, which separates records by its definition.</summary>
internal sealed class SourceBlocks(SqliteConnection connection, SqliteTransaction transaction, long batch)
{
    public const char RowEnd = '\u001E';

    /// <summary>Characters of a block before compression: large enough to compress well, small enough to open for one row.</summary>
    private const int BlockCharacters = 256 * 1024;

    private readonly StringBuilder _rows = new(BlockCharacters);
    private long _firstRow;
    private int _count;

    public void Add(long row, ReadOnlySpan<char> raw)
    {
        if (_count == 0)
            _firstRow = row;
        _rows.Append(raw).Append(RowEnd);
        _count++;
        if (_rows.Length >= BlockCharacters)
            Write();
    }

    public void Write()
    {
        if (_count == 0)
            return;
        connection.Execute(ImportSql.AddSourceBlock, new { Batch = batch, FirstRow = _firstRow, RowCount = _count, Data = Compress() }, transaction);
        _rows.Clear();
        _count = 0;
    }

    /// <summary>The text of one row of a block.</summary>
    public static string? Read(byte[] data, long index)
    {
        using var reader = new StreamReader(new DeflateStream(new MemoryStream(data), CompressionMode.Decompress), Encoding.UTF8);
        var rows = reader.ReadToEnd().Split(RowEnd);
        return index >= 0 && index < rows.Length - 1 ? rows[index] : null;
    }

    private byte[] Compress()
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.Fastest))
        using (var writer = new StreamWriter(deflate, new UTF8Encoding(false)))
        {
            foreach (var chunk in _rows.GetChunks())
                writer.Write(chunk.Span);
        }

        return packed.ToArray();
    }
}
