using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>Files on their way in: mappings kept for the next file, trials, sendings that stop, and files that are too long.</summary>
public class DeskFileTests(DemoSite site, DeskSite desk) : IClassFixture<DeskSite>
{
    // Invented.
    private const string Notebook = "Art;Wo;Wann\nCindrava rufa;SE5013;05/06/2021\n";

    private static string LongFile => "scientificName,gridReference,eventDate,occurrenceRemarks\n"
        + string.Concat(Enumerable.Range(1, 40).Select(day => $"Cindrava rufa,SE50{day + 10},2021-06-05,{new string('x', 100_000)}\n"));

    [Fact]
    public Task AMappingIsSavedAndReadsTheNextFile() => OrganiserAsync(async organiser =>
    {
        await organiser.SendAsync("first.csv", Notebook, "mapped");
        await organiser.ReadAsAsync("Art", "scientific name");
        await organiser.ReadAsAsync("Wo", "grid reference");
        await organiser.ReadAsAsync("Wann", "date");
        await organiser.Page.GetByLabel("A date such as").SelectOptionAsync("dmy");
        await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync("1 understood, 0 refused");
        var download = await organiser.Page.RunAndWaitForDownloadAsync(() => organiser.Button("Save this mapping").ClickAsync());
        var saved = await File.ReadAllTextAsync(await download.PathAsync());
        Assert.Equal(("scientificName", "dmy"), ((string?)JsonNode.Parse(saved)!["columns"]!["Art"], (string?)JsonNode.Parse(saved)!["dateOrder"]));

        await organiser.Page.GetByRole(AriaRole.Link, new() { Name = "All imports" }).ClickAsync();
        await organiser.SendAsync("second.csv", Notebook.Replace("SE5013", "SE5014", StringComparison.Ordinal), "mapped");
        var load = organiser.Page.GetByLabel("A mapping file", new() { Exact = true });
        await load.SetInputFilesAsync(Organiser.PayloadOf("no-mapping.json", "{\"colour\":1}"));
        await Expect(organiser.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "This is no mapping file" })).ToBeVisibleAsync();
        await load.SetInputFilesAsync(Organiser.PayloadOf("mapping.json", saved));
        await Expect(organiser.Page.GetByLabel("Wann is read as")).ToHaveValueAsync("eventDate");
        await Expect(organiser.Page.GetByLabel("A date such as")).ToHaveValueAsync("dmy");
        await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync("1 understood, 0 refused");
        await organiser.ImportsAsync("1", "1", "0", "0", "0");
    });

    [Fact]
    public Task ATrialShowsTheFiguresAndKeepsNothing() => OrganiserAsync(async organiser =>
    {
        const string table = "scientificName,gridReference,eventDate,completeList\nCindrava rufa,SE5013,2021-06-05,yes\nCindrava nobody,SE5013,2021-06-05,yes\n";
        await organiser.SendAsync("trial.csv", table, "tried");
        await organiser.Button("Try it, keep nothing").ClickAsync();
        var trial = organiser.Page.GetByRole(AriaRole.Region, new() { Name = "The trial" });
        await Expect(trial.Locator("dd")).ToHaveTextAsync(["2", "1", "0", "0", "1"]);
        await Expect(trial).ToContainTextAsync("1 record stands on a complete list");
        await organiser.StepAsync("trial");
        await organiser.Page.GetByRole(AriaRole.Link, new() { Name = "All imports" }).ClickAsync();
        await Expect(organiser.Page.Locator(".sent tr").Filter(new() { HasText = "trial.csv" })).ToContainTextAsync("tried, not imported");

        // Were anything of the trial kept, the row would be known already.
        await organiser.Page.GetByRole(AriaRole.Link, new() { Name = "trial.csv" }).ClickAsync();
        await organiser.ImportsAsync("2", "1", "0", "0", "1");
    });

    [Fact]
    public Task DoubtsOfAFileAreToldByTheirTitles() => OrganiserAsync(async organiser =>
    {
        await organiser.SendAsync("doubts.csv", "scientificName,gridReference,eventDate\nCindrava rufa cf.,SE5015,2021-06-05\nCindrava cf. rufa,SE5016,2021-06-05\n", "doubted");
        await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync(await TitleAsync("nameUncertain"));
        await organiser.Button("Import").ClickAsync();
        await Expect(organiser.Page.Locator(".figures .doubts")).ToContainTextAsync(await TitleAsync("nameUncertain"));
    });

    [Fact]
    public Task AnUploadStoppedHalfwayLeavesNothingAndIsSentAgain() => OrganiserAsync(async organiser =>
    {
        await SlowDownAsync(organiser.Page, bytesPerSecond: 1_000_000);
        await organiser.ChooseAsync("long.csv", LongFile, "long");
        await organiser.Button("Send").ClickAsync();
        await Expect(organiser.Page.Locator(".told")).ToContainTextAsync(" of 4.0 MB");
        await organiser.Button("Stop sending").ClickAsync();
        await Expect(organiser.Page.Locator(".told")).ToContainTextAsync("Stopped. Nothing of the file was kept.");
        await organiser.StepAsync("stopped");
        await AssertSoonAsync(() => !desk.Waiting.Any(file => file.EndsWith(".part", StringComparison.Ordinal)));

        await SlowDownAsync(organiser.Page, bytesPerSecond: -1);
        await organiser.Button("Send").ClickAsync();
        await organiser.SeesMappingAsync("long.csv");
        await organiser.ImportsAsync("40", "40", "0", "0", "0");
    });

    [Fact]
    public async Task AFileOverTheLimitIsRefusedInWordsAndNotSent()
    {
        var token = Token();
        await using var small = token.Length == 0 ? null : await desk.StartBesideAsync(mostUploadBytes: 1 << 20);
        await site.VisitAsync(
            async visitor =>
            {
                var sent = 0;
                visitor.Page.Request += (_, request) => sent += request.Method == "POST" ? 1 : 0;
                var organiser = new Organiser(visitor, "desktop");
                await organiser.SignInAsync(token);
                await Expect(visitor.Page.Locator(".sent")).ToContainTextAsync("State");
                await organiser.ChooseAsync("long.csv", LongFile, "long");
                var fault = visitor.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "this server takes at most 1.0 MB" });
                await Expect(fault).ToContainTextAsync("Pack it with gzip, send it in parts");
                await organiser.Button("Send").ClickAsync();
                await Expect(fault).ToBeVisibleAsync();
                await organiser.StepAsync("too-long");
                Assert.Equal(0, sent);
                await organiser.ChooseAsync("short.csv", Notebook, "short");
                await organiser.Button("Send").ClickAsync();
                await organiser.SeesMappingAsync("short.csv");
            },
            at: small is null ? null : DemoSite.AddressOf(small));
    }

    private Task OrganiserAsync(Func<Organiser, Task> does)
    {
        var token = Token();
        return site.VisitAsync(
            async visitor =>
            {
                var organiser = new Organiser(visitor, "desktop");
                await organiser.SignInAsync(token);
                await does(organiser);
            },
            at: desk.Address);
    }

    private string Token() => Chromium.Find() is null ? "" : desk.MakeToken("A. Organiser").Secret;

    private async Task<string> TitleAsync(string code)
    {
        using var client = new HttpClient { BaseAddress = desk.Address };
        var known = JsonNode.Parse(await client.GetStringAsync(new Uri("api/v1/doubts", UriKind.Relative)))!["doubts"]!.AsArray();
        return (string)known.Single(doubt => (string?)doubt!["code"] == code)!["title"]!;
    }

    private static async Task SlowDownAsync(IPage page, int bytesPerSecond)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        await session.SendAsync("Network.emulateNetworkConditions", new() { ["offline"] = false, ["latency"] = 0, ["downloadThroughput"] = -1, ["uploadThroughput"] = bytesPerSecond });
    }

    private static async Task AssertSoonAsync(Func<bool> holds)
    {
        for (var tries = 0; tries < 100 && !holds(); tries++)
            await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.True(holds());
    }
}
