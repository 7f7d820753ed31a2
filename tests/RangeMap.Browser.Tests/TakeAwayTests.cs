using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>What can be taken away of a species: print, download, follow, cite, style.</summary>
public class TakeAwayTests(DemoSite site)
{
    [Fact]
    public Task EveryLinkUnderTakeAwayGivesWhatItSays() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        var fold = await visitor.OpenTakeAwayAsync();
        await Expect(fold).ToContainTextAsync(new Regex("[0-9,]+ rows, about [0-9.,]+ (kB|MB)"));
        await Expect(fold).ToContainTextAsync("live state");
        foreach (var (name, mediaType) in new[]
        {
            ("SVG", "image/svg+xml"), ("PNG", "image/png"), ("PDF", "application/pdf"), ("GeoPackage", "application/geopackage+sqlite3"), ("Parquet", "application/vnd.apache.parquet"),
            ("CSV", "text/csv"), ("GeoJSON", "application/geo+json"), ("Feed of new squares", "application/atom+xml"), ("style.json", "application/json"),
        })
        {
            var href = await fold.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).First.GetAttributeAsync("href");
            var answer = await visitor.Page.APIRequest.GetAsync(visitor.AddressOf(href!));
            Assert.True(answer.Ok, $"{name}: {answer.Status}");
            Assert.StartsWith(mediaType, answer.Headers["content-type"], StringComparison.Ordinal);
        }

        await Axe.AssertAccessibleAsync(visitor.Page, "take away");
    });

    [Fact]
    public Task ThePrintedMapIsTheKindOfMapThatIsShown() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival");
        var fold = await visitor.OpenTakeAwayAsync();
        var svg = fold.GetByRole(AriaRole.Link, new() { Name = "SVG", Exact = true });
        await Expect(svg).ToHaveAttributeAsync("href", new Regex("kind=arrivals"));
        await visitor.Page.GetByLabel("Presence", new() { Exact = true }).CheckAsync();
        await Expect(svg).ToHaveAttributeAsync("href", new Regex("periods="));
    });

    [Fact]
    public Task OnASmallPhoneItFits() => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync(Visitor.Arriving);
            await Expect(await visitor.OpenTakeAwayAsync()).ToContainTextAsync("style.json");
            Assert.Equal(360, await visitor.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
            await Axe.AssertAccessibleAsync(visitor.Page, "take away on a small phone");
        },
        new() { ViewportSize = new() { Width = 360, Height = 740 }, HasTouch = true, IsMobile = true });
}
