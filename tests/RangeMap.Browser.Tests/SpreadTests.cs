using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>How fast the range moves.</summary>
public partial class SpreadTests(DemoSite site)
{
    [Fact]
    public Task ASpeedStandsWithItsIntervalAndItsSquares() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        await visitor.Page.GetByRole(AriaRole.Tab, new() { Name = "Spread" }).ClickAsync();
        await Expect(visitor.Details.Locator(".opening")).ToHaveTextAsync(SpeedInWords());
        await visitor.Details.GetByText("The same in words").ClickAsync();
        await Expect(visitor.Details.Locator(".estimators dd").First).ToHaveTextAsync(EstimateInWords());
    });

    [Fact]
    public Task TheChartShowsEverySquareAndTheFront() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&mode=arrival&panel=spread");
        await Expect(visitor.Details.Locator(".advance .front")).ToHaveCountAsync(1);
        await Expect(visitor.Details.Locator(".advance .dot circle")).ToHaveCountAsync(await visitor.SquaresToldAsync());
    });

    [Fact]
    public Task LabelsOfTheSpeedsDoNotRunIntoTheirNumbers() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&panel=spread");
        await Expect(visitor.Details.Locator(".intervals")).ToBeVisibleAsync();
        var overlaps = await visitor.Page.EvaluateAsync<int>("""
            () => {
              const boxes = [...document.querySelectorAll('.intervals text')].map((t) => t.getBoundingClientRect()).filter((b) => b.width > 0);
              return boxes.filter((a, i) => boxes.some((b, j) => i < j && a.left < b.right && b.left < a.right && a.top + 3 < b.bottom && b.top + 3 < a.bottom)).length;
            }
            """);
        Assert.Equal(0, overlaps);
    });

    [Fact]
    public Task WhereNothingSpreadsThePageSaysSo() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=tindorqua-secreta&panel=spread");
        await Expect(visitor.Details.Locator(".opening")).Not.ToBeEmptyAsync();
        await Expect(visitor.Details).Not.ToContainTextAsync("NaN");
        await Expect(visitor.Details).Not.ToContainTextAsync("undefined");
    });

    [GeneratedRegex(@"advances about [\d.]+ km a year \(95 % interval [\d.]+ to [\d.]+; [\d,]+ squares")]
    private static partial Regex SpeedInWords();

    [GeneratedRegex(@"^[\d.]+ km a year \([\d.]+ to [\d.]+; [\d,]+ squares\)\.")]
    private static partial Regex EstimateInWords();
}
