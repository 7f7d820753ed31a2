using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The slider through the years of arrival.</summary>
public class ArrivalTests(DemoSite site) : IAsyncLifetime
{
    /// <summary>The lines of the front need the arrival model.</summary>
    public async ValueTask InitializeAsync() => await site.AskFirstAsync("/api/v1/taxa/cindrava-adventa/fronts");

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    /// <summary>A window of someone who asked for less motion: the years stand still until the next is asked for.</summary>
    private static BrowserNewContextOptions Calm => new() { ViewportSize = new() { Width = 1400, Height = 900 }, ReducedMotion = ReducedMotion.Reduce };

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
    public Task FromTheEndTheYearsBeginAtTheFirst() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival");
            await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Next year" }).ClickAsync();
            var first = await visitor.Years.GetAttributeAsync("min");
            await visitor.SeesInAddressAsync($"year={first}");
        },
        Calm);

    [Fact]
    public Task WhoWantsLessMotionStepsThroughTheYearsByHand() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival&year=2008");
            await Expect(visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Play" })).ToHaveCountAsync(0);
            await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Next year" }).ClickAsync();
            await Expect(visitor.Page.Locator("#years output")).ToHaveTextAsync("2009");
            await visitor.Page.WaitForTimeoutAsync(1000);
            await Expect(visitor.Page.Locator("#years output")).ToHaveTextAsync("2009");
        },
        Calm);

    [Fact]
    public Task ArrowsTellLocalSpeedAndStandInTheAddress() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival");
        var over = visitor.Page.GetByRole(AriaRole.Region, new() { Name = "Over the squares" });
        await over.GetByLabel("Arrows: local speed and direction").CheckAsync();
        await visitor.SeesInAddressAsync("over=arrows");
        await Expect(over).ToContainTextAsync(new Regex("[0-9,]+ squares with a local speed, half of them up to [0-9.]+ km a year|Not measurable"), new() { Timeout = 180_000 });
        await Axe.AssertAccessibleAsync(visitor.Page, "arrows over the squares");
    });

    [Fact]
    public Task SquaresFarAheadOfTheFrontAreListedAndLeadToTheirSquare() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=cindrava-collina&panel=spread");
        var first = visitor.Details.Locator(".jumps tbody button").First;
        var square = await first.TextContentAsync();
        await visitor.Details.GetByRole(AriaRole.Button, new() { Name = "Show on the map of arrivals" }).ClickAsync();
        await Expect(visitor.Page.GetByRole(AriaRole.Region, new() { Name = "Over the squares" })).ToContainTextAsync("Far ahead of the front");
        await first.ClickAsync();
        await Expect(visitor.Page.Locator("#leaf-square .reference")).ToHaveTextAsync(square!);
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
