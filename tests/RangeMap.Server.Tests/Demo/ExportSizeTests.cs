using RangeMap.Maps;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests.Demo;

/// <summary>The size that is told beforehand, beside that of the file made.</summary>
public sealed class ExportSizeTests(DemoTruthTests.MadeDemo demo) : IClassFixture<DemoTruthTests.MadeDemo>
{
    [Theory]
    [InlineData("presence", "csv")]
    [InlineData("presence", "geojson")]
    [InlineData("presence", "gpkg")]
    [InlineData("presence", "parquet")]
    [InlineData("effort", "csv")]
    [InlineData("effort", "parquet")]
    [InlineData("records", "csv")]
    [InlineData("records", "geojson")]
    [InlineData("records", "gpkg")]
    [InlineData("records", "parquet")]
    [InlineData("records", "dwca")]
    public async Task TheSizeToldIsWithinAQuarterOfTheFileMade(string name, string word)
    {
        using var folder = new TemporaryFolder();
        var table = ExportTables.All.Single(known => known.Name == name);
        var (question, format) = (ExportAsk.Read(demo.Data, table, new() { Quality = "all", Grid = "2km" }), ExportFormats.Find(word)!.Value);
        var told = await EstimateSize.OfAsync(demo.Folder, question, format, TestContext.Current.CancellationToken);
        Assert.True(told.Rows > 20_000, "So few rows are weighed whole.");
        await MakeExport.WriteAsync(demo.Folder, question, format, folder.File("made"), null, TestContext.Current.CancellationToken);
        var rows = MakeExport.Rows(demo.Folder, question).LongCount();
        Assert.Equal(rows, told.Rows);
        Assert.InRange((double)told.Bytes / new FileInfo(folder.File("made")).Length, 0.8, 1.25);
    }

    [Fact]
    public async Task AShortExportIsToldToTheByte()
    {
        using var folder = new TemporaryFolder();
        var question = ExportAsk.Read(demo.Data, ExportTables.Presence, new() { Taxon = "cindrava-adventa" });
        foreach (var format in (ExportFormat[])[ExportFormat.Csv, ExportFormat.GeoJson, ExportFormat.Parquet, ExportFormat.GeoPackage])
        {
            var path = folder.File($"made{format.Ending()}");
            await MakeExport.WriteAsync(demo.Folder, question, format, path, null, TestContext.Current.CancellationToken);
            Assert.Equal(new FileInfo(path).Length, (await EstimateSize.OfAsync(demo.Folder, question, format, TestContext.Current.CancellationToken)).Bytes);
        }
    }
}
