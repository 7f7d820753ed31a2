using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests;

public class TileJsonDocumentTests
{
    private static readonly RangeMap.Presence.PresenceMap Map = Drawing.Of(new(GridId.British, SquareSize.Km10, 400_000, 300_000), "a.#");
    private static readonly MapCaption Caption = new("Inventa exempli", "e-7");

    [Fact]
    public async Task TheDocumentHasWhatTileJson3Requires()
    {
        var root = await DocumentAsync(new("https://example.org/t/{z}/{y}/{x}", "Records & <b>friends</b>", "7.0.0"));
        Assert.Equal("3.0.0", root.GetProperty("tilejson").GetString());
        Assert.Equal("https://example.org/t/{z}/{y}/{x}", Assert.Single(root.GetProperty("tiles").EnumerateArray()).GetString());
        var layer = Assert.Single(root.GetProperty("vector_layers").EnumerateArray());
        Assert.Equal("presence", layer.GetProperty("id").GetString());
        Assert.All(layer.GetProperty("fields").EnumerateObject(), field => Assert.Equal(JsonValueKind.String, field.Value.ValueKind));
        Assert.Equal("Records &amp; &lt;b&gt;friends&lt;/b&gt;", root.GetProperty("attribution").GetString());
        Assert.Equal("7.0.0", root.GetProperty("version").GetString());
    }

    [Fact]
    public async Task EveryFieldOfATileIsDescribed()
    {
        var layer = (await DocumentAsync(new("https://example.org/{z}/{y}/{x}"))).GetProperty("vector_layers")[0];
        var tile = new PresenceTiles(Map, TileMatrixSet.WebMercatorQuad).Draw(5, 15, 10);
        Assert.Equal(Assert.Single(RawTile.Message(tile).Layers).Keys, layer.GetProperty("fields").EnumerateObject().Select(field => field.Name));
    }

    [Fact]
    public async Task TheBoundsHoldTheSquaresAndNoMore()
    {
        var bounds = (await DocumentAsync(new("https://example.org/{z}/{y}/{x}"))).GetProperty("bounds").EnumerateArray().Select(degrees => degrees.GetDouble()).ToArray();
        var southWest = NationalGrid.Get(GridId.British).FromLatLon(new(bounds[1], bounds[0]));
        Assert.InRange(southWest.Easting, 399_700, 400_001);
        Assert.InRange(southWest.Northing, 299_500, 300_001);
        Assert.True(bounds[0] < bounds[2] && bounds[1] < bounds[3]);
    }

    [Theory]
    [InlineData("/tiles/{z}/{y}/{x}")]
    [InlineData("https://example.org/tiles/{z}/{y}")]
    [InlineData("file:///tiles/{z}/{y}/{x}")]
    public Task AnAddressThatMapsCannotUseIsRefused(string url) =>
        Assert.ThrowsAsync<ArgumentException>(() => DocumentAsync(new(url)));

    private static async Task<JsonElement> DocumentAsync(TileJsonOptions options) =>
        JsonDocument.Parse(await Written.BytesAsync(stream => TileJsonDocument.WriteAsync(stream, Map, Caption, options))).RootElement;
}
