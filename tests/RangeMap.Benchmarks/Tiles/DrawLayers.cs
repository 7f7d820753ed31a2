using System.Globalization;
using RangeMap.Maps;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>The layers of tiles beside presence, and maps as GeoJSON: what the first question waits for, then how long a tile or map takes. All within the process.</summary>
internal static class DrawLayers
{
    private const int Taxa = 6, Rounds = 10;

    private static readonly string[] Layers = [PresenceTiles.LayerName, LayerNames.Arrivals, LayerNames.Fronts, LayerNames.Forecast, LayerNames.Effort];

    public static async Task RunAsync(long rows)
    {
        var data = await SimulatedFolder.Of(rows).OpenAsync();
        // Those that spread come first, as only they have models.
        var taxa = data.Taxa.Where(taxon => data.Cube(taxon).Cells.Length > 0).OrderByDescending(taxon => ForecastSpread.Fit(data, taxon, Grids.SquareSize.Km10).Answer.Fit is not null).Take(Taxa).ToArray();
        var fresh = await SimulatedFolder.Of(rows).OpenAsync();
        foreach (var layer in Layers)
        {
            Latency first = new($"{layer}, first tile of a taxon (map or model made)"), cold = new($"{layer}, tile never drawn");
            foreach (var taxon in taxa)
                first.Ask(() => Draw(fresh, taxon.Id, layer, 0, 0, 0));
            long bytes = 0, tiles = 0;
            foreach (var (taxon, tile) in taxa.SelectMany(taxon => Tiles().Select(tile => (taxon, tile))))
            {
                var drawn = cold.Ask(() => Draw(fresh, taxon.Id, layer, tile.Zoom, tile.Row, tile.Column)).Length;
                (bytes, tiles) = drawn > 0 ? (bytes + drawn, tiles + 1) : (bytes, tiles);
            }

            first.Print();
            cold.Print();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {tiles:N0} tiles not empty, {bytes / Math.Max(1, tiles):N0} bytes on average"));
        }

        Maps(fresh);
    }

    private static void Maps(DataSnapshot data)
    {
        var widest = data.Taxa.Select(taxon => AnswerPresence.Answer(data, PresenceQuestion.Of(data, taxon.Id, null, TileAddress.Periods, null))).MaxBy(map => map.Squares.Count)!;
        var latency = new Latency(string.Create(CultureInfo.InvariantCulture, $"GeoJSON of a map of {widest.Squares.Count:N0} squares"));
        using var to = new MemoryStream();
        for (var round = 0; round < Rounds * Rounds; round++)
        {
            to.SetLength(0);
            latency.Ask(() => PresenceGeoJson.WriteAsync(to, widest, new("Invented", "1")).Wait(Timeout.Infinite));
        }

        latency.Print();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {to.Length / 1000:N0} kB"));
    }

    private static byte[] Draw(DataSnapshot data, string taxon, string layer, int zoom, int row, int column) =>
        DrawTile.Answer(data, PresenceQuestion.Of(data, taxon, null, TileAddress.Periods, null), [layer], TileAddress.Set, zoom, row, column).Bytes;

    private static IEnumerable<(int Zoom, int Row, int Column)> Tiles() =>
        from zoom in Enumerable.Range(1, 5)
        from row in Enumerable.Range(0, 1 << zoom)
        from column in Enumerable.Range(0, 1 << zoom)
        where TileAddress.Set.Contains(zoom, column, row)
        select (zoom, row, column);
}
