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
}
