namespace RangeMap.Server.Tests.Commands;

/// <summary>Rows that cannot become records: each is refused with a reason, keeps its text, and leaves the good rows alone.</summary>
public sealed class BadRowTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters\n";

    [Theory]
    [InlineData("x,Inventa secinda,2005-06-01,NZ2563,,,", "Nearest: Inventa secunda")]
    [InlineData("x,,2005-06-01,NZ2563,,,", "no taxon name")]
    [InlineData("x,Inventa prima,2005-06-01,ZZ2563,,,", "ZZ")]
    [InlineData("x,Inventa prima,2005-06-01,NZ25634,,,", "figures")]
    [InlineData("x,Inventa prima,2005-06-01,here,,,", "")]
    [InlineData("x,Inventa prima,2005-06-01,,,,", "no place")]
    [InlineData("x,Inventa prima,2026-01-16,NZ2563,,,", "in the future")]
    [InlineData("x,Inventa prima,2031,NZ2563,,,", "in the future")]
    [InlineData("x,Inventa prima,1599-12-31,NZ2563,,,", "before 1600")]
    [InlineData("x,Inventa prima,2005-02-30,NZ2563,,,", "30")]
    [InlineData("x,Inventa prima,,NZ2563,,,", "no date")]
    [InlineData("x,Inventa prima,36892,NZ2563,,,", "day count")]
    [InlineData("x,Inventa prima,2005-06-01,,0,0,", "Gulf of Guinea")]
    [InlineData("x,Inventa prima,2005-06-01,,48.85,12.35,", "outside every national grid")]
    [InlineData("x,Inventa prima,2005-06-01,,91,0.5,", "90")]
    [InlineData("x,Inventa prima,2005-06-01,,NaN,0.5,", "")]
    [InlineData("x,Inventa prima,2005-06-01,,54.9,,", "without the longitude|longitude")]
    [InlineData("x,Inventa prima,2005-06-01,,54.9,-1.6,1e300", "fits into no square")]
    [InlineData("x,Inventa prima,2005-06-01,,54.9,-1.6,-5", "above 0")]
    [InlineData("x,Inventa prima,2005-06-01,NZ2563,,", "7")]
    [InlineData("x,Inventa prima,2005-06-01,NZ2563,,,,,,", "7")]
    public async Task ABadRowIsRefusedWithItsReasonAndItsText(string row, string anyOfTheseWords)
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var table = $"{Header}a,Inventa prima,2005-06-01,NZ2563,,,\n{row}\nb,Inventa prima,2005-06-02,NZ2563,,,\n";
        var run = await data.ImportAsync(data.Write("rows.csv", table), "--json");
        Assert.Equal((3, 3, 2, 1), (run.Exit, run.Json.Int("read"), run.Json.Int("accepted"), run.Json.Int("refused")));
        var refusals = (await data.RunAsync("refusals", "1")).Out;
        Assert.Contains(anyOfTheseWords.Split('|'), words => refusals.Contains(words, StringComparison.OrdinalIgnoreCase));
        Assert.Contains(",3,", refusals, StringComparison.Ordinal);
        Assert.Contains(row.Split(',')[2], refusals, StringComparison.Ordinal);
        Assert.Equal(2, (await data.CountsAsync("prima", "1km"))[("NZ2563", "../..")]);
    }

    [Fact]
    public async Task ExchangedCoordinatesAreReadInTheOtherOrderAndDoubted()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var json = await data.ImportTableAsync(Header + "x,Inventa prima,2005-06-01,,-1.6123,54.9712,50\n");
        Assert.Equal(1, (int)json["doubts"]!["coordinatesSwapped"]!);
        Assert.Empty(await data.CountsAsync("prima", "10km"));
        Assert.Equal(["NZ26"], (await data.CountsAsync("prima", "10km", quality: "all")).Keys.Select(key => key.Square));
    }

    [Fact]
    public async Task AnOpenQuoteTakesNoMoreThanItMustAndLosesNothing()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var json = await data.ImportTableAsync(
            Header + "a,Inventa prima,2005-06-01,NZ2563,,,\nb,\"Inventa prima,2005-06-02,NZ2563,,,\nc,Inventa prima,2005-06-03,NZ2563,,,\n");
        Assert.Equal(json.Int("read"), json.Int("accepted") + json.Int("refused"));
        Assert.True(json.Int("accepted") >= 1);
        Assert.Contains("2005-06-02", (await data.RunAsync("refusals", "1")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task NulBytesInARowAreRefusedAndTheTextAfterThemIsKept()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var json = await data.ImportTableAsync(Header + "a,Inventa\0 prima,2005-06-01,NZ2563,,,\nb,Inventa prima,2005-06-02,NZ2563,,,\n");
        Assert.Equal((1, 1), (json.Int("accepted"), json.Int("refused")));
        var refusals = (await data.RunAsync("refusals", "1")).Out;
        Assert.Contains("NUL", refusals, StringComparison.Ordinal);
        Assert.Contains("2005-06-01", refusals, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AFormulaIsNotHandedOnToASpreadsheet()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync(Header + "a,=1+1,2005-06-01,NZ2563,,,\n");
        Assert.DoesNotContain(",=1+1", (await data.RunAsync("refusals", "1")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-8")]
    [InlineData("iso-8859-1")]
    public async Task EveryUsualEncodingIsRead(string encoding)
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var form = System.Text.Encoding.GetEncoding(encoding);
        var text = "scientificName,eventDate,gridReference,recordedBy\nInventa prima,2005-06-01,NZ2563,Zoë Ünvented\n";
        var json = (await data.ImportAsync(data.Write("e.csv", [.. form.GetPreamble(), .. form.GetBytes(text)]), "--json")).Json;
        Assert.Equal((1, 0), (json.Int("accepted"), json.Int("refused")));
    }
}
