namespace RangeMap.Maps;

/// <summary>Writes a table in any format to a file.</summary>
public static class TableExport
{
    /// <summary>Writes the file anew.</summary>
    /// <param name="path">The file; it must not be there.</param>
    /// <param name="format">The format.</param>
    /// <param name="table">The table.</param>
    /// <param name="source">Where the rows came from.</param>
    /// <param name="rows">The rows, read once.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <exception cref="IOException">The file is there already, or cannot be written.</exception>
    public static async Task WriteAsync(string path, ExportFormat format, ExportTable table, ExportSource source, IEnumerable<ExportRow> rows, CancellationToken cancel = default)
    {
        if (format == ExportFormat.GeoPackage)
        {
            await GeoPackageExport.WriteAsync(path, table, source, rows, cancel).ConfigureAwait(false);
            return;
        }

        var file = new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16);
        await using var _ = file.ConfigureAwait(false);
        await (format switch
        {
            ExportFormat.Csv => CsvExport.WriteAsync(file, table, rows, cancel),
            ExportFormat.Csvw => CsvwMetadata.WriteAsync(file, table, source, table.Name + ExportFormat.Csv.Ending(), cancel),
            ExportFormat.GeoJson => GeoJsonExport.WriteAsync(file, table, source, rows, cancel),
            ExportFormat.Parquet => ParquetExport.WriteAsync(file, table, source, rows, cancel),
            ExportFormat.DarwinCoreArchive => DarwinCoreArchive.WriteAsync(file, table, source, rows, cancel),
            _ => throw new ArgumentOutOfRangeException(nameof(format), format, "This is no format in use."),
        }).ConfigureAwait(false);
    }
}
