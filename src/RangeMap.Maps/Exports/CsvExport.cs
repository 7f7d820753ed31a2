using System.Buffers;
using System.Buffers.Text;
using System.Text;
using RangeMap.Records;

namespace RangeMap.Maps;

/// <summary>
/// A table as CSV (RFC 4180: commas, lines ended by CR LF, a header; UTF-8 without a byte order mark). Text that a spreadsheet program would
/// take for a formula gets an apostrophe in front (<see cref="FormulaGuard"/>); numbers stay numbers. The other formats carry text as it is.
/// </summary>
public static class CsvExport
{
    private const int FlushBytes = 256 * 1024;

    private static readonly SearchValues<char> Awkward = SearchValues.Create(",\"\r\n");

    /// <summary>Writes the table to a stream, which stays open.</summary>
    public static Task WriteAsync(Stream output, ExportTable table, IEnumerable<ExportRow> rows, CancellationToken cancel = default) => WriteAsync(output, table, rows, guarded: true, cancel);

    /// <summary>Writes the table with text as it is where no spreadsheet program is meant to open it.</summary>
    internal static async Task WriteAsync(Stream output, ExportTable table, IEnumerable<ExportRow> rows, bool guarded, CancellationToken cancel)
    {
        var bytes = new ArrayBufferWriter<byte>(FlushBytes + 16 * 1024);
        Encoding.UTF8.GetBytes(string.Join(',', table.Columns.Select(column => column.Name)) + "\r\n", bytes);
        var kinds = table.Columns.Select(column => column.Kind).ToArray();
        foreach (var row in rows)
        {
            WriteRow(bytes, kinds, row.Values, guarded);
            if (bytes.WrittenCount < FlushBytes)
                continue;
            await output.WriteAsync(bytes.WrittenMemory, cancel).ConfigureAwait(false);
            bytes.ResetWrittenCount();
        }

        await output.WriteAsync(bytes.WrittenMemory, cancel).ConfigureAwait(false);
    }

    private static void WriteRow(ArrayBufferWriter<byte> bytes, ReadOnlySpan<ExportKind> kinds, ReadOnlySpan<ExportValue> values, bool guarded)
    {
        for (var i = 0; i < kinds.Length; i++)
        {
            if (i > 0)
                bytes.Write(","u8);
            if (values[i].HasValue)
                WriteCell(bytes, kinds[i], values[i], guarded);
        }

        bytes.Write("\r\n"u8);
    }

    private static void WriteCell(ArrayBufferWriter<byte> bytes, ExportKind kind, in ExportValue value, bool guarded)
    {
        const int LongestFigures = 32;
        int written;
        switch (kind)
        {
            case ExportKind.Whole:
                Utf8Formatter.TryFormat(value.Whole, bytes.GetSpan(LongestFigures), out written);
                bytes.Advance(written);
                break;
            case ExportKind.Number:
                value.Number.TryFormat(bytes.GetSpan(LongestFigures), out written, provider: System.Globalization.CultureInfo.InvariantCulture);
                bytes.Advance(written);
                break;
            case ExportKind.Day:
                value.Day.TryFormat(bytes.GetSpan(LongestFigures), out written, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
                bytes.Advance(written);
                break;
            case ExportKind.Truth:
                bytes.Write(value.Whole == 0 ? "false"u8 : "true"u8);
                break;
            default:
                WriteText(bytes, value.Text!, guarded);
                break;
        }
    }

    /// <summary>Most text is plain: it is neither guarded nor quoted, and nothing is made for it.</summary>
    private static void WriteText(ArrayBufferWriter<byte> bytes, string text, bool guarded)
    {
        var plain = char.IsAsciiLetterOrDigit(text[0]) && !text.AsSpan().ContainsAny(Awkward);
        Encoding.UTF8.GetBytes(plain ? text : guarded ? CsvCell.Guarded(text) : CsvCell.Of(text), bytes);
    }
}
