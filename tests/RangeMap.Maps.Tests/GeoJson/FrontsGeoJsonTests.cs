using System.Text.Json.Nodes;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests.GeoJson;

public class FrontsGeoJsonTests
{
    [Fact]
    public async Task AFrontIsALineAndAnAreaThatTellTheirYearAndWhetherTheyAreForetold()
    {
        FrontOfYear[] fronts =
        [
            new(2020, [[new(54, -1), new(54.1, -1.2)]], [new(GridId.British, SquareSize.Km10, 400_000, 400_000)]),
            new(2026, [[new(55, -1), new(55.1, -1.2)], [new(56, -2), new(56.1, -2)]], []),
        ];
        var json = await WrittenAsync(fronts);
        Assert.Equal(2025, (int)json["now"]!);
        var features = json["features"]!.AsArray();
        Assert.Equal(["band-2020", "front-2020", "front-2026"], features.Select(feature => (string)feature!["id"]!));
        Assert.Equal(["MultiPolygon", "MultiLineString", "MultiLineString"], features.Select(feature => (string)feature!["geometry"]!["type"]!));
        Assert.Equal([false, false, true], features.Select(feature => (bool)feature!["properties"]!["foretold"]!));
        Assert.Equal(2, features[2]!["geometry"]!["coordinates"]!.AsArray().Count);
        Assert.Equal(-1.2m, (decimal)features[1]!["geometry"]!["coordinates"]![0]![1]![0]!);
    }

    [Fact]
    public async Task NoFrontsAreAnEmptyCollection() => Assert.Empty((await WrittenAsync([]))["features"]!.AsArray());

    private static async Task<JsonNode> WrittenAsync(FrontOfYear[] fronts)
    {
        using var bytes = new MemoryStream();
        await FrontsGeoJson.WriteAsync(bytes, SquareSize.Km10, fronts, 2025, new("Inventa prima", "7"), TestContext.Current.CancellationToken);
        return JsonNode.Parse(bytes.ToArray())!;
    }
}
