using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>What became of a range between two periods: squares on the map, the finding in words, all species beside each other.</summary>
public class ChangeTests(DemoSite site)
{
    private const string Retreating = "#taxon=ostraphyx-nivalis&periods=1990/1999,2015/2024&mode=change&panel=change";

    [Fact]
    public Task TheMapTellsGainedLostAndUnknownSquaresApart() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Retreating);
        var legend = visitor.Page.Locator("#legend");
        await Expect(legend.GetByText("Lost: found before")).ToBeVisibleAsync();
        await Expect(legend.GetByText("nobody has looked since")).ToBeVisibleAsync();
        await Expect(legend.Locator(".key li")).ToHaveCountAsync(5);
        Assert.True(await PaintedSquares.CountAsync(visitor.Page) > 0);
    });

    [Fact]
    public Task TheFindingIsSaidInWordsWithTheEffortAndEveryMeasure() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Retreating);
        var leaf = visitor.Page.Locator("#leaf-change");
        await Expect(leaf.Locator(".opening")).ToContainTextAsync("southern margin drew back");
        await leaf.GetByText("The figures", new() { Exact = true }).ClickAsync();
        await Expect(leaf.GetByRole(AriaRole.Heading, new() { Name = "Effort" })).ToBeVisibleAsync();
        await leaf.GetByText("The same in words").ClickAsync();
        await Expect(leaf.Locator(".estimators")).ToContainTextAsync("Southern margin");
    });

    [Fact]
    public Task AllSpeciesCanBeSortedAndOneChosenFromTheTable() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Retreating);
        var leaf = visitor.Page.Locator("#leaf-change");
        await leaf.GetByText("All species between these periods").ClickAsync();
        await Expect(leaf.GetByLabel("Measure of change")).ToBeVisibleAsync();
        await leaf.GetByRole(AriaRole.Button, new() { Name = "Species", Exact = true }).ClickAsync();
        var first = leaf.Locator("details tbody tr th button").First;
        await Expect(first).ToBeVisibleAsync();
        await first.ClickAsync();
        await Expect(visitor.Heading).Not.ToHaveTextAsync("snow sheenwing");
    });

    [Fact]
    public Task TheMapOfVisitsTellsHowOftenSquaresWereVisitedAndWhereNobodyCameBack() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Retreating);
        await visitor.Page.GetByLabel("Visits", new() { Exact = true }).CheckAsync();
        var legend = visitor.Page.Locator("#legend");
        await Expect(legend.GetByRole(AriaRole.Heading)).ToContainTextAsync("Visits for glimmers");
        await Expect(legend.Locator(".key li")).ToHaveCountAsync(6);
        await Expect(legend.GetByText("With a dot: well surveyed")).ToBeVisibleAsync();
        await Expect(legend.GetByText("not since")).ToBeVisibleAsync();
        Assert.True(await PaintedSquares.CountAsync(visitor.Page) > 0);
    });

    [Fact]
    public Task OnePeriodIsNotEnoughAndThatIsSaid() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=ostraphyx-nivalis&periods=../..&mode=change&panel=change");
        await Expect(visitor.Page.Locator("#leaf-change")).ToContainTextAsync("needs two periods");
        await Expect(visitor.Page.Locator("#legend")).ToContainTextAsync("needs two periods");
    });
}
