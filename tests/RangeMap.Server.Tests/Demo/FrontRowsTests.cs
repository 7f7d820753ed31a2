using System.Globalization;
using System.Text.Json.Nodes;
using RangeMap.Maps;

namespace RangeMap.Server.Tests.Demo;

/// <summary>Fronts of the demo's arriving species as features, beside the lines that the flow draws.</summary>
public sealed class FrontRowsTests(DemoTruthTests.MadeDemo demo) : IClassFixture<DemoTruthTests.MadeDemo>
{
    private const string Arriving = "cindrava-adventa";

    [Fact]
    public void EveryYearHasTheFrontThatIsDrawnForIt()
    {
        var rows = Rows(new()).Select(row => (Year: (int)row.Values[3].Whole, row.Lines)).ToList();
        Assert.Equal(rows.Select(row => row.Year).Distinct().Order(), rows.Select(row => row.Year));
        var asked = rows[rows.Count / 2];
        var (fronts, _) = DrawFronts.Answer(demo.Data, demo.Data.Find(Arriving), Grids.SquareSize.Km10, asked.Year.ToString(CultureInfo.InvariantCulture));
        Assert.Equal(fronts.Single().Lines, asked.Lines);
    }

    [Fact]
    public void OnlyTheYearAfterTheLastVisitsIsForetold() => Assert.Equal(1, Rows(new()).Count(row => row.Values[4].Whole == 1));

    [Fact]
    public void DaysChooseYearsAndABoxChoosesLinesThatTouchIt()
    {
        Assert.Equal([2010L, 2011L], Rows(new() { From = "2010-05-01", To = "2011-02-01" }).Select(row => row.Values[3].Whole));
        Assert.Empty(Rows(new() { Bbox = "170,50,-170,60" }));
        Assert.NotEmpty(Rows(new() { Bbox = "-9,49,3,61" }));
    }

    [Fact]
    public void AFeatureHasLinesAsItsGeometry()
    {
        using var bytes = new MemoryStream();
        using (var json = new System.Text.Json.Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            GeoJsonExport.WriteFeature(json, ExportTables.Fronts, Rows(new()).Last());
            json.WriteEndObject();
        }

        var feature = JsonNode.Parse(bytes.ToArray())!;
        Assert.Equal("MultiLineString", feature["geometry"]!.Text("type"));
        Assert.True(feature["geometry"]!["coordinates"]![0]!.AsArray().Count >= 2);
        Assert.Equal(Arriving, feature["properties"]!.Text("taxonID"));
    }

    [Fact]
    public void ATileOfASpreadingSpeciesHasEveryLayerAskedAndPresenceStaysAsItWas()
    {
        var (set, question) = (Grids.TileMatrixSet.WebMercatorQuad, PresenceQuestion.Of(demo.Data, Arriving, null, null, null));
        var alone = DrawTile.Answer(demo.Data, question, LayerNames.Read(null), set, 5, 10, 15).Bytes;
        Assert.NotEmpty(alone);
        Assert.Equal(DrawTile.Answer(demo.Data, question, set, 5, 10, 15).Bytes, alone);
        var all = DrawTile.Answer(demo.Data, question, LayerNames.Read("effort,forecast,fronts,arrivals,presence"), set, 5, 10, 15).Bytes;
        Assert.Equal(alone, all[..alone.Length]);
        foreach (var layer in (string[])["arrivals", "fronts", "forecast", "effort"])
            Assert.True(DrawTile.Answer(demo.Data, question, LayerNames.Read(layer), set, 5, 10, 15).Bytes is { Length: > 0 } drawn && all.AsSpan().IndexOf(drawn) > 0, layer);
    }

    private IEnumerable<ExportRow> Rows(ExportParts parts) => FrontRows.Of(null!, ExportAsk.Read(demo.Data, ExportTables.Fronts, parts with { Taxon = Arriving }));
}
