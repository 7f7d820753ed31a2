using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests;

public class TileMatrixSetJsonTests
{
    [Fact]
    public async Task WebMercatorQuadHasTheRegisteredNumbers()
    {
        // OGC 17-083r4, annex D.1, WebMercatorQuad: level, scale denominator, cell size in metres.
        (int Zoom, double Scale, double Cell)[] registered =
            [(0, 559082264.028717, 156543.033928041), (1, 279541132.014358, 78271.5169640204), (4, 34942641.5017948, 9783.93962050256)];
        var root = await DocumentAsync(TileMatrixSet.WebMercatorQuad);
        Assert.Equal("http://www.opengis.net/def/crs/EPSG/0/3857", root.GetProperty("crs").GetString());
        foreach (var (zoom, scale, cell) in registered)
        {
            var matrix = root.GetProperty("tileMatrices")[zoom];
            Assert.Equal(1, matrix.GetProperty("scaleDenominator").GetDouble() / scale, 12);
            Assert.Equal(1, matrix.GetProperty("cellSize").GetDouble() / cell, 12);
            Assert.Equal(-20037508.3427892, matrix.GetProperty("pointOfOrigin")[0].GetDouble(), 6);
            Assert.Equal(1 << zoom, matrix.GetProperty("matrixWidth").GetInt32());
        }
    }

    [Fact]
    public async Task TheBritishSetHasNoRegisteredAddressAndNestsWithTenKilometreSquares()
    {
        var root = await DocumentAsync(TileMatrixSet.BritishNationalGrid);
        Assert.False(root.TryGetProperty("uri", out _));
        Assert.Equal(["E", "N"], root.GetProperty("orderedAxes").EnumerateArray().Select(axis => axis.GetString()));
        var eighth = root.GetProperty("tileMatrices")[8];
        Assert.Equal(10_000, eighth.GetProperty("cellSize").GetDouble() * eighth.GetProperty("tileWidth").GetInt32());
        Assert.Equal([-640_000, 1_920_000], eighth.GetProperty("pointOfOrigin").EnumerateArray().Select(metres => metres.GetDouble()));
        Assert.Equal(eighth.GetProperty("cellSize").GetDouble(), eighth.GetProperty("scaleDenominator").GetDouble() * 0.00028, 9);
    }

    private static async Task<JsonElement> DocumentAsync(TileMatrixSet set) =>
        JsonDocument.Parse(await Written.BytesAsync(stream => TileMatrixSetJson.WriteAsync(stream, set))).RootElement;
}
