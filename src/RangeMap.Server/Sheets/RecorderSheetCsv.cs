using System.Globalization;
using System.Text;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>A recorder's sheet as a table: one row a record.</summary>
internal static class RecorderSheetCsv
{
    private static readonly string[] Columns =
        ["record", "scientificName", "sentAs", "gridReference", "firstDate", "lastDate", "stage", "sex", "site", "status", "whatWeAsk", "decision"];

    /// <summary>Writes the sheet.</summary>
    public static async Task WriteAsync(Stream to, RecorderSheet sheet)
    {
        await using var writer = new StreamWriter(to, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true), leaveOpen: true);
        await writer.WriteAsync(string.Join(',', Columns) + "\r\n");
        foreach (var line in sheet.Lines())
            await writer.WriteAsync(RowOf(line));
    }

    private static string RowOf(SheetLine line)
    {
        var record = line.Record;
        string?[] cells =
        [
            record.Id.ToString(), line.Taxon, line.SentTaxon, record.Square.ToString(), Day(record.Dates.First), Day(record.Dates.Last), record.Stage, record.Sex, record.Site,
            RecordJson.Word(record.ReviewStatus), string.Join(' ', line.Doubts.Select(doubt => doubt.Paragraph)), line.DecisionWords,
        ];
        return string.Join(',', cells.Select(cell => CsvCell.Guarded(cell ?? ""))) + "\r\n";
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
