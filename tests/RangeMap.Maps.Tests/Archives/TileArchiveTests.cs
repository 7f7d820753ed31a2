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
        SkipWithoutLibrary();
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

        var read = await ReadAsync(file, tiles.Where((_, i) => i % 400 == 0).Select(tile => tile.Id));
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
        SkipWithoutLibrary();
        using var folder = new TemporaryFolder();
        var file = folder.File("t.pmtiles");
        var squares = Enumerable.Range(0, 30).Select(i => new PresenceSquare(new(GridId.British, SquareSize.Km10, 300_000 + i * 10_000, 400_000 + i * i * 10_000 % 500_000), 2001, 2002, [new(1, 0, 1, 2001, 2002), default]));
        var map = Drawing.Map(SquareSize.Km10, Drawing.TwoPeriods, squares);
        await using (var output = File.Create(file))
            await PresenceArchive.WriteAsync(output, folder.File("scratch"), [new("presence", "Inventa prima", map)], Exports.SomeRows.Source, "Invented");
        var read = await ReadAsync(file, [HilbertOrder.IdOf(0, 0, 0)]);
        var drawn = new PresenceTiles(map, TileMatrixSet.WebMercatorQuad).Draw(0, 0, 0);
        Assert.Equal(System.Text.Encoding.Latin1.GetString(drawn), (string?)read["tiles"]![0]);
        Assert.Equal("presence", (string?)read["metadata"]!["vector_layers"]![0]!["id"]);
    }

    [Fact]
    public async Task TilesOfManyMapsHoldEveryLayerInTheOrderOfTheMaps()
    {
        const int Maps = 40, Zoom = 6;
        SkipWithoutLibrary();
        using var folder = new TemporaryFolder();
        var file = folder.File("t.pmtiles");
        // Each map has its own share of the country, one has nothing.
        var layers = Enumerable.Range(0, Maps).Select(i => new ArchiveLayer(Name(i), $"Inventa {i}", Drawing.Map(SquareSize.Km10, Drawing.TwoPeriods, i == 7 ? [] : Strip(i)))).ToList();
        await using (var output = File.Create(file))
            await PresenceArchive.WriteAsync(output, folder.File("scratch"), layers, Exports.SomeRows.Source, "Invented");
        Assert.Equal([file], Directory.GetFiles(Path.GetDirectoryName(file)!));

        var tiles = Enumerable.Range(0, 1 << Zoom).SelectMany(row => Enumerable.Range(0, 1 << Zoom).Select(column => (row, column))).ToList();
        var read = await ReadAsync(file, tiles.Select(tile => HilbertOrder.IdOf(Zoom, tile.column, tile.row)));
        var drawers = layers.ConvertAll(layer => new PresenceTiles(layer.Map, TileMatrixSet.WebMercatorQuad, layer.Layer));
        var drawn = tiles.Select(tile => string.Concat(drawers.Select(drawer => System.Text.Encoding.Latin1.GetString(drawer.Draw(Zoom, tile.column, tile.row))))).ToList();
        Assert.Equal(drawn, read["tiles"]!.AsArray().Select(tile => (string?)tile ?? ""));
        Assert.True(drawn.Count(tile => tile.Length > 0) > 4);
        Assert.Equal(layers.Where((_, i) => i != 7).Select(layer => layer.Layer), read["metadata"]!["vector_layers"]!.AsArray().Select(layer => (string?)layer!["id"]));

        static string Name(int i) => FormattableString.Invariant($"taxon-{i}");
        static IEnumerable<PresenceSquare> Strip(int map) => Enumerable.Range(0, 60).Select(i =>
            new PresenceSquare(new(GridId.British, SquareSize.Km10, 100_000 + map * 10_000, 100_000 + i * 10_000), 2001, 2002, [new(map + 1, 0, 1, 2001, 2002), default]));
    }

    [Fact]
    public async Task MapsWithoutSquaresMakeNoArchive()
    {
        using var folder = new TemporaryFolder();
        using var output = new MemoryStream();
        Assert.Equal(0, await PresenceArchive.WriteAsync(output, folder.File("scratch"), [new("none", "Inventa nulla", Drawing.Map(SquareSize.Km10, Drawing.TwoPeriods, []))], Exports.SomeRows.Source, "Invented"));
        Assert.Equal(0, output.Length);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(folder.File("scratch"))!));
    }

    private static string Web => Path.Combine(Root(), "web");

    private static void SkipWithoutLibrary()
    {
        if (!Programs.Has("node") || !Directory.Exists(Path.Combine(Web, "node_modules", "pmtiles")))
            Assert.Skip("Node.js or the npm package pmtiles is not installed.");
    }

    /// <summary>Header, metadata and some tiles as the library of the format reads them.</summary>
    private static async Task<JsonNode> ReadAsync(string file, IEnumerable<ulong> tiles)
    {
        var script = Path.Combine(Root(), "tests", "RangeMap.Maps.Tests", "Archives", "read-archive.mjs");
        return JsonNode.Parse(await Programs.RunAsync("node", [script, file, .. tiles.Select(tile => tile.ToString(System.Globalization.CultureInfo.InvariantCulture))], Web))!;
    }

    private static string Root()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "RangeMap.sln")))
            root = Path.GetDirectoryName(root)!;
        return root;
    }
}
