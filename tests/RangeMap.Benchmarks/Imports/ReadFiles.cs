using RangeMap.Records;

namespace RangeMap.Benchmarks;

/// <summary>The same rows to records in memory from every kind of file. The peer is the plain CSV.</summary>
internal static class ReadFiles
{
    /// <summary>Rows that a sheet can hold beside its header.</summary>
    private const long MostRows = 1_048_575;

    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(Math.Min(rows, MostRows));
        TaxonList taxa;
        using (var list = File.OpenRead(files.Taxa))
            taxa = TaxonListReader.Read(list).List;
        var plain = await TimeAsync("CSV", files.Records, taxa);
        plain.Print(files.Rows, "rows");
        foreach (var (kind, path) in OtherKinds.Of(files))
        {
            var other = await TimeAsync(kind, path, taxa);
            other.Print(files.Rows, "rows");
            other.PrintRatio(plain);
        }

        Console.WriteLine($"{System.Diagnostics.Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000} MB at most, for all of them");
    }

    private static Task<Timing> TimeAsync(string kind, string path, TaxonList taxa) => Timing.OfAsync(kind, () => Task.FromResult(Read(path, taxa)));

    private static long Read(string path, TaxonList taxa)
    {
        using var file = File.OpenRead(path);
        using var reader = RecordReader.Open(file, taxa, new ImportOptions { Today = new DateOnly(2026, 11, 25) });
        long characters = 0;
        while (reader.Read())
            characters += reader.RawText.Length;
        return characters;
    }
}
