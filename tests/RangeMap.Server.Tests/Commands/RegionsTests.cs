namespace RangeMap.Server.Tests.Commands;

/// <summary>Regions that the user loads, and the records that lie outside the area that the taxon list names.</summary>
public sealed class RegionsTests
{
    private const string Regions = """
        {"type":"FeatureCollection","features":[
         {"type":"Feature","properties":{"name":"Westland","code":"W1"},"geometry":{"type":"Polygon","coordinates":[[[-2.2,53.0],[-1.8,53.0],[-1.8,53.4],[-2.2,53.4],[-2.2,53.0]]]}},
         {"type":"Feature","properties":{"code":"none"},"geometry":null}]}
        """;

    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference
        a,Inventa regionis,2005-06-01,SK0060
        b,Inventa regionis,2005-06-01,SK8050
        c,Inventa borealis,2005-06-01,NH5060
        d,Inventa borealis,2005-06-01,SK8050
        """;

    [Fact]
    public async Task ARecordOutsideALoadedRegionOrANationIsInDoubtByHowManyKilometres()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        Assert.Equal(0, (await data.RunAsync("taxa", data.Write("more.csv", "taxonID,scientificName,knownArea\nreg,Inventa regionis,Westland\nbor,Inventa borealis,Scotland\n"))).Exit);
        Assert.Contains("1 region loaded: Westland.", (await data.RunAsync("regions", data.Write("regions.json", Regions))).Out, StringComparison.Ordinal);
        Assert.Contains("Westland", (await data.RunAsync("regions")).Out, StringComparison.Ordinal);
        var report = await data.ImportTableAsync(Table);
        Assert.Equal(2, (int)report["doubts"]!["outsideKnownArea"]!);
        Assert.Contains("km outside the area from which Inventa regionis is known (nearest: Westland)", (await data.RunAsync("records", "--queue")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ARegionIsRemoved()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.RunAsync("regions", data.Write("regions.json", Regions.Replace("\"code\":\"W1\"", "\"label\":\"Wide\"", StringComparison.Ordinal)), "--name-property", "label");
        Assert.Equal(0, (await data.RunAsync("regions", "--remove", "wide")).Exit);
        (await data.RunAsync("regions", "--remove", "wide")).Failed(1, "no region");
    }

    [Theory]
    [InlineData("")]
    [InlineData("not json")]
    [InlineData("[1,2]")]
    [InlineData("{\"features\":[]}")]
    [InlineData("{\"features\":[{\"properties\":{\"name\":\"a\"},\"geometry\":null}]}")]
    [InlineData("{\"features\":[{\"properties\":{\"name\":\"a\"},\"geometry\":{\"type\":\"Point\",\"coordinates\":[1,2]}}]}")]
    [InlineData("{\"features\":[{\"properties\":{\"name\":\"a\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[0,50],[1,50],[0,50]]]}}]}")]
    public async Task AFileWithoutARegionIsToldSoAndNothingIsLoaded(string text)
    {
        using var data = await DataDirectory.WithTaxaAsync();
        (await data.RunAsync("regions", data.Write("regions.json", text))).Failed(1);
        Assert.Empty((await data.RunAsync("regions")).Out);
    }
}
