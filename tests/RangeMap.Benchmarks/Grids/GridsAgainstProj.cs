using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Benchmarks;

/// <summary>
/// Places and references to squares and back on one thread, against the C library PROJ in the same run. PROJ takes the seven-parameter path, which is
/// good to some metres; RangeMap takes OSTN15, and makes the square as well. Processor time, the best of some passes over the same places.
/// </summary>
internal static class GridsAgainstProj
{
    private const int Passes = 15, PlacesTaken = 200_000;

    /// <summary>Measures and prints everything.</summary>
    public static Task RunAsync()
    {
        var places = Places();
        var grid = NationalGrid.Get(GridId.British);
        var points = Array.ConvertAll(places, grid.FromLatLon);
        double[] latitudes = Array.ConvertAll(places, p => p.Latitude), longitudes = Array.ConvertAll(places, p => p.Longitude);
        double[] eastings = new double[PlacesTaken], northings = new double[PlacesTaken], first = new double[PlacesTaken], second = new double[PlacesTaken];
        BritishGridBatch.FromLatLon(latitudes, longitudes, eastings, northings);
        var peer = ProjPeer.Measure(places, Passes, approximate: false);
        var quickPeer = ProjPeer.Measure(places, Passes, approximate: true);
        Print("PROJ, seven parameters", peer?.Forward, null);
        Print("PROJ, seven parameters, its shorter series", quickPeer?.Forward, null);
        Print("latitude/longitude, OSTN15, 100 m square", Best(() => SquaresOneByOne(grid, places)), peer?.Forward);
        Print("the same, many at once", Best(() => SquaresOfBatch(latitudes, longitudes, first, second)), peer?.Forward);
        Print("PROJ, seven parameters, back", peer?.Inverse, null);
        Print("PROJ, seven parameters, its shorter series, back", quickPeer?.Inverse, null);
        Print("OSTN15 back to latitude/longitude", Best(() => PlacesOneByOne(grid, points)), peer?.Inverse);
        Print("the same, many at once", Best(() => { BritishGridBatch.ToLatLon(eastings, northings, first, second); return (long)first[0]; }), peer?.Inverse);
        PrintReferences(points);
        return Task.CompletedTask;
    }

    private static void PrintReferences(EastNorth[] points)
    {
        SquareSize[] sizes = [SquareSize.M100, SquareSize.Km1, SquareSize.Km2, SquareSize.Km10, SquareSize.Km5];
        string[] texts = [.. points.Select((point, k) => Square.At(GridId.British, sizes[k % sizes.Length], point).ToString())];
        string[] military = [.. points.Take(PlacesTaken).Select(point => NationalGrid.Get(GridId.British).ToLatLon(point))
            .Select(place => Square.At(GridId.UtmNorth, SquareSize.M100, NationalGrid.Get(GridId.UtmNorth).FromLatLon(place)).ToString())];
        var squares = new Square[PlacesTaken];
        var before = GC.GetAllocatedBytesForCurrentThread();
        var seconds = Best(() => GridReferenceBatch.Parse(texts, default, squares));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"allocated by {2 * Passes} passes over {PlacesTaken} references: {GC.GetAllocatedBytesForCurrentThread() - before} bytes"));
        Print("references of the British grid to squares", seconds, null);
        Print("references of the military grid to squares", Best(() => GridReferenceBatch.Parse(military, default, squares)), null);
    }

    private static long SquaresOneByOne(INationalGrid grid, LatLon[] places)
    {
        long sum = 0;
        foreach (var place in places)
            sum += Square.At(GridId.British, SquareSize.M100, grid.FromLatLon(place)).Code;
        return sum;
    }

    private static long SquaresOfBatch(double[] latitudes, double[] longitudes, double[] eastings, double[] northings)
    {
        BritishGridBatch.FromLatLon(latitudes, longitudes, eastings, northings);
        long sum = 0;
        for (var k = 0; k < eastings.Length; k++)
            sum += Square.At(GridId.British, SquareSize.M100, new(eastings[k], northings[k])).Code;
        return sum;
    }

    private static long PlacesOneByOne(INationalGrid grid, EastNorth[] points)
    {
        double sum = 0;
        foreach (var point in points)
            sum += grid.ToLatLon(point).Latitude;
        return (long)sum;
    }

    /// <summary>The least processor time of a pass, seconds, after some passes that let the code be compiled for speed.</summary>
    private static double Best(Func<long> pass)
    {
        var best = double.PositiveInfinity;
        long sum = 0;
        for (var k = 0; k < 2 * Passes; k++)
        {
            var used = Environment.CpuUsage.TotalTime;
            sum += pass();
            if (k >= Passes)
                best = Math.Min(best, (Environment.CpuUsage.TotalTime - used).TotalSeconds);
        }

        GC.KeepAlive(sum);
        return best;
    }

    private static void Print(string what, double? seconds, double? peer)
    {
        if (seconds is not { } taken)
            return;
        var ratio = peer is { } other ? string.Create(CultureInfo.InvariantCulture, $"; {other / taken:0.0} x PROJ") : "";
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {PlacesTaken / taken / 1e6:0.0} million/s, {taken / PlacesTaken * 1e9:0} ns each{ratio}"));
    }

    private static LatLon[] Places()
    {
        var chance = new Random(2);
        var grid = NationalGrid.Get(GridId.British);
        return [.. Enumerable.Range(0, PlacesTaken).Select(_ => grid.ToLatLon(new(chance.Next(150_000, 650_000), chance.Next(20_000, 960_000))))];
    }
}
