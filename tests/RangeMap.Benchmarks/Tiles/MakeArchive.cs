using System.Globalization;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;

namespace RangeMap.Benchmarks;

/// <summary>The archive of tiles of a large scheme: 1,500 taxa, from a few squares to all of Britain, three periods. The maps are invented one by one, so that memory is that of the archive alone.</summary>
internal static class MakeArchive
{
    private const int Taxa = 1_500, Columns = 50, Rows = 90;

    public static async Task RunAsync(long rows)
    {
        var folder = Directory.CreateTempSubdirectory("rangemap-archive-");
        try
        {
            var path = Path.Combine(folder.FullName, "all.pmtiles");
            long tiles = 0, squares = 0;
            var timing = await Timing.OfAsync(
                FormattableString.Invariant($"{Taxa} taxa as one archive of tiles"),
                async () =>
                {
                    await using var file = new FileStream(path, FileMode.CreateNew);
                    tiles = await PresenceArchive.WriteAsync(file, path, Layers(count => squares += count), new("Invented scheme", "1", IsFrozen: false, "2026-01-01T00:00:00Z", "Invented.", [], []), "Invented");
                },
                runs: 1);
            timing.Print(Taxa, "taxa");
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"  {squares:N0} squares of 10 km, {tiles:N0} tiles, {new FileInfo(path).Length / 1e6:N0} MB; the process held {Machine.PeakMb():N0} MB at most"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static IEnumerable<ArchiveLayer> Layers(Action<int> count)
    {
        var chance = new Random(1);
        Period[] periods = [new(int.MinValue, 730_000, "../1999"), new(730_000, 734_000, "2000/2009"), new(734_000, int.MaxValue, "2010/..")];
        for (var taxon = 0; taxon < Taxa; taxon++)
        {
            // Most taxa are rare: the share of squares that one lives in is the square of an even chance.
            var share = Math.Pow(chance.NextDouble(), 2);
            var squares = new List<PresenceSquare>();
            for (var place = 0; place < Columns * Rows; place++)
            {
                if (chance.NextDouble() < share)
                    squares.Add(Found(chance, new(GridId.British, SquareSize.Km10, 100_000 + place % Columns * 10_000, place / Columns * 10_000)));
            }

            count(squares.Count);
            yield return new(FormattableString.Invariant($"taxon-{taxon}"), FormattableString.Invariant($"Inventa {taxon}"), new PresenceMap(SquareSize.Km10, Quality.Usable, periods, squares, default));
        }
    }

    private static PresenceSquare Found(Random chance, Square square)
    {
        var first = chance.Next(1950, 2020);
        PeriodCount Count() => chance.Next(3) == 0 ? default : new(chance.Next(1, 30), 0, chance.Next(1, 10), first, first + 5);
        return new(square, first, first + chance.Next(1, 6), [Count(), Count(), new(1, 0, 1, first, first)]);
    }
}
