using System.Buffers;
using System.Globalization;
using System.Text;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>
/// A presence map as CSV (RFC 4180: commas, lines ended by CR LF, a header; UTF-8 without a byte order mark). One row a square
/// and period with records, squares ascending by code, periods in the order asked.
/// </summary>
/// <remarks>
/// No field holds free text: all are grid references, codes, numbers and periods that were read before, so that none needs
/// quotes and none can be taken for a formula by a spreadsheet program.
/// </remarks>
public static class PresenceCsv
{
    /// <summary>Content type of the table.</summary>
    public const string MediaType = "text/csv; charset=utf-8; header=present";

    /// <summary>The header. Size is the side of the square, period as it was asked, years those within the period.</summary>
    public const string Header = "square,grid,size,period,records,visits,firstYear,lastYear,quality";

    private const int FlushBytes = 64 * 1024;

    /// <summary>Writes the table to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, PresenceMap map, CancellationToken cancel = default)
    {
        var rows = new ArrayBufferWriter<byte>(FlushBytes + 1024);
        Encoding.UTF8.GetBytes(Header + "\r\n", rows);
        var (size, quality) = (map.Size.ToText(), QualityText.Of(map.Quality));
        foreach (var square in map.Squares)
        {
            WriteRows(rows, square, map.Periods, size, quality);
            if (rows.WrittenCount < FlushBytes)
                continue;
            await output.WriteAsync(rows.WrittenMemory, cancel).ConfigureAwait(false);
            rows.ResetWrittenCount();
        }

        await output.WriteAsync(rows.WrittenMemory, cancel).ConfigureAwait(false);
    }

    private static void WriteRows(IBufferWriter<byte> rows, PresenceSquare square, IReadOnlyList<Period> periods, string size, string quality)
    {
        var (name, grid) = (square.Square.ToString(), NationalGrid.Get(square.Square.Grid).Code);
        for (var i = 0; i < periods.Count; i++)
        {
            var count = square.PerPeriod[i];
            if (count.Records == 0)
                continue;
            var row = string.Create(
                CultureInfo.InvariantCulture,
                $"{name},{grid},{size},{periods[i].Text},{count.Records},{count.Visits},{count.FirstYear},{count.LastYear},{quality}\r\n");
            Encoding.UTF8.GetBytes(row, rows);
        }
    }
}
