using System.Globalization;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Change as a table (RFC 4180): one row a taxon and method. Cells that a spreadsheet would take for a formula are guarded.</summary>
internal static class ChangeTable
{
    public const string MediaType = "text/csv; charset=utf-8; header=present";

    private const string Header = "taxon,scientificName,grid,from,to,method,unit,value,low,high,before,after,n,p,note,refused,edition";

    /// <summary>Writes the table.</summary>
    public static void Write(TextWriter to, ChangeJson change)
    {
        to.Write(Header + "\r\n");
        foreach (var estimate in change.Taxa)
        {
            string[] cells =
            [
                CsvCell.Guarded(estimate.Taxon), CsvCell.Guarded(estimate.ScientificName), change.Grid, change.From, change.To, estimate.Method, CsvCell.Of(estimate.Unit),
                Text(estimate.Value), Text(estimate.Low), Text(estimate.High), Text(estimate.Before), Text(estimate.After), Text(estimate.N), Text(estimate.P),
                CsvCell.Guarded(estimate.Note ?? ""), CsvCell.Guarded(estimate.Refused ?? ""), change.Edition.ToString(CultureInfo.InvariantCulture),
            ];
            to.Write(string.Join(',', cells));
            to.Write("\r\n");
        }
    }

    private static string Text(double? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
