using RangeMap.Maps;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>Exports of a whole scheme: single records and the cube to CSV and GeoParquet, and all taxa as one archive of tiles.</summary>
internal static class ExportRecords
{
    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(rows);
        var data = await files.OpenAsync();
        var folder = DataFolder.Open(files.Data);
        foreach (var (table, format) in (ReadOnlySpan<(ExportTable, ExportFormat)>)[(ExportTables.Records, ExportFormat.Csv), (ExportTables.Records, ExportFormat.Parquet), (ExportTables.Presence, ExportFormat.Csv)])
            Measure(folder, ExportAsk.Read(data, table, new() { Quality = "all" }), format, files.File("export")).GetAwaiter().GetResult();
        var all = ExportAsk.Read(data, ExportTables.Presence, new());
        Machine.ForgetPeak();
        var tiles = await Timing.OfAsync("all taxa as one archive of tiles", () => MakeTiles.WriteAsync(folder, all, Ask.Periods(null), Fresh(files.File("export")), null, CancellationToken.None), runs: 1);
        tiles.Print(all.Taxa.Count, "taxa");
        PrintPeak();
    }

    private static async Task Measure(DataFolder folder, ExportQuestion question, ExportFormat format, string path)
    {
        var size = await EstimateSize.OfAsync(folder, question, format, CancellationToken.None);
        Machine.ForgetPeak();
        var timing = await Timing.OfAsync($"{question.Table.Name} to {format}", () => MakeExport.WriteAsync(folder, question, format, Fresh(path), null, CancellationToken.None), runs: 1);
        timing.Print(size.Rows, "rows");
        PrintPeak();
    }

    private static void PrintPeak() => Console.WriteLine(FormattableString.Invariant($"  the process held {Machine.PeakMb():N0} MB at most meanwhile"));

    private static string Fresh(string path)
    {
        File.Delete(path);
        return path;
    }
}
