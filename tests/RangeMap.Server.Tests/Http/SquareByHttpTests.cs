using System.Net;

namespace RangeMap.Server.Tests.Http;

/// <summary>What a naturalist is told of a square: what is new, what may be missing, how well it is known.</summary>
public sealed class SquareByHttpTests : IAsyncLifetime
{
    private RunningServer _server = null!;

    /// <summary>Tertia is found in four squares round NZ26, which was visited once; secreta, which is sensitive, in the same.</summary>
    private static string Table => "occurrenceID,scientificName,eventDate,gridReference,recordedBy\n" + string.Join('\n', Rows().Select((row, i) => $"r{i},Inventa {row.Name},{row.Day},{row.Place},A. Invented"));

    private static IEnumerable<(string Name, string Day, string Place)> Rows()
    {
        yield return ("aperta", "2001-06-01", "NZ2563");
        yield return ("prima", "2024-06-01", "NZ2563");
        foreach (var place in (string[])["NZ2573", "NZ2553", "NZ1563", "NZ3563"])
        {
            foreach (var day in (string[])["2020-06-01", "2021-06-08", "2022-06-08"])
            {
                yield return ("tertia", day, place);
                yield return ("secreta", day, place);
            }
        }
    }

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => _server = await RunningServer.StartAsync(Table);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _server.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task WhatIsNewMissingAndVisitedIsTold()
    {
        var page = await _server.GetJsonAsync("/api/v1/squares/NZ26");
        Assert.Equal((2020, 2015, 2024), (page.Int("newSince"), page.Int("since"), page.Int("until")));
        // Its aggregate is as new as prima.
        Assert.Equal(["gemella-agg", "prima"], page["newLately"]!.AsArray().Select(id => (string)id!));
        var years = page["visitsByYear"]!.AsArray();
        Assert.Equal((2001, 1, 2024, 1, 24), (years[0]!.Int("year"), years[0]!.Int("visits"), years[^1]!.Int("year"), years[^1]!.Int("visits"), years.Count));
        // d = (12 - 4 + 0.5) / (12 - 4 + 2) = 0.85; 5/6 · 0.15 / (5/6 · 0.15 + 1/6).
        var tertia = Assert.Single(page["expected"]!.AsArray())!;
        Assert.Equal(("tertia", 4, 4, 1, 0.43), (tertia.Text("id"), tertia.Int("neighboursWith"), tertia.Int("neighboursSearched"), tertia.Int("visits"), (double)tertia["probability"]!));
        Assert.Equal("Found since 2015 in 4 of the 4 squares round it that were searched; the one visit here missed it, and where it lives nearly every visit notes it.", tertia.Text("why"));
    }

    [Fact]
    public async Task ASensitiveSpeciesIsNeverExpected()
    {
        foreach (var square in (string[])["NZ26", "NZ27", "NZ25", "NZ24"])
            Assert.DoesNotContain("secreta", (await _server.GetJsonAsync($"/api/v1/squares/{square}"))["expected"]!.AsArray().Select(species => species!.Text("id")));
        Assert.DoesNotContain("secreta", await _server.GetAsync("/api/v1/squares/NZ27/list.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TooFewVisitsHaveAReasonInPlaceOfAnEstimate()
    {
        var group = (await _server.GetJsonAsync("/api/v1/squares/NZ26"))["completeness"]!.AsArray().Single(known => (string?)known!["group"] == "inventas")!;
        Assert.Equal((1, 1, "Not enough visits: 1 of at least 5."), (group.Int("visits"), group.Int("species"), group.Text("refused")));
        Assert.Null(group["estimate"]);
        Assert.False((bool)group["wellSurveyed"]!);
    }

    [Fact]
    public async Task ARecordOfAMemberCountsOnceThoughItsAggregateIsListedToo()
    {
        var page = await _server.GetJsonAsync("/api/v1/squares/NZ26");
        Assert.Equal(2, page.Int("records"));
        Assert.Equal(["gemella-agg", "occulta-agg"], page["taxa"]!.AsArray().Where(taxon => (bool)taxon!["standsForOthers"]!).Select(taxon => taxon!.Text("id")).Order());
    }

    [Fact]
    public async Task NeighboursAreToldWithTheirNumberOfSpecies()
    {
        var page = await _server.GetJsonAsync("/api/v1/squares/NZ26");
        Assert.Equal(page["neighbours"]!.AsArray().Select(name => (string)name!), page["around"]!.AsArray().Select(around => around!.Text("square")));
        Assert.Equal(2, page["around"]!.AsArray().Single(around => around!.Text("square") == "NZ27")!.Int("species"));
    }

    [Fact]
    public async Task ASquareWithoutARecordIsAnsweredToo()
    {
        var page = await _server.GetJsonAsync("/api/v1/squares/SV80");
        Assert.Empty(page["expected"]!.AsArray());
        Assert.Empty(page["visitsByYear"]!.AsArray());
        await using var empty = await RunningServer.StartAsync();
        Assert.Equal(0, (await empty.GetJsonAsync("/api/v1/squares/NZ26")).Int("until"));
        Assert.Contains("None.", await empty.GetAsync("/api/v1/squares/NZ26/list.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task BetweenTwoPeriodsASpeciesIsGainedOrLostOnlyWhereSomebodyLookedInBoth()
    {
        var change = await _server.GetJsonAsync("/api/v1/squares/NZ26/change?from=2000/2009&to=2020/2029");
        // Aperta is of another group than prima where the list has groups: the one visit of each period is to its own.
        Assert.Equal(["aperta", "prima"], change["taxa"]!.AsArray().Select(taxon => taxon!.Text("id")));
        foreach (var taxon in change["taxa"]!.AsArray())
        {
            var of = await _server.GetJsonAsync($"/api/v1/taxa/{taxon!.Text("id")}/change?grid=10km&from=2000/2009&to=2020/2029&format=geojson");
            var square = of["features"]!.AsArray().Single(feature => feature!["properties"]!.Text("square") == "NZ26")!;
            Assert.Equal(square["properties"]!.Text("change"), taxon!.Text("change"));
        }
    }

    [Fact]
    public async Task WhereNobodyLookedAgainNothingIsLost()
    {
        var change = await _server.GetJsonAsync("/api/v1/squares/NZ26/change?from=2000/2009&to=2026/2029");
        Assert.Equal("not-surveyed-after", Assert.Single(change["taxa"]!.AsArray())!.Text("change"));
        Assert.All(change["visits"]!.AsArray(), visits => Assert.Equal(0, visits!.Int("after")));
        Assert.Equal(1, change["visits"]!.AsArray().Sum(visits => visits!.Int("before")));
    }

    [Fact]
    public async Task TheFieldListNeedsNothingFromElsewhere()
    {
        using var answer = await _server.Client.GetAsync("/api/v1/squares/NZ26/list.html");
        Assert.Equal((HttpStatusCode.OK, "text/html"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        var page = await answer.Content.ReadAsStringAsync();
        Assert.Contains("Inventa prima", page, StringComparison.Ordinal);
        Assert.Contains("<td>2001</td>", page, StringComparison.Ordinal);
        Assert.Contains("A list is no permission", page, StringComparison.Ordinal);
        Assert.Contains("class=\"box\"", page, StringComparison.Ordinal);
        foreach (var outside in (string[])["<script", "http", "<link", "<img", "@import"])
            Assert.DoesNotContain(outside, page, StringComparison.OrdinalIgnoreCase);
    }
}
