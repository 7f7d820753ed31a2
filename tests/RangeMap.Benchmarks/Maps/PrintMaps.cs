using RangeMap.Maps;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>Printed maps of many taxa with three periods on a page, within the process; the data and the land are ready, each map is drawn anew.</summary>
internal static class PrintMaps
{
    private const int Taxa = 20, Rounds = 3;

    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(rows);
        var data = await files.OpenAsync();
        var folder = DataFolder.Open(files.Data);
        var taxa = data.Taxa.Where(taxon => data.Cube(taxon).Cells.Length > 0).Take(Taxa).ToArray();
        foreach (var format in Enum.GetValues<PrintFormat>())
        {
            Latency first = new($"first {format} of a taxon, its cube being read"), warm = new($"{format}, warm");
            long bytes = 0;
            for (var round = 0; round <= Rounds; round++)
            {
                foreach (var taxon in taxa)
                    bytes += (round == 0 ? first : warm).Ask(() => PrintMap.Answer(data, folder, PrintQuestion.Of(data, taxon.Id, new(Periods: TileAddress.Periods)), format)).Length;
            }

            first.Print();
            warm.Print();
            Console.WriteLine(FormattableString.Invariant($"  {bytes / taxa.Length / (Rounds + 1) / 1000} kB on average"));
        }
    }
}
