using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>A phone, and a person who likes it dark.</summary>
public class DeviceTests(DemoSite site)
{
    private static BrowserNewContextOptions Phone => new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true, IsMobile = true };

    [Theory]
    [InlineData("")]
    [InlineData(Visitor.Arriving)]
    [InlineData($"{Visitor.Arriving}&mode=arrival&year=2014&panel=spread")]
    [InlineData($"{Visitor.Arriving}&square=TG30")]
    public Task NothingIsWiderThanAPhone(string view) => site.VisitAsync(
        async visitor =>
        {
            // The lines of the front need the arrival model.
            await site.AskFirstAsync("/api/v1/taxa/cindrava-adventa/fronts");
            await visitor.OpenAsync(view);
            Assert.Equal(390, await visitor.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
            await Expect(visitor.Page.Locator("#map")).ToBeInViewportAsync();
        },
        Phone);

    [Fact]
    public Task ATapOnASquareTellsWhatSupportsIt() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync($"{Visitor.Arriving}&at=600000,300000,5");
            var (x, y) = await PaintedSquares.AnyPlaceAsync(visitor.Page);
            await visitor.Page.Touchscreen.TapAsync(x, y);
            await Expect(visitor.Details).ToContainTextAsync("What supports it");
        },
        Phone);

    [Fact]
    public Task InTheDarkThePageIsDarkAndTheSquaresAreLight() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync(Visitor.Arriving);
            var paper = await visitor.Page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).backgroundColor");
            Assert.Equal("rgb(18, 25, 28)", paper);
            Assert.True(await PaintedSquares.CountAsync(visitor.Page) > 500);
        },
        new() { ViewportSize = new() { Width = 1400, Height = 900 }, ColorScheme = ColorScheme.Dark });
}
