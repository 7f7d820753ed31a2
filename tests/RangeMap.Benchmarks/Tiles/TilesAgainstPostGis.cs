using System.Buffers;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Logging;
using NetTopologySuite.IO.VectorTiles.Mapbox;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>Tiles of this server, never drawn before and ready, over HTTP, beside those that PostGIS makes of the same cube, in one run on the same cores. Clients share the cores with what they ask.</summary>
internal static class TilesAgainstPostGis
{
    private const int Taxa = 64, Seconds = 10, WarmTiles = 4_000, WarmConnections = 32, Compared = 25;

    public static async Task RunAsync(long rows)
    {
        if (!Programs.Has("wrk"))
        {
            Console.WriteLine("Nothing was measured: it needs the Debian package wrk.");
            return;
        }

        var files = SimulatedFolder.Of(rows);
        var data = await files.OpenAsync();
        var all = TileAddress.All(data, Taxa).ToArray();
        new Random(1).Shuffle(all);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{all.Length:N0} tiles of {Taxa} taxa, levels 0 to 5, {all.Average(tile => tile.Draw(data).Length):N0} bytes on average"));

        // The first pass is for the compiler; the second meets a server that never drew a tile.
        await ColdAsync(files, all);
        var cold = await ColdAsync(files, all);
        cold.Print("cold tiles, two connections");
        var (warm, bare) = await WarmAsync(files, all[..Math.Min(WarmTiles, all.Length)]);
        warm.Print(FormattableString.Invariant($"warm tiles, {WarmConnections} connections"));
        bare.Print("the same number of bytes from a server that does nothing else");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  warm is {warm.PerSecond / bare.PerSecond:0.00} of that"));

        using var peer = PostGisPeer.Start();
        if (peer is null)
            return;
        peer.Load(data, all);
        CompareSquares(data, all, peer);
        peer.Ask(all.Length, Seconds / 2);
        var theirs = peer.Ask(all.Length, Seconds);
        theirs.Print("PostGIS, ST_AsMVT, two clients");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  cold is {cold.PerSecond / theirs.PerSecond:0.0} x, warm {warm.PerSecond / theirs.PerSecond:0.0} x PostGIS"));
    }

    /// <summary>Both must have done the same work: fails where a tile has other squares than the peer's.</summary>
    private static void CompareSquares(DataSnapshot data, TileAddress[] tiles, PostGisPeer peer)
    {
        for (var i = 0; i < Compared; i++)
        {
            var (ours, theirs) = (Squares(tiles[i].Draw(data)), Squares(peer.Draw(i + 1)));
            if (ours.Count == 0 || !ours.SetEquals(theirs))
                throw new InvalidOperationException($"{tiles[i].Url} has {ours.Count} squares, by PostGIS {theirs.Count}; {ours.Except(theirs).Count()} of them only here.");
        }

        Console.WriteLine($"{Compared} tiles have the same squares in both.");
    }

    private static HashSet<string> Squares(byte[] tile)
    {
        using var stream = new MemoryStream(tile);
        // Any place will do: only the names of squares are looked at.
        var read = new MapboxTileReader().Read(stream, new NetTopologySuite.IO.VectorTiles.Tiles.Tile(0, 0, 1));
        return [.. read.Layers.SelectMany(layer => layer.Features).Select(feature => (string)feature.Attributes["square"])];
    }

    private static async Task<TileRate> ColdAsync(SimulatedFolder files, IReadOnlyList<TileAddress> tiles)
    {
        await using var host = ServerHost.Build(DataFolder.Open(files.Data), "http://127.0.0.1:0", TimeProvider.System);
        await host.StartAsync();
        return TileLoad.Run(host.Urls.First(), Paths(files, tiles), connections: 2, seconds: null);
    }

    private static async Task<(TileRate Warm, TileRate Bare)> WarmAsync(SimulatedFolder files, IReadOnlyList<TileAddress> tiles)
    {
        await using var host = ServerHost.Build(DataFolder.Open(files.Data), "http://127.0.0.1:0", TimeProvider.System);
        await host.StartAsync();
        var paths = Paths(files, tiles);
        TileLoad.Run(host.Urls.First(), paths, WarmConnections, Seconds / 2);
        var warm = TileLoad.Run(host.Urls.First(), paths, WarmConnections, Seconds);
        await using var plain = Bare((int)warm.Bytes!.Value);
        await plain.StartAsync();
        TileLoad.Run(plain.Urls.First(), paths, WarmConnections, Seconds / 2);
        return (warm, TileLoad.Run(plain.Urls.First(), paths, WarmConnections, Seconds));
    }

    /// <summary>The least that the web server underneath can do: one answer, no routes, no headers of ours.</summary>
    private static WebApplication Bare(int bytes)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var app = builder.Build();
        var body = new byte[bytes];
        app.Run(context =>
        {
            context.Response.ContentLength = body.Length;
            context.Response.BodyWriter.Write(body);
            return Task.CompletedTask;
        });
        return app;
    }

    private static string Paths(SimulatedFolder files, IReadOnlyList<TileAddress> tiles)
    {
        var path = files.File("tile-paths.txt");
        File.WriteAllLines(path, tiles.Select(tile => tile.Url));
        return path;
    }
}
