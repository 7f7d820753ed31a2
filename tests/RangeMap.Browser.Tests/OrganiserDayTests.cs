using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>A long day of the organiser: a file comes in, is mended and sent again, taken back; then the review.</summary>
public class OrganiserDayTests(DemoSite site, DeskSite desk) : IClassFixture<DeskSite>
{
    // Invented; the second name is misspelt, the third date does not exist.
    private const string OddFile = """
        Art;Wer;Wo gefunden;Wann;Notiz
        Cindrava rufa;A. Person;SE5013;05/06/2021;on clover
        Cindrava rufaa;A. Person;SE5113;12/06/2021;
        Cindrava rufa;B. Person;SE9951;31/02/2021;by the gate
        """;

    // An accepted name holds for every later file, so that each device needs a slip of its own.
    private static readonly Dictionary<string, string> Slips = new() { ["desktop"] = "Cindrava ruffa", ["phone"] = "Cindrava rufo" };

    [Theory]
    [InlineData("desktop", 1280, ColorScheme.Light)]
    [InlineData("phone", 390, ColorScheme.Dark)]
    public async Task AFileIsMappedImportedMendedSentAgainAndTakenBack(string device, int width, ColorScheme scheme)
    {
        var token = Token();
        await site.VisitAsync(
            async visitor =>
            {
                var organiser = new Organiser(visitor, device);
                await organiser.SignInAsync(token);
                await organiser.StepAsync("imports");
                await MapAndImportAsync(organiser, $"letters of {device}");
                await MendAndSendAgainAsync(organiser, $"letters of {device}");
                await TakeBackAsync(organiser);
                await AcceptANameAndSendAgainAsync(organiser, $"letters of {device}", Slips[device]);
            },
            Window(width, scheme),
            desk.Address);
    }

    [Theory]
    [InlineData("desktop", 1280, ColorScheme.Dark)]
    [InlineData("phone", 390, ColorScheme.Light)]
    public async Task RecordsAreReviewedByKeyboardOneByOneAndManyAtOnceAndAllIsTakenBack(string device, int width, ColorScheme scheme)
    {
        var token = Token();
        await site.VisitAsync(
            async visitor =>
            {
                var organiser = new Organiser(visitor, device);
                await organiser.SignInAsync(token);
                await organiser.ReviewsAsync();
                await organiser.StepAsync("review");
                await DecideThreeAsync(organiser);
                await DecideManyAsync(organiser);
                await UndoAllAsync(organiser);
                await SaveTheSheetAsync(organiser);
            },
            Window(width, scheme),
            desk.Address);
    }

    private static async Task MapAndImportAsync(Organiser organiser, string dataset)
    {
        await organiser.SendAsync("notebook.csv", OddFile, dataset);
        await Expect(organiser.Page.Locator(".problem")).ToContainTextAsync("No header was recognised. Choose below");
        await organiser.StepAsync("unmapped");
        foreach (var (column, term) in new[] { ("Art", "scientific name"), ("Wer", "recorder"), ("Wo gefunden", "grid reference"), ("Wann", "date") })
            await organiser.ReadAsAsync(column, term);
        await organiser.Page.GetByLabel("A date such as").SelectOptionAsync("dmy");
        await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync("1 understood, 2 refused");
        await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync("February 2021 has 28 days");
        await organiser.StepAsync("mapped");
        await organiser.ImportsAsync("3", "1", "0", "0", "2");
        await Expect(organiser.Page.Locator(".refusal-rows tbody tr")).ToHaveCountAsync(2);
        await organiser.StepAsync("report");
    }

    private static async Task MendAndSendAgainAsync(Organiser organiser, string dataset)
    {
        var download = await organiser.Page.RunAndWaitForDownloadAsync(() => organiser.Button("Download them to mend").ClickAsync());
        var refused = await File.ReadAllTextAsync(await download.PathAsync());
        Assert.Contains("refusedReason", refused, StringComparison.Ordinal);
        var mended = refused.Replace("31/02/2021", "28/02/2021", StringComparison.Ordinal).Replace("Cindrava rufaa,A", "Cindrava rufa,A", StringComparison.Ordinal);

        await organiser.Page.GetByRole(AriaRole.Link, new() { Name = "All imports" }).ClickAsync();
        await organiser.SendAsync("mended.csv", mended, dataset);
        var earlier = organiser.Page.GetByLabel("Read it like an earlier import");
        var like = await earlier.Locator("option").Filter(new() { HasTextRegex = NotebookOf(dataset) }).First.GetAttributeAsync("value");
        await earlier.SelectOptionAsync(like!);
        await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync("2 understood, 0 refused");
        await organiser.ImportsAsync("2", "2", "0", "0", "0");
    }

    private static async Task TakeBackAsync(Organiser organiser)
    {
        await organiser.Button("Take this import back …").ClickAsync();
        await Expect(organiser.Page.Locator(".sure")).ToContainTextAsync("2 records that it brought leave the maps");
        await organiser.StepAsync("sure");
        await organiser.Button("Take it back").ClickAsync();
        await Expect(organiser.Page.Locator(".taken-back")).ToContainTextAsync("2 records left the maps");
        await organiser.StepAsync("taken-back");
        await organiser.Page.GetByRole(AriaRole.Link, new() { Name = "All imports" }).ClickAsync();
        await Expect(organiser.Page.Locator(".sent")).ToContainTextAsync("taken back");
    }

    private static async Task AcceptANameAndSendAgainAsync(Organiser organiser, string dataset, string slip)
    {
        await organiser.SendAsync("names.csv", $"scientificName,gridReference,eventDate\n{slip},SE5214,2021-06-13\n", dataset);
        await organiser.ImportsAsync("1", "0", "0", "0", "1");
        var names = organiser.Page.GetByRole(AriaRole.Region, new() { Name = "Names" });
        await names.GetByRole(AriaRole.Button, new() { Name = "Cindrava rufa", Exact = true }).ClickAsync();
        await Expect(names).ToContainTextAsync("now read as Cindrava rufa");
        await organiser.StepAsync("name-accepted");
        await organiser.Button("Send them again as they are").ClickAsync();
        await Expect(organiser.Page.Locator(".figures dd")).ToHaveTextAsync(["1", "1", "0", "0", "0"]);
    }

    private static async Task DecideThreeAsync(Organiser organiser)
    {
        await organiser.PressAsync("c");
        await Expect(organiser.Decision).ToContainTextAsync("Confirmed: ");
        await organiser.PressAsync("d");
        await organiser.PressAsync("Enter");
        await Expect(organiser.Decision.GetByRole(AriaRole.Alert)).ToContainTextAsync("A reason is owed");
        await organiser.Page.Keyboard.TypeAsync("The photograph does not show the wing.");
        await organiser.StepAsync("reason");
        await organiser.PressAsync("Enter");
        await Expect(organiser.Decision).ToContainTextAsync("Doubtful: ");
        await organiser.PressAsync("r");
        await organiser.Button("The photograph does not show the wing.").ClickAsync();
        await organiser.PressAsync("Enter");
        await Expect(organiser.Decision).ToContainTextAsync("Rejected: ");
        await Expect(organiser.Queue.Nth(0)).ToContainTextAsync("Confirmed");
        await Expect(organiser.Queue.Nth(1)).ToContainTextAsync("Doubtful");
        await Expect(organiser.Queue.Nth(2)).ToContainTextAsync("Rejected");
        await Expect(organiser.Queue.Nth(3)).ToHaveAttributeAsync("aria-current", "true");
    }

    private static async Task DecideManyAsync(Organiser organiser)
    {
        await organiser.PressAsync("x", "j", "x");
        await Expect(organiser.Decision).ToContainTextAsync("On 2 selected records");
        await organiser.PressAsync("r");
        await organiser.Page.Keyboard.TypeAsync("Both are far out at sea.");
        await organiser.StepAsync("many");
        await organiser.PressAsync("Enter");
        await Expect(organiser.Decision).ToContainTextAsync("Rejected: 2 records.");
        await organiser.PressAsync("?");
        await Expect(organiser.Page.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Take your last decision back");
        await organiser.StepAsync("keys");
        await organiser.Button("Close").ClickAsync();
    }

    private static async Task UndoAllAsync(Organiser organiser)
    {
        await organiser.PressAsync("u");
        await Expect(organiser.Decision).ToContainTextAsync("Taken back: 2 records stand as before.");
        for (var left = 2; left >= 0; left--)
        {
            await organiser.PressAsync("u");
            await Expect(organiser.Page.Locator(".queue li.decided")).ToHaveCountAsync(left);
        }

        await Expect(organiser.Decision).ToContainTextAsync("Taken back: 1 record stands as before.");
        await Expect(organiser.Page.GetByRole(AriaRole.Region, new() { Name = "History" })).ToContainTextAsync("A decision was taken back");
    }

    private static async Task SaveTheSheetAsync(Organiser organiser)
    {
        var save = organiser.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Save the sheet for ") });
        var download = await organiser.Page.RunAndWaitForDownloadAsync(() => save.ClickAsync());
        Assert.EndsWith(".html", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.Contains("Thank you for your records.", await File.ReadAllTextAsync(await download.PathAsync()), StringComparison.Ordinal);
    }

    private string Token() => Chromium.Find() is null ? "" : desk.MakeToken("A. Organiser").Secret;

    private static BrowserNewContextOptions Window(int width, ColorScheme scheme) =>
        new() { ViewportSize = new() { Width = width, Height = 844 }, ColorScheme = scheme, HasTouch = width < 600, IsMobile = width < 600 };

    private static Regex NotebookOf(string dataset) => new($@"^notebook\.csv \({Regex.Escape(dataset)}");
}
