using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>A square in two periods, and in squares of other sizes.</summary>
public class SquareCompareTests(DemoSite site)
{
    [Fact]
    public Task TwoPeriodsTellWhatWasGainedLostAndKeptHere() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#square=TL45");
        await visitor.Details.GetByText("Compare two periods").ClickAsync();
        await visitor.Details.GetByLabel("Earlier", new() { Exact = true }).FillAsync("1990/2004");
        await visitor.Details.GetByLabel("Later", new() { Exact = true }).FillAsync("2005/2024");
        await visitor.Page.Keyboard.PressAsync("Enter");
        await visitor.SeesInAddressAsync("compare=1990/2004,2005/2024");
        await Expect(visitor.Details.Locator(".compare")).ToContainTextAsync(new Regex("Still there|Gained|Lost|Not visited"));
        await Expect(visitor.Details.Locator(".compare")).ToContainTextAsync(new Regex("Glimmers: ([0-9]+ visits?|not visited) in 1990–2004, ([0-9]+ visits?|not visited) in 2005–2024"));
        await Axe.AssertAccessibleAsync(visitor.Page, "a square compared");
    });

    [Fact]
    public Task PeriodsThatOverlapAreRefusedInWords() => site.VisitAsync(async visitor =>
    {
        visitor.ExpectsFailedAnswers = true;
        await visitor.OpenAsync("#square=TL45&compare=1990/2010,2005/2024");
        await Expect(visitor.Details.Locator(".compare")).ToContainTextAsync("overlap");
    });

    [Fact]
    public Task WhereNobodyCameBackNothingIsCalledLost() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#square=TL45&compare=1985/2024,2090/2099");
        await Expect(visitor.Details.Locator(".fate-list.not-surveyed-after")).ToBeVisibleAsync();
        await Expect(visitor.Details.Locator(".fate-list.lost")).ToHaveCountAsync(0);
    });

    [Fact]
    public Task AnotherSizeKeepsThePlaceAndLeadsBack() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#grid=1km&square=TL4558");
        var reference = visitor.Details.Locator(".reference");
        await visitor.Details.GetByRole(AriaRole.Button, new() { Name = "10 km", Exact = true }).ClickAsync();
        await Expect(reference).ToHaveTextAsync("TL45");
        await visitor.Details.GetByRole(AriaRole.Button, new() { Name = "1 km", Exact = true }).ClickAsync();
        await Expect(reference).ToHaveTextAsync("TL4558");
        await visitor.SeesInAddressAsync("grid=1km");
    });
}
