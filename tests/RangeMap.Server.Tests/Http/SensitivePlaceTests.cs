using System.Text;
using Microsoft.AspNetCore.Routing;

namespace RangeMap.Server.Tests.Http;

/// <summary>
/// No answer gives a sensitive place away. The strictest test of that: two worlds that differ only in where, within its 10 km
/// square, the sensitive species was found must be the same, byte for byte, whatever is asked.
/// </summary>
public sealed partial class SensitivePlaceTests
{
    // Both lie in NZ26 at other 5 km, 2 km, 1 km and 100 m squares; the recorder found other species on the same day nearby.
    private const string Here = "NZ211612", There = "NZ288677";

    private static readonly string[] Taxa = ["secreta", "occulta-agg", "aperta", "prima", "gemella-agg"];

    private static readonly string[] Sizes = ["100km", "10km", "5km", "2km", "1km", "100m"];

    /// <summary>What only the bearer of a token may ask, and what only one may change.</summary>
    private static readonly string[] ForTokens =
    [
        "/api/v1/me", "/api/v1/imports", "/api/v1/imports/1", "/api/v1/imports/1/events", "/api/v1/imports/1/refusals", "/api/v1/imports/1/refusals.csv",
        "/api/v1/imports/1/mapping.json", "/api/v1/imports/1/names", "/api/v1/names", "/api/v1/reviews", "/api/v1/reviews/summary",
        "/api/v1/taxon-changes", "/api/v1/recorders/1/sheet.csv", "/api/v1/recorders/1/sheet.html",
        "/api/v1/scheme",
    ];

    [Fact]
    public async Task WhereWithinItsSquareCannotBeToldFromAnyAnswer()
    {
        await using var here = await RunningServer.StartAsync(World(Here));
        await using var there = await RunningServer.StartAsync(World(There));
        foreach (var address in Addresses())
        {
            var (one, other) = (await AskAsync(here, address), await AskAsync(there, address));
            Assert.True(one == other, $"{address} tells the worlds apart:\n{one}\n{other}");
        }
    }

    [Fact]
    public async Task NoAnswerNamesAFinerSquareOfTheSensitiveSpecies()
    {
        await using var server = await RunningServer.StartAsync(World(Here));
        string[] finer = [Here, "NZ2161", "NZ26A", "NZ26F", "NZ26K", "NZ26SW"];
        foreach (var address in Addresses().Where(address => address.Contains("secreta", StringComparison.Ordinal) && !address.Contains("/squares/", StringComparison.Ordinal)))
        {
            var answer = await AskAsync(server, address);
            Assert.All(finer, name => Assert.False(answer.Contains(name, StringComparison.Ordinal), $"{address} names {name}"));
        }

        Assert.Contains("NZ26", await AskAsync(server, "/api/v1/taxa/secreta/presence"), StringComparison.Ordinal);
        Assert.Contains("NZ26", await AskAsync(server, "/api/v1/taxa/occulta-agg/presence"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FinerSquaresDoNotCountTheSensitiveRecord()
    {
        await using var server = await RunningServer.StartAsync(World(Here));
        foreach (var square in (string[])[Here, "NZ2161", "NZ26A", "NZ26SW"])
        {
            var page = await server.GetJsonAsync($"/api/v1/squares/{square}");
            Assert.Equal((0, 0), (page.Int("records"), page.Int("visits")));
        }

        var hectad = await server.GetJsonAsync("/api/v1/squares/NZ26?taxon=secreta");
        Assert.Equal("NZ26", hectad["supports"]!["finerSquares"]!.AsArray().Single()!.Text("square"));
        hectad["supports"]!.Text("note").ShouldSay("sensitive");
        Assert.Equal(["100km", "10km"], (await server.GetJsonAsync("/api/v1/taxa/secreta"))["grids"]!.AsArray().Select(grid => (string)grid!));
    }

    [Fact]
    public async Task TheNameOfAnOpenRecordIsAsWorkedOutHere()
    {
        await using var server = await RunningServer.StartAsync(World(Here));
        Assert.Equal("Inventa prima", (await server.GetJsonAsync($"/api/v1/records/{NameOf("o1")}"))["record"]!.Text("scientificName"));
    }

    [Fact]
    public async Task WhatIsForTokensIsNotForThePublic()
    {
        await using var server = await RunningServer.StartAsync(World(Here));
        foreach (var address in ForTokens)
            await server.GetProblemAsync(address, System.Net.HttpStatusCode.Unauthorized);
    }

    [Fact]
    public async Task TheAddressesAskedHereCoverEveryRoute()
    {
        await using var server = await RunningServer.StartAsync();
        var routes = ((IEndpointRouteBuilder)server.Host).DataSources.SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            .Select(endpoint => endpoint.RoutePattern.RawText!.TrimEnd('/')).Where(route => route.StartsWith("/api/", StringComparison.Ordinal)).Distinct();
        string[] asked =
        [
            "/api/v1/about", "/api/v1/taxa", "/api/v1/taxa/{taxon}", "/api/v1/taxa/{taxon}/presence", "/api/v1/taxa/{taxon}/arrivals", "/api/v1/taxa/{taxon}/tiles.json",
            "/api/v1/taxa/{taxon}/tiles/{tileMatrixSet}/{z:int}/{y:int}/{x:int}", "/api/v1/taxa/{taxon}/spread", "/api/v1/taxa/{taxon}/season", "/api/v1/taxa/{taxon}/change", "/api/v1/taxa/{taxon}/forecast", "/api/v1/taxa/{taxon}/fronts", "/api/v1/change", "/api/v1/effort", "/api/v1/squares/{reference}", "/api/v1/squares/{reference}/change", "/api/v1/squares/{reference}/list.html", "/api/v1/places", "/api/v1/doubts", "/api/v1/groups", "/api/v1/regions",
            "/api/v1/scheme/periods", "/api/v1/scheme/periods/restore",
            "/api/v1/exports/presence", "/api/v1/exports/effort", "/api/v1/exports/records", "/api/v1/exports/tiles", "/api/v1/editions", "/api/v1/editions/{edition}", "/api/v1/editions/{edition}/citation.cff", "/api/v1/editions/{edition}/datacite.json",
            "/api/v1/taxa/{taxon}/map.svg", "/api/v1/taxa/{taxon}/map.png", "/api/v1/taxa/{taxon}/map.pdf", "/api/v1/taxa/{taxon}/new-squares.atom", "/api/v1/taxa/{taxon}/style.json", "/api/v1/legends/{kind}",
            "/api/v1/records", "/api/v1/records/{id}", .. ForTokens.Select(route => route.Replace("recorders/1", "recorders/{recorder}", StringComparison.Ordinal).Replace("/1", "/{id}", StringComparison.Ordinal)), "/api/v1/imports/{id}/start",
            "/api/v1/imports/{id}/preview", "/api/v1/imports/{id}/retry", "/api/v1/names/{name}", "/api/v1/taxon-changes/{number:long}", "/api/v1/records/{id}/reviews", "/api/v1/reviews/{number:long}",
        ];
        // A new route must be added to the questions asked here before this list.
        Assert.Equal(asked.Order(StringComparer.Ordinal), routes.Order(StringComparer.Ordinal));
    }

    private static string World(string place) => $"""
        occurrenceID,scientificName,eventDate,gridReference,recordedBy
        s1,Inventa secreta,2005-06-01,{place},A. Invented
        s2,Inventa secreta,2012-06-05,{place},B. Invented
        o1,Inventa prima,2005-06-01,NZ2664,A. Invented
        o2,Inventa aperta,2005-06-01,NZ2664,A. Invented
        o3,Inventa occulta agg.,2006-06-01,NZ2765,A. Invented
        o4,Inventa aperta,2007-06-01,SU1234,A. Invented
        a1,Inventa occulta agg.,2008-06-01,{place},C. Invented
        """;

    private static IEnumerable<string> Addresses()
    {
        yield return "/api/v1/about";
        yield return "/api/v1/taxa";
        yield return "/api/v1/places?q=NZ2161";
        yield return "/api/v1/doubts";
        yield return "/api/v1/groups";
        yield return "/api/v1/regions";
        yield return "/api/v1/records";
        yield return "/api/v1/records?limit=2";
        yield return "/api/v1/records?status=unreviewed&from=2005-01-01&to=2012-12-31";
        // The name that a record has for good follows from its data set and occurrenceID, so that both worlds have the same.
        yield return $"/api/v1/records/{NameOf("s1")}";
        yield return $"/api/v1/records/{NameOf("o1")}";
        foreach (var address in OfExports())
            yield return address;
        foreach (var size in Sizes)
            yield return $"/api/v1/effort?group=inventas&grid={size}&from=2000/2009&to=2010/2019";
        foreach (var size in Sizes)
            yield return $"/api/v1/change?grid={size}&from=2000/2009&to=2010/2019&quality=all&format=csv";
        foreach (var address in ForTokens)
            yield return address;
        foreach (var square in Squares())
        {
            yield return $"/api/v1/squares/{square}?quality=all";
            yield return $"/api/v1/squares/{square}/change?from=2000/2009&to=2010/2019&quality=all";
            yield return $"/api/v1/squares/{square}/list.html?quality=all";
            yield return $"/api/v1/records?square={square}";
            foreach (var taxon in (string[])["secreta", "occulta-agg"])
                yield return $"/api/v1/squares/{square}?taxon={taxon}&periods=../2009,2010/..";
        }

        foreach (var address in Taxa.SelectMany(OfTaxon))
            yield return address;
    }

    /// <summary>Exports, frozen editions and the OGC interface.</summary>
    private static IEnumerable<string> OfExports()
    {
        foreach (var size in Sizes)
        {
            yield return $"/api/v1/exports/presence?grid={size}&quality=all";
            yield return $"/api/v1/exports/presence?grid={size}&quality=all&format=geojson&bbox=-1.7,54.9,-1.6,55";
            yield return $"/api/v1/exports/effort?grid={size}";
            yield return $"/api/v1/exports/tiles?grid={size}&quality=all";
            yield return $"/ogc/collections/presence/items?size={size}";
            yield return $"/ogc/collections/arrivals/items?size={size}&bbox=-1.7,54.9,-1.6,55";
            yield return $"/ogc/collections/fronts/items?size={size}";
            yield return $"/ogc/collections/effort/items?size={size}";
            yield return $"/ogc/collections/squares/items?size={size}";
        }

        foreach (var format in (string[])["csv", "csvw", "geojson", "dwca"])
            yield return $"/api/v1/exports/records?quality=all&format={format}";
        foreach (var table in (string[])["presence", "effort", "records"])
            yield return $"/api/v1/exports/{table}?count=true&grid=1km";
        yield return "/api/v1/exports/presence?taxon=secreta&grid=10km&format=csvw";
        yield return "/api/v1/editions";
        yield return "/api/v1/editions/00000000";
        yield return "/api/v1/editions/00000000/citation.cff";
        yield return "/api/v1/editions/00000000/datacite.json";
        yield return "/api/v1/taxa/secreta/presence?edition=00000000";
        foreach (var page in (string[])["", "conformance", "api", "collections", "collections/records", "collections/records/items", "collections/presence/queryables", "collections/presence/tiles", "collections/presence/tiles/WebMercatorQuad", "collections/presence/tiles/WebMercatorQuad/0/0/0"])
            yield return $"/ogc/{page}";
        yield return $"/ogc/collections/records/items/{NameOf("s1")}";
        yield return "/ogc/collections/presence/items/secreta~NZ26~2005";
        yield return "/ogc/collections/presence/items?square=NZ2161";
    }

    private static IEnumerable<string> OfTaxon(string taxon)
    {
        var of = $"/api/v1/taxa/{taxon}";
        yield return of;
        yield return $"/api/v1/records?taxon={taxon}";
        yield return $"{of}/season?quality=all";
        yield return $"/api/v1/legends/arrivals?taxon={taxon}&quality=all";
        foreach (var size in (string[])["10km", "1km"])
        {
            yield return $"{of}/map.svg?size=column&grid={size}&quality=all&periods=../2009,2010/..";
            yield return $"{of}/map.svg?size=column&grid={size}&kind=arrivals&region=England";
            yield return $"{of}/map.svg?size=column&grid={size}&kind=change&from=2000/2009&to=2010/2019&quality=all";
        }

        yield return $"{of}/map.png?size=column&grid=1km&region=England&quality=all";
        yield return $"{of}/map.pdf?size=column&grid=10km&region=England&quality=all";
        foreach (var size in Sizes)
        {
            yield return $"{of}/presence?grid={size}&periods=../2009,2010/..&quality=all";
            yield return $"{of}/presence?grid={size}&format=csv";
            yield return $"{of}/presence?grid={size}&quality=all&region=England";
            yield return $"{of}/presence?grid={size}&quality=all&bbox=-1.68,54.94,-1.66,54.96";
            yield return $"{of}/arrivals?grid={size}&quality=all";
            yield return $"{of}/spread?grid={size}";
            yield return $"{of}/change?grid={size}&from=2000/2009&to=2010/2019&quality=all";
            yield return $"{of}/forecast?grid={size}";
            yield return $"{of}/forecast?grid={size}&format=geojson";
            yield return $"{of}/fronts?grid={size}";
            yield return $"{of}/arrivals?grid={size}&model=true";
            yield return $"{of}/change?grid={size}&from=2000/2009&to=2010/2019&quality=all&format=geojson";
            yield return $"{of}/spread?grid={size}&origin=NZ26";
            yield return $"{of}/tiles.json?grid={size}";
            yield return $"{of}/style.json?kind=arrivals&grid={size}";
            yield return $"{of}/new-squares.atom?grid={size}&quality=all";
            yield return $"{of}/new-squares.atom?grid={size}&region=England";
            yield return $"{of}/tiles/BritishNationalGrid/0/0/0?grid={size}";
            yield return $"{of}/tiles/WebMercatorQuad/0/0/0?grid={size}";
            yield return $"{of}/tiles/WebMercatorQuad/0/0/0?grid={size}&quality=all&layers=presence,arrivals,fronts,forecast,effort";
            yield return $"{of}/tiles.json?grid={size}&layers=arrivals,effort";
        }
    }

    private static string NameOf(string occurrenceId)
    {
        var key = System.IO.Hashing.XxHash128.HashToUInt128(System.Runtime.InteropServices.MemoryMarshal.AsBytes(occurrenceId.AsSpan()), seed: 1);
        return $"1-{key:x32}";
    }

    /// <summary>Every square that either place lies in, and their neighbours.</summary>
    private static IEnumerable<string> Squares() =>
        ["NZ", "NZ26", "NZ25", "NZ26SW", "NZ26NE", "NZ26NW", "NZ26A", "NZ26B", "NZ26Y", "NZ26Z", "NZ2161", "NZ2162", "NZ2867", "NZ2866", Here, There, "NZ212612", "NZ289677"];

    private static async Task<string> AskAsync(RunningServer server, string address)
    {
        using var answer = await server.Client.GetAsync(address);
        var bytes = await answer.Content.ReadAsByteArrayAsync();
        // The port and the mark by which a request is found in the log are chance, and no part of what is told.
        var text = $"{answer.StatusCode} {answer.Headers.ETag} {Encoding.Latin1.GetString(bytes)}".Replace(server.Client.BaseAddress!.Authority, "the server", StringComparison.Ordinal);
        return TraceId().Replace(text, "");
    }

    [System.Text.RegularExpressions.GeneratedRegex("\"traceId\":\"[^\"]*\"")]
    private static partial System.Text.RegularExpressions.Regex TraceId();
}
