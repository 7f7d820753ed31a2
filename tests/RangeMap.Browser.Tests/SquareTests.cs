using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>A square, and what supports it.</summary>
public class SquareTests(DemoSite site)
{
    [Fact]
    public Task AClickOnASquareTellsWhatSupportsIt() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&at=550000,300000,4.5");
        var (x, y) = await PaintedSquares.AnyPlaceAsync(visitor.Page);
        await visitor.Page.Mouse.ClickAsync(x, y);
        await Expect(visitor.Details.Locator(".reference")).ToBeVisibleAsync();
        var square = await visitor.Details.Locator(".reference").TextContentAsync();
        await visitor.SeesInAddressAsync($"square={square}");
        await Expect(visitor.Details).ToContainTextAsync("What supports it");
        var records = await visitor.Details.Locator("table").First.Locator("tbody td:nth-child(2)").AllTextContentsAsync();
        Assert.Equal(3, records.Count);
        Assert.Contains(records, count => count != "0");
        await Expect(visitor.Details.Locator("tr.current")).ToContainTextAsync("harbour ember-wing");
    });

    [Fact]
    public Task ASquareIsFoundByItsReference() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Page.GetByLabel("Grid reference of a square").FillAsync("tl 45");
        await visitor.Page.Keyboard.PressAsync("Enter");
        await Expect(visitor.Details.Locator(".reference")).ToHaveTextAsync("TL45");
        await Expect(visitor.Details).ToContainTextAsync("Species found here");
        await visitor.Details.GetByRole(AriaRole.Button, new() { Name = "TL46" }).ClickAsync();
        await Expect(visitor.Details.Locator(".reference")).ToHaveTextAsync("TL46");
    });

    [Fact]
    public Task WhatIsNoSquareIsToldInWords() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Page.GetByLabel("Grid reference of a square").FillAsync("under the oak");
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Show" }).ClickAsync();
        await Expect(visitor.Details.GetByRole(AriaRole.Alert)).ToContainTextAsync("Write it like TL45");
    });

    [Fact]
    public Task ASpeciesOfTheSquareOpensItsMap() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#square=TL45");
        var species = visitor.Details.Locator("tbody button.link").First;
        var name = await species.TextContentAsync();
        await species.ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync(name!);
        await Expect(visitor.Details).ToContainTextAsync("What supports it");
    });

    [Fact]
    public Task TheLeafTellsWhatIsMissingHowWellTheSquareIsKnownAndWhatLiesRoundIt() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#square=TL45");
        await Expect(visitor.Details.GetByRole(AriaRole.Heading, new() { Name = "Missing, but expected" })).ToBeVisibleAsync();
        await Expect(visitor.Details).ToContainTextAsync(new Regex("Glimmers: (well known|known in part|hardly known); [0-9]+ species on [0-9]+ visits?"));
        await Expect(visitor.Details.GetByRole(AriaRole.Img, new() { NameRegex = new("Visits by year") })).ToBeVisibleAsync();
        await Expect(visitor.Details.Locator(".around button")).ToHaveCountAsync(8);
        await Axe.AssertAccessibleAsync(visitor.Page, "a square");
    });

    [Fact]
    public Task AnExpectedSpeciesSaysWhyAndOpensItsMap() => site.VisitAsync(async visitor =>
    {
        var square = await SquareWithAsync(visitor, "expected");
        await visitor.OpenAsync($"#square={square}");
        var first = visitor.Details.Locator(".expected tbody tr").First;
        await Expect(first).ToContainTextAsync("squares round it that were searched");
        await Expect(first).ToContainTextAsync("%");
        var name = await first.Locator("button").TextContentAsync();
        await first.Locator("button").ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync(name!);
    });

    [Fact]
    public Task ASpeciesThatIsNewIsMarkedInItsRow() => site.VisitAsync(async visitor =>
    {
        var square = await SquareWithAsync(visitor, "newLately");
        await visitor.OpenAsync($"#square={square}");
        await Expect(visitor.Details.Locator(".found .fresh").First).ToHaveTextAsync("new");
        await Expect(visitor.Details).ToContainTextAsync(new Regex("New since 20[0-9]{2}:|so all of it is new"));
    });

    [Fact]
    public Task TheFieldListIsReadWithoutANetworkOnceItIsOpen() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#square=TL45");
        var opening = visitor.Page.Context.WaitForPageAsync();
        await visitor.Details.GetByRole(AriaRole.Link, new() { Name = "field list to print" }).ClickAsync();
        var list = await opening;
        await list.WaitForLoadStateAsync();
        await list.Context.SetOfflineAsync(true);
        await Expect(list.GetByRole(AriaRole.Heading, new() { Name = "Field list for TL45" })).ToBeVisibleAsync();
        await Expect(list.GetByText("Invented data")).ToBeVisibleAsync();
        await Expect(list.GetByText("A list is no permission")).ToBeVisibleAsync();
        Assert.True(await list.Locator(".box").CountAsync() > 10);
        await Axe.AssertAccessibleAsync(list, "the field list");
    });

    [Fact]
    public Task ATownIsChosenByKeyboard() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#grid=1km");
        await visitor.Page.GetByLabel("Grid reference of a square").PressSequentiallyAsync("cambrid");
        await Expect(visitor.Found.First).ToContainTextAsync("Cambridge");
        await visitor.Page.Keyboard.PressAsync("ArrowDown");
        await visitor.Page.Keyboard.PressAsync("Enter");
        // The size of the map's squares, within the town's 10 km square.
        await Expect(visitor.Details.Locator(".reference")).ToHaveTextAsync(new Regex("^TL4[0-9]5[0-9]$"));
    });

    [Fact]
    public Task TheDeviceTellsWhereItIsOnlyWhenAsked() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync("#grid=10km");
            await visitor.Page.Context.GrantPermissionsAsync(["geolocation"]);
            await visitor.Page.Context.SetGeolocationAsync(new() { Latitude = 52.2053f, Longitude = 0.1218f });
            await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Where I am" }).ClickAsync();
            await Expect(visitor.Details.Locator(".reference")).ToHaveTextAsync("TL45");
        });

    [Fact]
    public Task ADeviceThatRefusesIsToldInWords() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Page.Context.ClearPermissionsAsync();
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Where I am" }).ClickAsync();
        await Expect(visitor.Details.GetByRole(AriaRole.Alert)).ToContainTextAsync("may not tell this page where it is");
    });

    [Fact]
    public Task OnASmallPhoneTheLeafOfASquareFitsAndIsAccessible() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync($"{Visitor.Arriving}&square={await SquareWithAsync(visitor, "expected")}");
            await Expect(visitor.Details.GetByRole(AriaRole.Heading, new() { Name = "Missing, but expected" })).ToBeVisibleAsync();
            Assert.Equal(360, await visitor.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
            await Axe.AssertAccessibleAsync(visitor.Page, "a square on a small phone");
        },
        new() { ViewportSize = new() { Width = 360, Height = 740 }, HasTouch = true, IsMobile = true });

    /// <summary>A square of the demo whose page has something in a list; near the middle of England, where much is recorded.</summary>
    private static async Task<string> SquareWithAsync(Visitor visitor, string list)
    {
        foreach (var square in from north in Enumerable.Range(0, 10) from east in Enumerable.Range(0, 10) select $"SP{east}{north}")
        {
            var answer = await visitor.Page.APIRequest.GetAsync(visitor.AddressOf($"/api/v1/squares/{square}"));
            var found = (await answer.JsonAsync())!.Value.GetProperty(list);
            if (found.GetArrayLength() > 0)
                return square;
        }

        Assert.Fail($"No square has anything in '{list}'.");
        return "";
    }
}
