using System.Text.Json.Nodes;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.TestKit;

namespace RangeMap.Maps.Tests.Archives;

/// <summary>Archives after the PMTiles specification, version 3, read by its own JavaScript library.</summary>
public sealed class TileArchiveTests
{
    /// <summary>Numbers printed in the specification, section 4.1.</summary>
    [Theory]
    [InlineData(0, 0, 0, 0UL)]
    [InlineData(1, 0, 0, 1UL)]
    [InlineData(1, 0, 1, 2UL)]
    [InlineData(1, 1, 1, 3UL)]
    [InlineData(1, 1, 0, 4UL)]
    [InlineData(2, 0, 0, 5UL)]
    [InlineData(12, 3423, 1763, 19078479UL)]
    public void TilesAreNumberedAsPrinted(int zoom, int column, int row, ulong id) => Assert.Equal(id, HilbertOrder.IdOf(zoom, column, row));

    [Fact]
    public void NeighboursInNumberAreNeighboursInPlace()
    {
        const int Zoom = 6;
        var places = Enumerable.Range(0, 64 * 64).Select(i => (Column: i % 64, Row: i / 64)).OrderBy(place => HilbertOrder.IdOf(Zoom, place.Column, place.Row)).ToList();
        Assert.All(places.Zip(places.Skip(1)), pair => Assert.Equal(1, Math.Abs(pair.First.Column - pair.Second.Column) + Math.Abs(pair.First.Row - pair.Second.Row)));
    }

    [Fact]
    public async Task TheLibraryOfTheFormatReadsEveryTileBack()
    {
        var web = Path.Combine(Root(), "web");
        if (!Programs.Has("node") || !Directory.Exists(Path.Combine(web, "node_modules", "pmtiles")))
            Assert.Skip("Node.js or the npm package pmtiles is not installed.");
        using var folder = new TemporaryFolder();
        var file = folder.File("t.pmtiles");
        // Every fifth tile is like the one before; enough others that the directory needs leaves.
        var tiles = Enumerable.Range(0, 40_000).Select(i => (Id: (ulong)(i * 3 + i % 7 / 6), Text: FormattableString.Invariant($"tile {(i % 5 == 4 ? i - 1 : i) * 7919}"))).ToList();
        using (var archive = new TileArchive(folder.File("scratch")))
        {
            foreach (var (id, text) in tiles)
                archive.Add(id, System.Text.Encoding.ASCII.GetBytes(text));
            await using var output = File.Create(file);
            await archive.FinishAsync(output, new("{\"vector_layers\":[],\"attribution\":\"Invented\"}"u8.ToArray(), 0, 9, new(-8, 50, 2, 61)));
        }

        var script = Path.Combine(Root(), "tests", "RangeMap.Maps.Tests", "Archives", "read-archive.mjs");
        var read = JsonNode.Parse(await Programs.RunAsync("node", [script, file, .. tiles.Where((_, i) => i % 400 == 0).Select(tile => tile.Id.ToString(System.Globalization.CultureInfo.InvariantCulture))], web))!;
        Assert.Equal("Invented", (string?)read["metadata"]!["attribution"]);
        Assert.Equal(3, (int)read["header"]!["specVersion"]!);
        Assert.True((bool)read["header"]!["clustered"]!);
        Assert.Equal(40_000, (int)read["header"]!["numAddressedTiles"]!);
        Assert.Equal(32_000, (int)read["header"]!["numTileContents"]!);
        Assert.True((int)read["header"]!["leafDirectoryLength"]! > 0);
        Assert.Equal(tiles.Where((_, i) => i % 400 == 0).Select(tile => tile.Text), read["tiles"]!.AsArray().Select(tile => (string?)tile));
    }

    [Fact]
    public async Task APresenceMapIsTheSameInTheArchiveAsDrawn()
    {
        var web = Path.Combine(Root(), "web");
        if (!Programs.Has("node") || !Directory.Exists(Path.Combine(web, "node_modules", "pmtiles")))
            Assert.Skip("Node.js or the npm package pmtiles is not installed.");
        using var folder = new TemporaryFolder();
        var file = folder.File("t.pmtiles");
        var squares = Enumerable.Range(0, 30).Select(i => new PresenceSquare(new(GridId.British, SquareSize.Km10, 300_000 + i * 10_000, 400_000 + i * i * 10_000 % 500_000), 2001, 2002, [new(1, 0, 1, 2001, 2002), default]));
        var map = Drawing.Map(SquareSize.Km10, Drawing.TwoPeriods, squares);
        await using (var output = File.Create(file))
            await PresenceArchive.WriteAsync(output, folder.File("scratch"), [new("presence", "Inventa prima", map)], Exports.SomeRows.Source, "Invented");
        var id = HilbertOrder.IdOf(0, 0, 0);
        var script = Path.Combine(Root(), "tests", "RangeMap.Maps.Tests", "Archives", "read-archive.mjs");
        var read = JsonNode.Parse(await Programs.RunAsync("node", [script, file, id.ToString(System.Globalization.CultureInfo.InvariantCulture)], web))!;
        var drawn = new PresenceTiles(map, TileMatrixSet.WebMercatorQuad).Draw(0, 0, 0);
        Assert.Equal(System.Text.Encoding.Latin1.GetString(drawn), (string?)read["tiles"]![0]);
        Assert.Equal("presence", (string?)read["metadata"]!["vector_layers"]![0]!["id"]);
    }

    private static string Root()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "RangeMap.sln")))
            root = Path.GetDirectoryName(root)!;
        return root;
    }
}
