using System.Globalization;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The slider through the years of arrival.</summary>
public class ArrivalTests(DemoSite site)
{
    [Fact]
    public Task SquaresGrowWithTheYears() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival&year=2010");
        var early = await PaintedSquares.CountAsync(visitor.Page);
        await SlideToAsync(visitor, 2016);
        var middle = await PaintedSquares.CountAsync(visitor.Page);
        await visitor.Years.PressAsync("End");
        var late = await PaintedSquares.CountAsync(visitor.Page);
        Assert.True(0 < early && early < middle && middle < late, string.Create(CultureInfo.InvariantCulture, $"{early}, {middle}, {late} pixels"));
    });

    [Fact]
    public Task TheSliderTellsHowManySquaresThereAre() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival");
        var all = await visitor.SquaresToldAsync();
        await Expect(visitor.Page.Locator("#years .readout")).ToContainTextAsync(string.Create(CultureInfo.InvariantCulture, $"{all:N0} squares so far"));
        await visitor.Years.PressAsync("Home");
        var first = await visitor.Page.Locator("#years output").TextContentAsync();
        Assert.Equal(first, await visitor.Years.GetAttributeAsync("min"));
    });

    [Fact]
    public Task PlayMovesTheYearsAndPauseHoldsThem() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival&year=2008");
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await Expect(visitor.Page.Locator("#years output")).Not.ToHaveTextAsync("2008");
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        var held = await visitor.Page.Locator("#years output").TextContentAsync();
        await visitor.Page.WaitForTimeoutAsync(1000);
        await Expect(visitor.Page.Locator("#years output")).ToHaveTextAsync(held!);
    });

    [Fact]
    public Task PlayFromTheEndBeginsAtTheFirstYear() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival");
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        var first = await visitor.Years.GetAttributeAsync("min");
        await visitor.SeesInAddressAsync($"year={first}");
    });

    [Fact]
    public Task PresenceHasNoSlider() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        await Expect(visitor.Years).ToBeHiddenAsync();
        await visitor.Page.GetByLabel("Arrival", new() { Exact = true }).CheckAsync();
        await Expect(visitor.Years).ToBeVisibleAsync();
    });

    private static async Task SlideToAsync(Visitor visitor, int year)
    {
        await visitor.Years.FocusAsync();
        while (await visitor.Page.Locator("#years output").TextContentAsync() != year.ToString(CultureInfo.InvariantCulture))
            await visitor.Page.Keyboard.PressAsync("ArrowRight");
    }
}
