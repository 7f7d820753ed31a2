using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>Where an arriving species may be next: chances on the map, squares to search, and what past forecasts were worth.</summary>
public class ForecastTests(DemoSite site) : IAsyncLifetime
{
    /// <summary>The first forecast of a species fits the model eleven times, which a debug build takes its time for.</summary>
    public async ValueTask InitializeAsync() => await site.AskFirstAsync("/api/v1/taxa/cindrava-adventa/forecast");

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    private const string Arriving = "#taxon=cindrava-adventa&mode=forecast&panel=forecast";

    [Fact]
    public Task TheMapShowsChancesAndTheNextFront() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Arriving);
        var legend = visitor.Page.Locator("#legend");
        await Expect(legend.GetByRole(AriaRole.Heading)).ToContainTextAsync("Chance to be there by the end of");
        await Expect(legend.GetByText("named to be searched")).ToBeVisibleAsync();
        await Expect(legend.GetByText("where it may run")).ToBeVisibleAsync();
        Assert.True(await PaintedSquares.CountAsync(visitor.Page) > 0);
    });

    [Fact]
    public Task TheLeafSaysHowManySquaresHowSureAndHowGoodSuchForecastsWere() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Arriving);
        var leaf = visitor.Page.Locator("#leaf-forecast");
        await Expect(leaf.Locator(".opening")).ToContainTextAsync("95 % interval");
        await Expect(leaf.Locator(".caution")).ToContainTextAsync("A forecast is no permission");
        await Expect(leaf.GetByText("How good were such forecasts?")).ToBeVisibleAsync();
        await Expect(leaf.GetByRole(AriaRole.Table).Last.Locator("tbody tr").First).ToBeVisibleAsync();
    });

    [Fact]
    public Task ASquareOfTheListIsOpenedAndTheListsCanBeTakenAlong() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Arriving);
        var leaf = visitor.Page.Locator("#leaf-forecast");
        var sheet = await leaf.GetByRole(AriaRole.Link, new() { Name = "sheet to print" }).GetAttributeAsync("href");
        var gpx = await leaf.GetByRole(AriaRole.Link, new() { Name = "waypoints (GPX)" }).GetAttributeAsync("href");
        var page = await (await visitor.Page.APIRequest.GetAsync(new Uri(new Uri(visitor.Page.Url), sheet!).ToString())).TextAsync();
        Assert.Contains("Squares to search for", page, StringComparison.Ordinal);
        Assert.Contains("nvented", page, StringComparison.Ordinal);
        Assert.Contains("<wpt", await (await visitor.Page.APIRequest.GetAsync(new Uri(new Uri(visitor.Page.Url), gpx!).ToString())).TextAsync(), StringComparison.Ordinal);

        var first = leaf.Locator(".searched tbody th button").First;
        var square = await first.TextContentAsync();
        await first.ClickAsync();
        await Expect(visitor.Page.Locator("#leaf-square .reference")).ToHaveTextAsync(square!);
    });

    [Fact]
    public Task ASpeciesWithoutAModelSaysWhyThereIsNoForecast() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync("#taxon=tindorqua-secreta&mode=forecast&panel=forecast");
        var leaf = visitor.Page.Locator("#leaf-forecast");
        await Expect(leaf.GetByText("Asking the server")).ToHaveCountAsync(0);
        // A sensitive species: either it has no model, or no square of it is named.
        await Expect(leaf).ToContainTextAsync(new System.Text.RegularExpressions.Regex("No forecast can be made|No square is named"));
    });

    [Fact]
    public Task FrontLinesOfPastYearsLieOverTheMapOfArrivals() => site.VisitAsync(async visitor =>
    {
        var asked = visitor.Page.WaitForResponseAsync(answer => answer.Url.Contains("/fronts", StringComparison.Ordinal));
        await visitor.OpenAsync("#taxon=cindrava-adventa&mode=arrival");
        var answer = await asked;
        Assert.True(answer.Ok);
        Assert.Contains("\"front\"", await answer.TextAsync(), StringComparison.Ordinal);
    });
}
