using System.Net;
using System.Net.Sockets;
using System.Text;

namespace RangeMap.Server.Tests.Http;

/// <summary>What every route answers when asked badly: a problem in full (RFC 9457), never a failure of the server.</summary>
public sealed class BadAnswerTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private readonly RunningServer _server = world.Server;

    public static TheoryData<string, string> NotThere => new()
    {
        { "/api/v1/taxa/nulla", "nulla" },
        { "/api/v1/taxa/Inventa%20nulla/presence", "Inventa nulla" },
        { "/api/v1/taxa/nulla/arrivals", "nulla" },
        { "/api/v1/taxa/nulla/spread", "nulla" },
        { "/api/v1/taxa/nulla/forecast", "nulla" },
        { "/api/v1/taxa/nulla/fronts", "nulla" },
        { "/api/v1/taxa/nulla/change?from=1990/1999&to=2010/2019", "nulla" },
        { "/api/v1/taxa/nulla/tiles.json", "nulla" },
        { "/api/v1/taxa/nulla/style.json", "nulla" },
        { "/api/v1/taxa/nulla/map.svg", "nulla" },
        { "/api/v1/taxa/nulla/map.pdf?kind=change&from=1990/1999&to=2010/2019", "nulla" },
        { "/api/v1/taxa/nulla/new-squares.atom", "nulla" },
        { "/api/v1/taxa/prima/map.gif", "/reference" },
        { "/api/v1/legends/arrivals?taxon=nulla", "nulla" },
        { "/api/v1/taxa/nulla/tiles/WebMercatorQuad/0/0/0", "nulla" },
        { "/api/v1/taxa/prima/tiles/WorldMercator/0/0/0", "WorldMercator" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/1", "no tile" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/1?layers=effort", "no tile" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/-1/0/0", "no tile" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/40/0/0", "no tile" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/30/0/0", "no tile" },
        { "/api/v1/taxa/prima/tiles/BritishNationalGrid/3/8/0", "no tile" },
        { "/ogc/collections/presence/tiles/WebMercatorQuad/2/4/0", "no tile" },
        { "/ogc/collections/presence/tiles/BritishNationalGrid/-1/0/0", "no tile" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/2147483647/2147483647/2147483647", "no tile" },
        { "/api/v1/taxa/prima/tiles/BritishNationalGrid/17/0/0", "no tile" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/99999999999", "/reference" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/zero/0/0", "/reference" },
        { "/api/v1/squares/NZ26?taxon=nulla", "nulla" },
        { "/api/v1/nothing", "/reference" },
        { "/ogc/tileMatrixSets/Nowhere", "Nowhere" },
        { "/ogc/collections/nothing", "nothing" },
        { "/ogc/collections/nothing/items", "nothing" },
        { "/ogc/collections/presence/items/prima~NZ99~1", "no feature" },
        { "/ogc/collections/records/items/..%2F..", "no feature" },
        { "/ogc/collections/fronts/items/prima~10km~2010", "no feature" },
        { "/ogc/collections/fronts/items/prima", "no feature" },
        { "/ogc/collections/effort/tiles", "no tiles" },
        { "/ogc/collections/presence/tiles/Nowhere", "Nowhere" },
        { "/ogc/collections/presence/tiles/WebMercatorQuad/30/0/0", "no tile" },
        { "/ogc/collections/presence/tiles/WebMercatorQuad/x/0/0", "no tile" },
        { "/ogc/collections/presence/tiles/WebMercatorQuad/0/0/0?taxonID=nulla", "nulla" },
        { "/api/v1/exports/presence?taxon=nulla", "nulla" },
        { "/api/v1/exports/tiles?taxon=nulla", "nulla" },
        { "/api/v1/exports/tiles?taxon=aperta", "no square" },
        { "/api/v1/exports/presence?taxon=..%2F..%2Fetc%2Fpasswd", "etc" },
        { "/api/v1/exports/records?taxon=prima,%22;%20filename=evil.exe", "evil" },
        { "/api/v1/exports/tiles?edition=..%2F..%2Fetc", "no frozen edition" },
        { "/api/v1/editions/12", "no frozen edition" },
        { "/api/v1/regions?edition=0123456789abcdef", "no frozen edition" },
        { "/api/v1/editions/..%2F..%2Fetc%2Fpasswd", "no frozen edition" },
        { "/api/v1/editions/0123456789abcdef/citation.cff", "no frozen edition" },
        { "/api/v1/editions/0123456789abcdef/datacite.json", "no frozen edition" },
        { "/api/v1/taxa/prima/presence?edition=0123456789abcdef", "no frozen edition" },
        { "/nothing", "/reference" },
        { "/api/v1/taxa/..%2F..%2Fetc%2Fpasswd", "etc" },
        { "/api/v1/taxa/';%20DROP%20TABLE%20taxon;--/presence", "DROP TABLE" },
        { "/api/v1/taxa/%F0%9F%90%9D", "\U0001F41D" },
    };

    public static TheoryData<string, string> Unreadable => new()
    {
        { "/api/v1/taxa/prima/presence?grid=3km", "10km, 5km, 2km, 1km" },
        { "/api/v1/taxa/prima/presence?grid=1km&grid=2km", "no square size" },
        { "/api/v1/taxa/prima/presence?quality=best", "usable, confirmed or all" },
        { "/api/v1/taxa/prima/presence?periods=soon", "ISO 8601" },
        { "/api/v1/taxa/prima/presence?periods=2009/2000", "ends before it starts" },
        { "/api/v1/taxa/prima/presence?periods=2000,,2001", "no date" },
        { "/api/v1/taxa/prima/presence?periods=9999/..", "no date" },
        { "/api/v1/taxa/prima/presence?format=shape", "geojson, csv, gpkg or parquet" },
        { "/api/v1/taxa/prima/presence?region=nowhere", "no region" },
        { "/api/v1/taxa/prima/presence?bbox=1,2", "no box" },
        { "/api/v1/taxa/prima/presence?bbox=0,2,1,1&format=csv", "north of the northern" },
        { "/api/v1/taxa/prima/arrivals?grid='%20OR%201=1", "no square size" },
        { "/api/v1/taxa/prima/spread?origin=nowhere", "grid reference" },
        { "/api/v1/effort?from=1990/1999&to=2010/2019&group=nulla", "no group" },
        { "/api/v1/effort?group=inventas", "two periods" },
        { "/api/v1/taxa/prima/forecast?format=html", "Not enough squares" },
        { "/api/v1/taxa/prima/forecast?format=gpx", "Not enough squares" },
        { "/api/v1/taxa/prima/forecast?year=soon", "soon" },
        { "/api/v1/taxa/prima/fronts?grid=3km", "no square size" },
        { "/api/v1/taxa/prima/arrivals?model=perhaps", "perhaps" },
        { "/api/v1/squares/NZ26/change", "two periods" },
        { "/api/v1/squares/nowhere/change?from=1990/1999&to=2010/2019", "grid reference" },
        { "/api/v1/squares/NZ26/change?from=2010/2019&to=1990/1999", "comes after" },
        { "/api/v1/taxa/prima/change", "two periods" },
        { "/api/v1/taxa/prima/change?from=1990/1999", "two periods" },
        { "/api/v1/taxa/prima/change?from=1990/1999&to=1995/2005", "overlap" },
        { "/api/v1/taxa/prima/change?from=2010/2019&to=1990/1999", "after the later" },
        { "/api/v1/taxa/prima/change?from=../..&to=../..", "overlap" },
        { "/api/v1/taxa/prima/change?from=soon&to=later", "ISO 8601" },
        { "/api/v1/taxa/prima/change?from=1990/1999&to=2010/2019&format=shape", "json, csv or geojson" },
        { "/api/v1/change?from=1990/1999&to=2010/2019&grid=3km", "no square size" },
        { "/api/v1/change?from=1990/1999&to=2010/2019&format=geojson", "json or csv" },
        { "/api/v1/taxa/prima/tiles.json?grid=1", "no square size" },
        { "/api/v1/taxa/prima/tiles.json?layers=roads", "no layer" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0?layers=presence,", "no layer" },
        { "/api/v1/exports/presence?format=shape", "no format" },
        { "/api/v1/exports/presence?format=dwca", "single records" },
        { "/api/v1/exports/presence?grid=3km", "no square size" },
        { "/api/v1/exports/presence?from=2010&to=2005", "after the last" },
        { "/api/v1/exports/presence?from=soon", "no year or day" },
        { "/api/v1/exports/presence?bbox=NaN,0,1,1", "no box" },
        { "/api/v1/exports/presence?bbox=0,2,1,1", "north of the northern" },
        { "/api/v1/exports/presence?bbox=0,1,2", "no box" },
        { "/api/v1/exports/presence?bbox=Infinity,0,1,1", "no box" },
        { "/api/v1/exports/presence?bbox=-1e400,0,1,1", "no box" },
        { "/api/v1/exports/presence?bbox=-181,0,1,1", "beyond 180" },
        { "/api/v1/exports/presence?count=perhaps", "count" },
        { "/api/v1/exports/presence?from=0000", "no year or day" },
        { "/api/v1/exports/presence?from=99999", "no year or day" },
        { "/api/v1/exports/presence?region=..%2F..%2Fetc", "no region" },
        { "/api/v1/exports/tiles?periods=soon", "ISO 8601" },
        { "/api/v1/exports/tiles?grid=3km", "no square size" },
        { "/api/v1/exports/presence?region=nowhere", "no region" },
        { "/api/v1/exports/effort?group=nobody", "no group" },
        { "/api/v1/exports/records?quality=best", "quality" },
        { "/ogc/collections/presence/items?limit=0", "limit" },
        { "/ogc/collections/presence/items?limit=-1", "limit" },
        { "/ogc/collections/presence/items?limit=many", "limit" },
        { "/ogc/collections/presence/items?offset=-1", "offset" },
        { "/ogc/collections/presence/items?bbox=NaN,0,1,1", "no box" },
        { "/ogc/collections/presence/items?bbox=1,2,3,4,5", "no box" },
        { "/ogc/collections/presence/items?bbox=0,2,1,1", "north of the northern" },
        { "/ogc/collections/presence/items?bbox=", "box" },
        { "/ogc/collections/presence/items?datetime=soon", "no time" },
        { "/ogc/collections/presence/items?datetime=../..", "no time" },
        { "/ogc/collections/presence/items?datetime=2012-01-01/2010-01-01", "no time" },
        { "/ogc/collections/presence/items?unknownQueryParameter12345=1", "no parameter" },
        { "/ogc/collections/presence/items?limit=1&limit=2", "2 times" },
        { "/ogc/collections/fronts/items?datetime=soon", "no time" },
        { "/ogc/collections/fronts/items?square=NZ26", "no parameter" },
        { "/ogc/?f=pdf", "no form" },
        { "/api/v1/taxa/prima/style.json?kind=change", "no tiles" },
        { "/api/v1/taxa/prima/style.json?kind=all", "presence, arrivals or change" },
        { "/api/v1/taxa/prima/style.json?paper=pink", "light or dark" },
        { "/api/v1/taxa/prima/style.json?periods=soon", "ISO 8601" },
        { "/api/v1/legends/heat", "presence, arrivals or change" },
        { "/api/v1/legends/arrivals", "none is named" },
        { "/api/v1/legends/presence?periods=soon", "ISO 8601" },
        { "/api/v1/taxa/prima/map.svg?kind=heat", "presence, arrivals or change" },
        { "/api/v1/taxa/prima/map.png?size=a3", "page (A4) or column" },
        { "/api/v1/taxa/prima/map.pdf?ink=gold", "colour or black" },
        { "/api/v1/taxa/prima/map.svg?region=Nowhere", "England" },
        { "/api/v1/taxa/prima/map.svg?grid=3km", "no square size" },
        { "/api/v1/taxa/prima/map.svg?quality=best", "usable, confirmed or all" },
        { "/api/v1/taxa/prima/map.svg?periods=soon", "ISO 8601" },
        { "/api/v1/taxa/prima/map.svg?periods=2001,2002,2003,2004,2005,2006,2007,2008,2009", "at most 8" },
        { "/api/v1/taxa/prima/map.svg?ink=black&periods=2001,2002,2003,2004,2005,2006", "at most 5" },
        { "/api/v1/taxa/prima/map.svg?kind=change", "two periods" },
        { "/api/v1/taxa/prima/map.svg?kind=change&from=1990/1999&to=1995/2005", "overlap" },
        { "/api/v1/taxa/prima/new-squares.atom?region=Nowhere", "England" },
        { "/api/v1/taxa/prima/new-squares.atom?grid=3km", "no square size" },
        { "/api/v1/taxa/prima/new-squares.atom?quality=best", "usable, confirmed or all" },
        { "/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0?periods=x", "ISO 8601" },
        { "/api/v1/squares/ZZZ", "letters" },
        { "/api/v1/squares/nonsense", "grid reference" },
        { "/api/v1/squares/NZ2512345678", "finer" },
        { "/api/v1/squares/'%20OR%201=1", "grid reference" },
        { "/api/v1/squares/nonsense/list.html", "grid reference" },
        { "/api/v1/squares/NZ2512345678/list.html", "finer" },
        { "/api/v1/squares/NZ26/list.html?quality=best", "usable, confirmed or all" },
        { "/api/v1/taxa?limit=0", "limit" },
        { "/api/v1/taxa?limit=-5", "limit" },
        { "/api/v1/taxa?limit=many", "many" },
        { "/api/v1/taxa?limit=99999999999999999999", "limit" },
    };

    [Theory]
    [MemberData(nameof(NotThere))]
    public async Task WhatIsNotThereIsSaid(string address, string words) => (await _server.GetProblemAsync(address, HttpStatusCode.NotFound)).ShouldSay(words);

    [Theory]
    [MemberData(nameof(Unreadable))]
    public async Task WhatCannotBeReadIsExplained(string address, string words) => (await _server.GetProblemAsync(address, HttpStatusCode.BadRequest)).ShouldSay(words);

    [Fact]
    public async Task TooManyPeriodsAreRefusedAndAHugeLimitIsCut()
    {
        var periods = string.Join(',', Enumerable.Range(1900, 65));
        var thousand = string.Join(',', Enumerable.Range(1000, 1000));
        foreach (var address in (string[])["presence", "tiles/WebMercatorQuad/0/0/0", "tiles.json", "style.json", "map.svg"])
        {
            (await _server.GetProblemAsync($"/api/v1/taxa/prima/{address}?periods={periods}", HttpStatusCode.BadRequest)).ShouldSay("at most");
            (await _server.GetProblemAsync($"/api/v1/taxa/prima/{address}?periods={thousand}", HttpStatusCode.BadRequest)).ShouldSay("at most");
        }

        (await _server.GetProblemAsync($"/api/v1/exports/tiles?taxon=prima&periods={thousand}", HttpStatusCode.BadRequest)).ShouldSay("at most 64");
        Assert.Equal(7, (await _server.GetJsonAsync("/api/v1/taxa?limit=2147483647"))["taxa"]!.AsArray().Count);
        using var tooLong = await _server.Client.GetAsync($"/api/v1/taxa/prima/presence?periods={new string('1', 100_000)}");
        Assert.Equal(HttpStatusCode.RequestUriTooLong, tooLong.StatusCode);
    }

    [Theory]
    [InlineData("/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0?periods=2000/2010,2005/2015,2000/2010")]
    [InlineData("/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0?layers=effort,effort&periods=../..,../..")]
    [InlineData("/api/v1/taxa/prima/tiles.json?periods=../..,2005/2015")]
    [InlineData("/api/v1/exports/tiles?taxon=prima&periods=2000/2010,2005/2015")]
    [InlineData("/api/v1/taxa/prima/presence?bbox=179,50,-179,60")]
    [InlineData("/ogc/collections/squares/items?bbox=179,50,-179,60&limit=1000000000")]
    [InlineData("/ogc/collections/presence/items?offset=999999999999999999")]
    [InlineData("/ogc/collections/presence/items?year=99999&taxonID=prima")]
    [InlineData("/ogc/collections/presence/items?square=..%2F..&size=3km")]
    public async Task WhatIsOddButCanBeAnsweredIs(string address)
    {
        using var answer = await _server.Client.GetAsync(address);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task WordsThatLookLikeSqlFindNothingAndHarmNothing()
    {
        Assert.Empty((await _server.GetJsonAsync("/api/v1/taxa?q='%20OR%20'1'='1"))["taxa"]!.AsArray());
        Assert.Empty((await _server.GetJsonAsync("/api/v1/places?q=%25'%3B--"))["places"]!.AsArray());
        Assert.Equal(7, (await _server.GetJsonAsync("/api/v1/taxa"))["taxa"]!.AsArray().Count);
    }

    [Fact]
    public async Task AMethodThatIsNotTakenIsSaid()
    {
        using var answer = await _server.Client.PostAsync("/api/v1/taxa/prima", new StringContent("{}"));
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        (await answer.Content.ReadAsStringAsync()).ShouldSay("does not take that method");
    }

    [Fact]
    public async Task ErrorsMayBeReadByAnyPageToo()
    {
        foreach (var address in (string[])["/api/v1/squares/nonsense", "/api/v1/taxa/nulla", "/api/v1/taxa?limit=many", "/api/v1/nothing"])
        {
            using var answer = await _server.Client.GetAsync(address);
            Assert.Equal("*", answer.Headers.GetValues("Access-Control-Allow-Origin").Single());
            Assert.Null(answer.Headers.ETag);
        }
    }

    [Theory]
    [InlineData("a_b:99999")]
    [InlineData("[::1]:0")]
    [InlineData("-")]
    [InlineData("")]
    public async Task AStrangeHostNameIsNoFailure(string host)
    {
        // By hand, since HttpClient sends no such name.
        using var connection = new TcpClient();
        await connection.ConnectAsync(_server.Client.BaseAddress!.Host, _server.Client.BaseAddress.Port);
        await using var stream = connection.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"GET /api/v1/taxa/prima/tiles.json HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n"));
        var answer = await new StreamReader(stream).ReadToEndAsync();
        Assert.True(answer.StartsWith("HTTP/1.1 200", StringComparison.Ordinal) || answer.StartsWith("HTTP/1.1 400", StringComparison.Ordinal), answer);
        Assert.EndsWith(answer.StartsWith("HTTP/1.1 200", StringComparison.Ordinal) ? "0\r\n\r\n" : "", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheServerOutlivesAStormOfBadRequests()
    {
        var addresses = NotThere.Concat(Unreadable).Select(row => row.Data.Item1).ToArray();
        var answers = await Task.WhenAll(Enumerable.Range(0, 200).Select(async i =>
        {
            using var answer = await _server.Client.GetAsync(addresses[i % addresses.Length]);
            return (int)answer.StatusCode;
        }));
        Assert.All(answers, status => Assert.InRange(status, 400, 499));
        await _server.GetAsync("/health/ready");
    }
}
