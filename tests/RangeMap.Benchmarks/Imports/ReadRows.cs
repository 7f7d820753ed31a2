using nietras.SeparatedValues;
using RangeMap.Records;
using RangeMap.Server;
using RangeMap.Store;

namespace RangeMap.Benchmarks;

/// <summary>Rows of a CSV file to records in memory: dates, places, names, identity and all. The peer only splits the same rows into cells.</summary>
internal static class ReadRows
{
    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(rows);
        await files.OpenAsync();
        var taxa = new TaxonStore(DataFolder.Open(files.Data).Database, TimeProvider.System).Read();
        var ours = await Timing.OfAsync("rows to records", () => Task.FromResult(Read(files.Records, taxa, null)));
        var compared = await Timing.OfAsync("rows to records, compared with each other", () => Task.FromResult(Read(files.Records, taxa, new FileChecks(new CheckContext()))));
        var peer = await Timing.OfAsync("Sep, splitting only", () => Task.FromResult(Split(files.Records)));
        ours.Print(rows, "rows");
        compared.Print(rows, "rows");
        peer.Print(rows, "rows");
        ours.PrintRatio(peer);
        compared.PrintRatio(ours);
    }

    private static long Read(string path, TaxonList taxa, FileChecks? fileChecks)
    {
        using var file = File.OpenRead(path);
        var reader = RecordReader.Open(file, taxa, new ImportOptions { Today = new DateOnly(2026, 11, 25), FileChecks = fileChecks });
        long records = 0;
        while (reader.Read())
            records += reader.Record is null ? 0 : 1;
        return records;
    }

    private static long Split(string path)
    {
        using var reader = Sep.Reader(options => options with { Unescape = true }).FromFile(path);
        long characters = 0;
        foreach (var row in reader)
        {
            for (var i = 0; i < row.ColCount; i++)
                characters += row[i].Span.Length;
        }

        return characters;
    }
}
