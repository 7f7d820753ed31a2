using System.Buffers;
using System.Globalization;
using NetTopologySuite.IO.VectorTiles.Mapbox;
using RangeMap.Grids;
using WholeTile = NetTopologySuite.IO.VectorTiles.Tiles.Tile;

namespace RangeMap.Maps.Tests;

/// <summary>Layers beside that of presence, as an independent reader finds them.</summary>
public class LayerTilesTests
{
    private static readonly TileMatrixSet British = TileMatrixSet.BritishNationalGrid;

    private static readonly Square Here = new(GridId.British, SquareSize.Km10, 400_000, 300_000);

    [Fact]
    public void LayersPutOneAfterTheOtherMakeOneTile()
    {
        var effort = new LayerTiles(TileLayer.Effort(1), British, [new(Here, null, [ExportValue.Of("SK00"), ExportValue.Of("GB"), ExportValue.Of(12), ExportValue.Of(true), ExportValue.Of(12)])]);
        var forecast = new LayerTiles(TileLayer.Forecast, British, [new(Here, null, [ExportValue.Of("SK00"), ExportValue.Of("GB"), ExportValue.Of(2027), ExportValue.Of(0.25), ExportValue.Of(0.5), default])]);
        var read = Read(Draw(3, 3, 5, effort, forecast));
        Assert.Equal(["effort", "forecast"], read.Layers.Select(layer => layer.Name));
        var visited = read.Layers[0].Features.Single().Attributes;
        Assert.Equal((12, true), (Convert.ToInt32(visited["visits"], CultureInfo.InvariantCulture), (bool)visited["wellSurveyed"]));
        var foretold = read.Layers[1].Features.Single().Attributes;
        Assert.Equal((0.25, 0.5), ((double)foretold["now"], (double)foretold["byYear"]));
        Assert.False(foretold.Exists("search"));
    }

    [Fact]
    public void ALineIsCutAtTheBufferAndComesBackAsAnotherPart()
    {
        // At level 8 a tile is this very square: in by its western side and out, in again further north and out.
        var plane = NationalGrid.Get(GridId.British);
        LatLon At(double east, double north) => plane.ToLatLon(new(400_000 + east, 300_000 + north));
        var line = new[] { At(-5_000, 2_000), At(5_000, 2_000), At(5_000, -9_000), At(20_000, -9_000), At(20_000, 8_000), At(5_000, 8_000) };
        var fronts = new LayerTiles(TileLayer.Fronts, British, [new(default, [line], [ExportValue.Of("2015"), ExportValue.Of(2015), ExportValue.Of(false)])]);
        var feature = Assert.Single(RawTile.Message(Draw(8, 104, 161, fronts)).Layers.Single().Features);
        Assert.Equal(2, (int)feature.Type);
        // MoveTo and LineTo of two steps, then MoveTo and LineTo of one step.
        Assert.Equal([9u, 18u, 9u, 10u], [feature.Geometry[0], feature.Geometry[3], feature.Geometry[8], feature.Geometry[11]]);
        Assert.Equal("2015", Read(Draw(8, 104, 161, fronts)).Layers[0].Features.Single().Attributes["label"]);
        Assert.Empty(Draw(8, 120, 161, fronts));
    }

    [Fact]
    public void OfSquaresSmallerThanAPixelTheFirstStandsForIt()
    {
        var squares = Enumerable.Range(0, 3).Select(i => new Square(GridId.British, SquareSize.Km1, 400_000 + 1_000 * i, 300_000))
            .Select(square => new TileFeature(square, null, [ExportValue.Of(square.ToString()), ExportValue.Of("GB"), ExportValue.Of(2000), default, default, default])).Reverse().ToList();
        var arrivals = new LayerTiles(TileLayer.Arrivals, British, squares);
        Assert.Equal("SK0200", Read(Draw(0, 0, 0, arrivals)).Layers[0].Features.Single().Attributes["square"]);
        Assert.Equal(3, Read(Draw(5, 13, 20, arrivals)).Layers[0].Features.Count);
    }

    private static byte[] Draw(int zoom, int column, int row, params LayerTiles[] layers)
    {
        var output = new ArrayBufferWriter<byte>();
        foreach (var layer in layers)
            layer.Draw(zoom, column, row, output);
        return output.WrittenSpan.ToArray();
    }

    private static NetTopologySuite.IO.VectorTiles.VectorTile Read(byte[] tile)
    {
        using var stream = new MemoryStream(tile);
        return new MapboxTileReader().Read(stream, new WholeTile(8, 8, 4), "the id");
    }
}
