namespace RangeMap.Server.Tests.Commands;

/// <summary>Bad arguments end with 2 and say what to write instead.</summary>
public sealed class ArgumentTests
{
    [Theory]
    [InlineData("", "Required command")]
    [InlineData("fly", "fly")]
    [InlineData("import", "file")]
    [InlineData("import a.csv", "--dataset")]
    [InlineData("import a.csv --dataset x --date-order ymd", "dmy")]
    [InlineData("spread --table a.csv --units miles", "km")]
    [InlineData("spread", "No taxon was named")]
    [InlineData("grid", "No place was named")]
    [InlineData("refusals one", "one")]
    [InlineData("presence", "taxon")]
    [InlineData("simulate", "-o")]
    [InlineData("simulate -o x --rows many", "many")]
    [InlineData("demo --rows", "--rows")]
    public async Task ABadCommandEndsWithTwo(string line, string words) =>
        (await CommandRun.OfAsync(line.Split(' ', StringSplitOptions.RemoveEmptyEntries))).Failed(2, words);

    [Theory]
    [InlineData("--grid", "3km", "10km, 5km, 2km, 1km")]
    [InlineData("--grid", "1m", "10km, 5km, 2km, 1km")]
    [InlineData("--quality", "best", "usable, confirmed or all")]
    [InlineData("--periods", "2009/2000", "ends before it starts")]
    [InlineData("--periods", "yesterday", "ISO 8601")]
    [InlineData("--periods", "2000/2001/2002", "more than one '/'")]
    [InlineData("--format", "shape", "geojson")]
    public async Task ABadOptionOfAMapEndsWithTwo(string option, string value, string words)
    {
        using var data = await DataDirectory.WithTaxaAsync();
        (await data.RunAsync("presence", "prima", option, value)).Failed(2, words);
    }

    [Fact]
    public async Task AnEmptyDataSetNameEndsWithTwo()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        (await data.RunAsync("import", data.Write("a.csv", "a,b\n1,2\n"), "--dataset", " ")).Failed(2, "data set has no name");
    }

    [Fact]
    public async Task AnUnknownTaxonOrBatchEndsWithOne()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        (await data.RunAsync("presence", "Inventa nulla")).Failed(1, "Inventa nulla");
        (await data.RunAsync("spread", "Inventa nulla")).Failed(1, "Inventa nulla");
        (await data.RunAsync("refusals", "77")).Failed(1, "77");
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("ftp://127.0.0.1:0")]
    [InlineData("http://127.0.0.1:99999")]
    [InlineData("http://203.0.113.7:5080")]
    public async Task AnAddressThatCannotBeServedIsToldSo(string urls)
    {
        using var data = await DataDirectory.WithTaxaAsync();
        (await data.RunAsync("serve", "--urls", urls)).Failed(1, "cannot listen", urls);
    }
}
