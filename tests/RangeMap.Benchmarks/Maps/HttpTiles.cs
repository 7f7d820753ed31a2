using System.Globalization;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>Warm tiles over HTTP. The client runs in the same process on the same cores and takes the larger part of them.</summary>
internal static class HttpTiles
{
    private const int Clients = 8;
    private const int Taxa = 10;
    private const int RequestsOfClient = 5_000;

    public static async Task RunAsync(long rows)
    {
        var files = SimulatedFolder.Of(rows);
        var addresses = TileAddress.All(await files.OpenAsync(), Taxa);
        await using var host = ServerHost.Build(DataFolder.Open(files.Data), "http://127.0.0.1:0", TimeProvider.System);
        await host.StartAsync();
        using var client = new HttpClient { BaseAddress = new(host.Urls.First()) };
        await LoadAsync(client, addresses, addresses.Count);
        var timing = await Timing.OfAsync("warm tiles over HTTP", () => Task.WhenAll(Enumerable.Range(0, Clients).Select(_ => LoadAsync(client, addresses, RequestsOfClient))));
        timing.Print(Clients * RequestsOfClient, "tiles");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {timing.MedianCpu / (Clients * RequestsOfClient) * 1e6:0.0} microseconds of processor time a tile, server and client together"));
        await host.StopAsync();
    }

    private static async Task LoadAsync(HttpClient client, IReadOnlyList<TileAddress> addresses, int requests)
    {
        for (var i = 0; i < requests; i++)
            await client.GetByteArrayAsync(new Uri(addresses[i % addresses.Count].Url, UriKind.Relative));
    }
}
