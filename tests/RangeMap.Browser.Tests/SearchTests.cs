using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The first minute: what the page says of itself, and how a species is found.</summary>
public class SearchTests(DemoSite site)
{
    [Fact]
    public Task TheBannerSaysThatTheDataAreInvented() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await Expect(visitor.Page.GetByRole(AriaRole.Note)).ToContainTextAsync("Invented demo data");
        await Expect(visitor.Page.Locator("#notices")).ToContainTextAsync("no such species, recorders or records exist");
    });

    [Fact]
    public Task TheMapNamesItsSources() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        foreach (var source in new[] { "OpenStreetMap contributors, ODbL", "Natural Earth", "GeoNames, CC BY 4.0" })
            await Expect(visitor.Page.Locator("#notices")).ToContainTextAsync(source);
    });

    [Fact]
    public Task ASpeciesIsChosenByMouse() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Search.ClickAsync();
        await visitor.Page.Keyboard.TypeAsync("harb");
        await visitor.Page.GetByRole(AriaRole.Option, new() { Name = "harbour ember-wing" }).ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("harbour ember-wing");
        await Expect(visitor.Page.GetByRole(AriaRole.Listbox)).ToBeHiddenAsync();
        Assert.True(await PaintedSquares.CountAsync(visitor.Page) > 500);
    });

    [Fact]
    public Task ASpeciesIsChosenByKeyboardAlone() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Search.FocusAsync();
        await visitor.Page.Keyboard.TypeAsync("velurqua");
        // The demo has eight species of that invented genus.
        await Expect(visitor.Found).ToHaveCountAsync(8);
        await visitor.Page.Keyboard.PressAsync("ArrowDown");
        await visitor.Page.Keyboard.PressAsync("ArrowDown");
        var second = await visitor.Page.Locator("[role=option][aria-selected=true] .name").TextContentAsync();
        await visitor.Page.Keyboard.PressAsync("Enter");
        await Expect(visitor.Heading).ToHaveTextAsync(second!);
    });

    [Fact]
    public Task EscapeLeavesTheSearchWithoutAChoice() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Search.FocusAsync();
        await visitor.Page.Keyboard.TypeAsync("ember");
        await Expect(visitor.Page.GetByRole(AriaRole.Listbox)).ToBeVisibleAsync();
        await visitor.Page.Keyboard.PressAsync("Escape");
        await Expect(visitor.Page.GetByRole(AriaRole.Listbox)).ToBeHiddenAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("Choose a species");
    });

    [Fact]
    public Task ANameThatNobodyKnowsIsAnsweredInWords() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Search.FillAsync("zzzz");
        await Expect(visitor.Page.GetByRole(AriaRole.Listbox)).ToContainTextAsync("No species of that name");
    });

    [Fact]
    public Task TheFirstPageOffersSpeciesToBeginWith() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        var first = visitor.Page.Locator(".offered button").First;
        var name = await first.TextContentAsync();
        await first.ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync(name!);
    });
}
