using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The species itself: when it is about, on which plants, how to tell it, and what it has to do with an aggregate.</summary>
public class SpeciesLeafTests(DemoSite site)
{
    private const string Twin = "#taxon=cindrava-gemella&panel=species";

    [Fact]
    public Task TheSeasonIsAChartWithItsFiguresBeside() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Twin);
        var chart = visitor.Details.GetByRole(AriaRole.Img, new() { NameRegex = new("Records by week: .*worker in weeks [0-9]+") });
        await Expect(chart.Locator(".bar rect").First).ToBeVisibleAsync();
        await Expect(visitor.Details.GetByRole(AriaRole.Rowheader, new() { Name = "worker" }).First).ToBeVisibleAsync();
        await Expect(visitor.Details).ToContainTextAsync(new Regex("[0-9,]+ records of [0-9,]+ name a plant"));
        await visitor.Details.GetByText("Every week as a table").ClickAsync();
        await Expect(visitor.Details.GetByRole(AriaRole.Columnheader, new() { Name = "queen" }).First).ToBeVisibleAsync();
        await Axe.AssertAccessibleAsync(visitor.Page, "the leaf of a species");
    });

    [Fact]
    public Task WhatItIsTakenForIsOneStepAway() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=cindrava-gemella");
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Season, plants and how to tell it" }).ClickAsync();
        await visitor.SeesInAddressAsync("panel=species");
        await Expect(visitor.Details).ToContainTextAsync("Easily taken for lesser twin ember-wing");
        await Expect(visitor.Details.Locator(".tell")).ToContainTextAsync("second wing cell with a blunt angle");
        await visitor.Details.GetByRole(AriaRole.Button, new() { Name = "lesser twin ember-wing" }).ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("lesser twin ember-wing");
    });

    [Fact]
    public Task AnAggregateAndItsMembersLeadToOneAnother() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=cindrava-gemella");
        var head = visitor.Page.Locator("#species");
        await Expect(head).ToContainTextAsync("Records that name only the aggregate are on its map and not on this one.");
        await head.GetByRole(AriaRole.Button, new() { Name = "twin ember-wings" }).ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("twin ember-wings");
        await Expect(head).ToContainTextAsync("are on no member’s map");
        await head.GetByRole(AriaRole.Button, new() { Name = "lesser twin ember-wing" }).ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("lesser twin ember-wing");
    });

    [Fact]
    public Task ALinkToTheViewIsCopied() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&grid=5km");
        await visitor.Page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Copy a link to this view" }).ClickAsync();
        await Expect(visitor.Page.Locator(".permanent")).ToContainTextAsync("Copied.");
        Assert.Equal(visitor.Page.Url, await visitor.Page.EvaluateAsync<string>("() => navigator.clipboard.readText()"));
    });

    [Fact]
    public Task TheLegendCountsSquaresAndRecordsOfEachPeriod() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=cindrava-gemella");
        await visitor.Legend.GetByText("Squares and records in each period").ClickAsync();
        await Expect(visitor.Legend.Locator("tbody tr")).ToHaveCountAsync(3);
        await Expect(visitor.Legend.Locator("tbody tr").First).ToHaveTextAsync(new Regex("^since 2010[0-9,]+"));
    });

    [Theory]
    [InlineData("species", ColorScheme.Light)]
    [InlineData("species", ColorScheme.Dark)]
    [InlineData("spread", ColorScheme.Light)]
    [InlineData("change", ColorScheme.Dark)]
    public Task OnASmallPhoneTheLeavesFitAndAreAccessible(string leaf, ColorScheme scheme) => site.VisitAsync(
        async visitor =>
        {
            foreach (var measured in new[] { "spread", "change?from=../1999&to=2010/.." })
                await site.AskFirstAsync($"/api/v1/taxa/cindrava-gemella/{measured}");
            await visitor.OpenAsync($"#taxon=cindrava-gemella&panel={leaf}");
            await Expect(visitor.Details.GetByText("What is this?")).ToBeVisibleAsync();
            Assert.Equal(360, await visitor.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
            await Overlaps.AssertNoneAsync(visitor.Page, leaf);
            await Axe.AssertAccessibleAsync(visitor.Page, leaf);
        },
        new() { ViewportSize = new() { Width = 360, Height = 740 }, HasTouch = true, IsMobile = true, ColorScheme = scheme });
}
