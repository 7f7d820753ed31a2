using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>What the map shows: squares, periods, trust.</summary>
public class MapChoiceTests(DemoSite site)
{
    [Fact]
    public Task FinerSquaresAreMoreInNumber() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&at=600000,300000,5");
        var coarse = await visitor.SquaresToldAsync();
        await visitor.Page.GetByLabel("2 km", new() { Exact = true }).CheckAsync();
        await visitor.SeesInAddressAsync("grid=2km");
        Assert.True(await visitor.SquaresToldAsync() > coarse);
        Assert.True(await PaintedSquares.CountAsync(visitor.Page) > 0);
    });

    [Fact]
    public Task TheSquaresOfTheLegendAreThoseOfTheTable() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        var told = await visitor.SquaresToldAsync();
        var fold = await visitor.OpenTakeAwayAsync();
        var link = await fold.GetByText("The squares of the map by period").GetByRole(AriaRole.Link, new() { Name = "CSV" }).GetAttributeAsync("href");
        var table = await visitor.Page.APIRequest.GetAsync(new Uri(site.Address, link!).AbsoluteUri);
        Assert.True(table.Ok);
        var rows = (await table.TextAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1);
        Assert.Equal(told, rows.Select(row => row.Split(',')[0]).Distinct().Count());
    });

    [Fact]
    public Task EveryFileOfferedExists() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        await Expect(await visitor.OpenTakeAwayAsync()).ToContainTextAsync("style.json");
        var links = await visitor.Page.Locator("a[download]").AllAsync();
        Assert.NotEmpty(links);
        foreach (var link in links)
            Assert.True((await visitor.Page.APIRequest.GetAsync(new Uri(site.Address, await link.GetAttributeAsync("href")).AbsoluteUri)).Ok);
    });

    [Fact]
    public Task ConfirmedRecordsMakeNoMoreSquaresThanAll() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        var usable = await visitor.SquaresToldAsync();
        var confirmed = await ChooseAsync("Confirmed");
        var all = await ChooseAsync("All");
        Assert.InRange(confirmed, 1, usable - 1);
        Assert.True(all >= usable);

        async Task<int> ChooseAsync(string quality)
        {
            await visitor.Page.GetByLabel(quality, new() { Exact = true }).CheckAsync();
            return await visitor.SquaresToldAsync();
        }
    });

    [Fact]
    public Task AReadySetOfPeriodsChangesTheLegend() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        await Expect(visitor.Key).ToHaveCountAsync(3);
        await visitor.Page.GetByLabel("Periods").SelectOptionAsync("Every five years from 2005");
        await Expect(visitor.Key).ToHaveCountAsync(5);
        await Expect(visitor.Key.First).ToContainTextAsync("since 2020");
    });

    [Fact]
    public Task PeriodsOfOnesOwnAreRead() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        await visitor.Page.GetByLabel("Periods").SelectOptionAsync("own");
        var text = visitor.Page.GetByLabel("From/to");
        await text.FillAsync("last summer");
        await text.PressAsync("Enter");
        await Expect(visitor.Page.Locator("#period-fault")).ToContainTextAsync("is not a period. Write 2000/2009");
        await text.FillAsync("../2014, 2015/..");
        await text.PressAsync("Enter");
        await Expect(visitor.Page.Locator("#period-fault")).ToBeEmptyAsync();
        await Expect(visitor.Key).ToHaveTextAsync([new System.Text.RegularExpressions.Regex("since 2015"), new("before 2015")]);
    });

    [Fact]
    public Task ColourTellsTheFirstPeriodWhenAsked() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Visitor.Arriving);
        var last = await visitor.Key.First.TextContentAsync();
        await visitor.Page.GetByLabel("What the colour tells").SelectOptionAsync("first found");
        await Expect(visitor.Key.First).Not.ToHaveTextAsync(last!);
        await visitor.SeesInAddressAsync("colour=first");
    });
}
