namespace RangeMap.Benchmarks;

/// <summary>Vector tiles drawn within the process: cold, where the tile is not ready (the map of its taxon may be), and warm, where it is.</summary>
internal static class DrawTiles
{
    private const int Taxa = 30;

    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(rows);
        var addresses = TileAddress.All(await files.OpenAsync(), Taxa);
        var data = await files.OpenAsync();
        Latency cold = new("cold tile"), warm = new("warm tile");
        long bytes = 0;
        // Taxon by taxon: the cache of answers holds some thousand, which all taxa together exceed.
        foreach (var ofTaxon in addresses.GroupBy(tile => tile.TaxonId))
        {
            foreach (var tile in ofTaxon)
                bytes += cold.Ask(() => tile.Draw(data)).Length;
            foreach (var tile in ofTaxon)
                warm.Ask(() => tile.Draw(data));
        }

        cold.Print();
        warm.Print();
        Console.WriteLine($"{addresses.Count} tiles that are not empty, {bytes / addresses.Count} bytes on average");
    }
}
