using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The page of exports: a query by choices, its size first, the same as programs, the file, and what it means.</summary>
public class ExportPageTests(DemoSite site, OddSite odd) : IClassFixture<OddSite>
{
    private const string Page = "export.html";

    // The first question about fronts waits for the arrival model, which a busy machine takes its time for.
    private const float ModelPatienceMs = 120_000;

    [Fact]
    public Task ChoicesChangeTheQuestionAndTheAddressAndComeBackFromIt() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Page);
        await Expect(Size(visitor)).ToContainTextAsync(new Regex("[0-9,]+ rows, about [0-9.,]+ MB"));
        await visitor.Page.GetByRole(AriaRole.Combobox, new() { Name = "Species" }).FillAsync("harbour");
        await visitor.Found.First.ClickAsync();
        await Expect(visitor.Page.GetByText("harbour ember-wing (Cindrava adventa)")).ToBeVisibleAsync();
        await visitor.Page.GetByLabel("From").FillAsync("2005");
        await visitor.Page.Keyboard.PressAsync("Tab");
        await visitor.Page.GetByLabel("Squares").SelectOptionAsync("1km");
        await visitor.Page.GetByLabel("GeoPackage").CheckAsync();
        await visitor.Page.GetByLabel("Region").SelectOptionAsync("England");
        await visitor.SeesInAddressAsync("taxon=cindrava-adventa&from=2005&size=1km&region=England&format=gpkg");
        await Expect(Snippet(visitor, "url")).ToContainTextAsync("/api/v1/exports/presence?taxon=cindrava-adventa&grid=1km&quality=usable&from=2005&region=England&format=gpkg");
        await visitor.Page.ReloadAsync();
        await Expect(visitor.Page.GetByLabel("From")).ToHaveValueAsync("2005");
        await Expect(visitor.Page.GetByLabel("Region")).ToHaveValueAsync("England");
        await Expect(visitor.Page.GetByLabel("GeoPackage")).ToBeCheckedAsync();
        await visitor.Page.GoBackAsync();
        await Expect(visitor.Page.GetByLabel("Region")).ToHaveValueAsync("");
    });

    [Theory]
    [InlineData("")]
    [InlineData("&format=geojson&size=1km")]
    [InlineData("&what=records&from=2005-06-01&to=2007")]
    public Task CurlAndPythonFetchWhatThePageSaysWhateverTheNameIs(string more) => site.VisitAsync(
        async visitor =>
        {
            await visitor.OpenAsync($"{Page}#taxon={Uri.EscapeDataString(OddSite.Taxon)}{more}");
            await Expect(Size(visitor)).ToContainTextAsync("2 rows");
            var file = new Uri(await Snippet(visitor, "url").InnerTextAsync());
            var name = Regex.Match(await Snippet(visitor, "curl").InnerTextAsync(), "--output '(.+)'").Groups[1].Value;
            using var client = new HttpClient();
            var expected = await client.GetByteArrayAsync(file, TestContext.Current.CancellationToken);
            if (Programs.Has("curl"))
                Assert.Equal(expected, await Programs.FileMadeByAsync("sh", [], await Snippet(visitor, "curl").InnerTextAsync(), name));
            if (Programs.Has("python3"))
                Assert.Equal(expected, await Programs.FileMadeByAsync("python3", ["-"], await Snippet(visitor, "python").InnerTextAsync(), name));
            Assert.Contains("NZ2", System.Text.Encoding.UTF8.GetString(expected), StringComparison.Ordinal);
            Assert.DoesNotContain("secunda", System.Text.Encoding.UTF8.GetString(expected), StringComparison.Ordinal);
        },
        at: odd.Address);

    [Fact]
    public Task FrontsAreFetchedByTheProgramsToo() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Page}#what=fronts&format=geojson");
        await Expect(Size(visitor)).ToContainTextAsync("Fronts are of one species: choose one.");
        await visitor.Page.GotoAsync(visitor.AddressOf($"{Page}?years#what=fronts&taxon=cindrava-adventa&format=geojson&from=2010&to=2014"));
        await Expect(Size(visitor)).ToContainTextAsync("5 lines", new() { Timeout = ModelPatienceMs });
        if (Programs.Has("python3"))
        {
            var made = await Programs.FileMadeByAsync("python3", ["-"], await Snippet(visitor, "python").InnerTextAsync(), "fronts.geojson");
            Assert.Equal(5, System.Text.Json.Nodes.JsonNode.Parse(made)!["features"]!.AsArray().Count);
        }
    });

    [Fact]
    public Task TheFileIsFetchedHereAndCopiesAreAnnounced() => site.VisitAsync(async visitor =>
    {
        await visitor.Page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await visitor.OpenAsync($"{Page}#taxon=cindrava-adventa");
        var download = await visitor.Page.RunAndWaitForDownloadAsync(() => Button(visitor, "Download").ClickAsync());
        Assert.EndsWith(".csv", download.SuggestedFilename, StringComparison.Ordinal);
        var rows = await File.ReadAllLinesAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        await Expect(Size(visitor)).ToContainTextAsync($"{rows.Length - 1} rows");
        await Expect(visitor.Page.GetByText("Done: presence-cindrava-adventa-10km")).ToBeVisibleAsync();
        await Button(visitor, "Copy Address").ClickAsync();
        await Expect(visitor.Page.GetByText("Address copied.")).ToBeAttachedAsync();
        Assert.Equal(await Snippet(visitor, "url").InnerTextAsync(), await visitor.Page.EvaluateAsync<string>("() => navigator.clipboard.readText()"));
    });

    [Fact]
    public Task ADownloadShowsItsProgressAndCanBeStopped() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Page}#format=geojson&quality=all");
        await Expect(Button(visitor, "Download")).ToBeEnabledAsync();
        await SlowDownAsync(visitor.Page, 20_000);
        await Button(visitor, "Download").ClickAsync();
        await Expect(visitor.Page.GetByText(new Regex("kB of .* MB"))).ToBeVisibleAsync();
        await Button(visitor, "Stop").ClickAsync();
        await Expect(visitor.Page.GetByText("Stopped. Nothing was kept.")).ToBeVisibleAsync();
        await Expect(Button(visitor, "Download")).ToBeFocusedAsync();
    });

    [Fact]
    public Task WhatIsMissingOrWrongIsToldInWords() => site.VisitAsync(async visitor =>
    {
        visitor.ExpectsFailedAnswers = true;
        await visitor.OpenAsync($"{Page}#from=1701&to=1702");
        await Expect(Size(visitor)).ToContainTextAsync("Nothing matches.");
        await Expect(Size(visitor)).ToContainTextAsync("take other years");
        await Expect(Button(visitor, "Download")).ToBeDisabledAsync();
        await visitor.Page.GetByLabel("From").FillAsync("soon");
        await visitor.Page.GetByLabel("From").BlurAsync();
        await Expect(visitor.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "no year or day" })).ToBeVisibleAsync();
        await visitor.OpenAsync($"{Page}?again#taxon=no-such-thing");
        await Expect(Size(visitor)).ToContainTextAsync("no-such-thing");
        await visitor.OpenAsync($"{Page}?more#what=records&full=true");
        await Expect(Size(visitor)).ToContainTextAsync("Records in full need a token.");
        await visitor.Page.GetByLabel("Your token").FillAsync("rangemap-nobody");
        await Button(visitor, "Use it").ClickAsync();
        await Expect(Size(visitor)).ToContainTextAsync("not known here");
    });

    [Fact]
    public async Task AServerThatStoppedIsToldAndAskedAgain()
    {
        var server = await site.StartServerAsync();
        var address = DemoSite.AddressOf(server);
        await site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                await visitor.OpenAsync($"{Page}#taxon=cindrava-adventa");
                await server.DisposeAsync();
                await visitor.Page.GetByLabel("GeoJSON").CheckAsync();
                await Expect(Size(visitor)).ToContainTextAsync("The server does not answer.");
                await using var again = await site.StartServerAsync(address.AbsoluteUri);
                await Size(visitor).GetByRole(AriaRole.Button, new() { Name = "Try again" }).ClickAsync();
                await Expect(Size(visitor)).ToContainTextAsync("rows");
            },
            at: address);
    }

    [Fact]
    public Task TheMapLeadsHereAtWhatItShows() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync($"{Visitor.Arriving}&grid=5km&quality=confirmed");
        var fold = await visitor.OpenTakeAwayAsync();
        await fold.GetByRole(AriaRole.Link, new() { Name = "Choose rows" }).ClickAsync();
        await visitor.SeesInAddressAsync("export.html#taxon=cindrava-adventa&size=5km&quality=confirmed");
        await Expect(Size(visitor)).ToContainTextAsync("rows");
        await Expect(visitor.Page.Locator(".columns")).ToContainTextAsync("minCoordinateUncertaintyInMeters");
        await Expect(visitor.Page.Locator(".citation")).ToContainTextAsync("live state");
    });

    [Theory]
    [InlineData("narrow", 360, 740, ColorScheme.Light)]
    [InlineData("phone", 390, 844, ColorScheme.Dark)]
    [InlineData("desktop", 1400, 900, ColorScheme.Light)]
    [InlineData("dark", 1400, 900, ColorScheme.Dark)]
    public Task ItFitsTheScreenAndIsAccessible(string device, int width, int height, ColorScheme scheme) => site.VisitAsync(
        async visitor =>
        {
            var page = new Organiser(visitor, device);
            foreach (var (step, query) in new[] { ("export", "#taxon=cindrava-adventa"), ("export-records", "?2#what=records&full=true"), ("export-fronts", "?3#what=fronts&taxon=cindrava-adventa&format=geojson"), ("export-nothing", "?4#from=1701&to=1702") })
            {
                await visitor.Page.GotoAsync(visitor.AddressOf(Page + query));
                await Expect(visitor.Page.Locator(".size")).Not.ToContainTextAsync("Asking", new() { Timeout = ModelPatienceMs });
                await Expect(visitor.Page.Locator(".described")).Not.ToContainTextAsync("Asking");
                await page.StepAsync(step);
                await Overlaps.AssertNoneAsync(visitor.Page, $"{device}, {step}");
            }
        },
        new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, HasTouch = width < 600, IsMobile = width < 600 });

    [Fact]
    public Task TheKeyboardAloneGetsTheFile() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(Page);
        var species = visitor.Page.GetByRole(AriaRole.Combobox, new() { Name = "Species" });
        for (var i = 0; i < 30 && !await species.EvaluateAsync<bool>("box => box === document.activeElement"); i++)
            await visitor.Page.Keyboard.PressAsync("Tab");
        await visitor.Page.Keyboard.TypeAsync("harbour");
        await Expect(visitor.Found.First).ToBeVisibleAsync();
        await visitor.Page.Keyboard.PressAsync("ArrowDown");
        await visitor.Page.Keyboard.PressAsync("Enter");
        await Expect(Size(visitor)).ToContainTextAsync("kB");
        for (var i = 0; i < 30 && !await Button(visitor, "Download").EvaluateAsync<bool>("button => button === document.activeElement"); i++)
            await visitor.Page.Keyboard.PressAsync("Tab");
        var download = await visitor.Page.RunAndWaitForDownloadAsync(() => visitor.Page.Keyboard.PressAsync("Enter"));
        Assert.Contains("cindrava-adventa", download.SuggestedFilename, StringComparison.Ordinal);
    });

    private static ILocator Size(Visitor visitor) => visitor.Page.Locator(".size");

    private static ILocator Snippet(Visitor visitor, string kind) => visitor.Page.Locator($"#snippet-{kind} code");

    private static ILocator Button(Visitor visitor, string name) => visitor.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    private static async Task SlowDownAsync(IPage page, int bytesPerSecond)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        await session.SendAsync("Network.emulateNetworkConditions", new() { ["offline"] = false, ["latency"] = 0, ["downloadThroughput"] = bytesPerSecond, ["uploadThroughput"] = -1 });
    }
}
