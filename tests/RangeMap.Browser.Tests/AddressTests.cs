using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>A view is its address: it can be sent, and gone back to.</summary>
public class AddressTests(DemoSite site)
{
    [Fact]
    public Task ACopiedAddressShowsTheSameView() => site.VisitAsync(async visitor =>
    {
        // The lines of the front need the arrival model, in squares of either size.
        await site.AskFirstAsync("/api/v1/taxa/cindrava-adventa/fronts");
        await site.AskFirstAsync("/api/v1/taxa/cindrava-adventa/fronts?grid=5km");
        await visitor.OpenAsync(Visitor.Arriving);
        await visitor.Page.GetByLabel("Arrival", new() { Exact = true }).CheckAsync();
        await visitor.Page.GetByLabel("5 km", new() { Exact = true }).CheckAsync();
        await visitor.Page.GetByLabel("All", new() { Exact = true }).CheckAsync();
        await visitor.Years.PressAsync("End");
        for (var step = 0; step < 6; step++)
            await visitor.Page.Keyboard.PressAsync("ArrowLeft");
        await visitor.Page.GetByRole(AriaRole.Tab, new() { Name = "Spread" }).ClickAsync();
        await visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Zoom in" }).ClickAsync();
        await visitor.SeesInAddressAsync("at=");
        var (year, painted, address) = (await visitor.Page.Locator("#years output").TextContentAsync(), await PaintedSquares.CountAsync(visitor.Page), visitor.Page.Url);

        await visitor.OpenInNewPageAsync(address);
        await Expect(visitor.Heading).ToHaveTextAsync("harbour ember-wing");
        foreach (var choice in new[] { "Arrival", "5 km", "All" })
            await Expect(visitor.Page.GetByLabel(choice, new() { Exact = true })).ToBeCheckedAsync();
        await Expect(visitor.Page.Locator("#years output")).ToHaveTextAsync(year!);
        await Expect(visitor.Page.GetByRole(AriaRole.Tab, new() { Name = "Spread" })).ToHaveAttributeAsync("aria-selected", "true");
        // The address holds whole metres, so edges of squares may fall on other fractions of a pixel.
        Assert.InRange(await PaintedSquares.CountAsync(visitor.Page), painted * 0.97, painted * 1.03);
        Assert.Equal(address, visitor.Page.Url);
    });

    [Fact]
    public Task BackAndForwardStepThroughTheChoices() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await visitor.Search.FillAsync("harbour");
        await visitor.Found.First.ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("harbour ember-wing");
        await visitor.Page.GetByLabel("5 km", new() { Exact = true }).CheckAsync();
        await visitor.Page.GoBackAsync();
        await Expect(visitor.Page.GetByLabel("10 km", new() { Exact = true })).ToBeCheckedAsync();
        await visitor.Page.GoBackAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("Choose a species");
        await visitor.Page.GoForwardAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("harbour ember-wing");
        await Expect(visitor.Page.GetByLabel("10 km", new() { Exact = true })).ToBeCheckedAsync();
    });

    [Fact]
    public Task AnAddressOfNonsenseShowsTheFirstPage() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#grid=3km&mode=loud&year=soon&at=here,there&quality=");
        await Expect(visitor.Heading).ToHaveTextAsync("Choose a species");
    });
}
