using System.Globalization;
using System.Runtime.CompilerServices;

namespace RangeMap.Benchmarks;

/// <summary>What tiles were sent in a time.</summary>
/// <param name="PerSecond">Tiles a second.</param>
/// <param name="MedianMs">Median of the time that a tile took, ms.</param>
/// <param name="P99Ms">99th percentile, ms.</param>
/// <param name="Bytes">Mean length of an answer, headers included; null where it is not told.</param>
internal sealed record TileRate(double PerSecond, double MedianMs, double P99Ms, double? Bytes)
{
    public void Print(string what) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{what}: {PerSecond:N0} tiles/s, median {MedianMs:0.00} ms, 99th percentile {P99Ms:0.00} ms{(Bytes is { } bytes ? $", {bytes:N0} bytes an answer" : "")}; load average {Machine.Load()}"));
}

/// <summary>Asks a server for tiles over HTTP with wrk, a client written in C that needs the least of the cores it shares.</summary>
internal static class TileLoad
{
    /// <summary>Asks for some time, or once for each address.</summary>
    /// <param name="server">Where the server is.</param>
    /// <param name="addresses">File with a path a line.</param>
    /// <param name="connections">Connections open at once, each with one request under way.</param>
    /// <param name="seconds">For how long; null for once each.</param>
    /// <exception cref="InvalidOperationException">An answer was no tile, or wrk failed.</exception>
    public static TileRate Run(string server, string addresses, int connections, int? seconds)
    {
        var most = seconds ?? 600;
        var said = Programs.Run("wrk", ["-t1", $"-c{connections}", $"-d{most}s", "--timeout", "30s", "-s", Script(), server, "--", addresses, .. seconds is null ? (string[])["once"] : []]);
        var line = said.Split('\n').FirstOrDefault(line => line.StartsWith("FIGURES ", StringComparison.Ordinal)) ?? throw new InvalidOperationException($"wrk told no figures: {said}");
        var figures = line.Split(' ')[1..].Select(figure => double.Parse(figure, CultureInfo.InvariantCulture)).ToArray();
        if (figures is not [var requests, var microseconds, var median, var p99, var bytes, var errors] || errors > 0)
            throw new InvalidOperationException($"Answers failed: {said}");
        return new(requests / microseconds * 1e6, median / 1000, p99 / 1000, bytes / requests);
    }

    private static string Script([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "tiles.lua");
}
