using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The organiser freezes an edition and sets the periods of the scheme; nothing typed is lost, and everything can be gone back to.</summary>
public class DeskSchemeTests(DemoSite site, DeskSite desk) : IClassFixture<DeskSite>
{
    [Fact]
    public Task AnEditionIsFrozenWithAReasonAfterASecondQuestion() => OrganiserAsync("editions", async (organiser, _) =>
    {
        var page = organiser.Page;
        await Expect(page.GetByText("Nothing is frozen yet.")).ToBeVisibleAsync();
        await organiser.Button("Freeze …").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "Say why first" })).ToBeVisibleAsync();
        await page.GetByLabel("Title").FillAsync("Invented atlas");
        await page.GetByLabel("Why is it frozen?").FillAsync("The report of the year.");
        await organiser.Button("Freeze …").ClickAsync();
        await Expect(organiser.Button("Not yet")).ToBeFocusedAsync();
        await organiser.StepAsync("freeze");
        await organiser.Button("Freeze it").ClickAsync();
        await Expect(page.GetByText("Frozen as ")).ToBeVisibleAsync();
        var edition = page.Locator(".edition").Filter(new() { HasText = "Invented atlas" });
        await Expect(edition).ToContainTextAsync("Why: The report of the year.");
        await Expect(edition).ToContainTextAsync("sha256:");

        // The same data once more are the same edition.
        await page.GetByLabel("Why is it frozen?").FillAsync("Again.");
        await organiser.Button("Freeze …").ClickAsync();
        await organiser.Button("Freeze it").ClickAsync();
        await Expect(page.GetByText("frozen on")).ToContainTextAsync("stays as it is");
        await Expect(page.Locator(".edition")).ToHaveCountAsync(1);
        await organiser.StepAsync("editions");
        await edition.GetByRole(AriaRole.Link, new() { Name = "Its data" }).ClickAsync();
        await Expect(page.Locator(".size")).ToContainTextAsync("rows");
        await Expect(page.GetByLabel("State of the data")).ToContainTextAsync("Invented atlas");
        await Expect(page.Locator(".citation")).ToContainTextAsync("Frozen edition of");
    });

    [Fact]
    public Task PeriodsAreSetMapsBeginWithThemAndTheyCanBeGoneBackTo() => OrganiserAsync("scheme", async (organiser, visitor) =>
    {
        var page = organiser.Page;
        await Expect(page.GetByLabel("Name of the period")).ToHaveCountAsync(3);
        await page.GetByLabel("Name of the period").First.FillAsync("first survey");
        await page.GetByLabel("From and to").Nth(1).FillAsync("1995/2014");
        await page.GetByLabel("Why are they changed?").FillAsync("The surveys.");
        await organiser.Button("Save").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "overlap" })).ToBeVisibleAsync();
        await organiser.StepAsync("periods-refused");
        await page.GetByLabel("From and to").Nth(1).FillAsync("2000/2014");
        await page.GetByLabel("From and to").Nth(2).FillAsync("2015/..");
        await organiser.Button("Save").ClickAsync();
        await Expect(page.GetByText("Saved. Maps begin with these periods from now on.")).ToBeVisibleAsync();
        await organiser.StepAsync("periods");

        await visitor.OpenAsync(Visitor.Arriving);
        await Expect(page.GetByLabel("Periods", new() { Exact = true }).Locator("option").First).ToHaveTextAsync("first survey · 2000–2009 · since 2010");
        await Expect(visitor.Key.Filter(new() { HasText = "since 2015" })).ToHaveCountAsync(1);

        await visitor.OpenAsync("desk.html#scheme");
        await organiser.Button("Go back to these …").Last.ClickAsync();
        await page.GetByLabel("Why?").Last.FillAsync("The trial is over.");
        await organiser.Button("Go back").ClickAsync();
        await Expect(page.GetByText("Gone back.")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("From and to").Last).ToHaveValueAsync("2010/..");
        await Expect(page.Locator(".changes > li").First).ToContainTextAsync("The trial is over.");
        await Expect(page.Locator(".changes > li").Nth(1)).ToContainTextAsync("first survey (before 2000)");
        await Expect(page.Locator(".groups")).ToContainTextAsync("ember-wings");
    });

    [Fact]
    public async Task ATokenRevokedInTheMiddleKeepsThePeriodsThatWereTyped()
    {
        var (number, secret) = Chromium.Find() is null ? default : desk.MakeToken("A. Organiser");
        await site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                var organiser = new Organiser(visitor, "desktop");
                await organiser.SignInAsync(secret);
                await organiser.Page.GetByRole(AriaRole.Link, new() { Name = "Scheme" }).ClickAsync();
                await organiser.Page.GetByLabel("Name of the period").First.FillAsync("long ago");
                await organiser.Page.GetByLabel("Why are they changed?").FillAsync("A name.");
                desk.Revoke(number);
                await organiser.Button("Save").ClickAsync();
                await Expect(visitor.Page.GetByText("Your token is no longer taken.")).ToBeVisibleAsync();
                await organiser.SignInAgainAsync(desk.MakeToken("A. Organiser").Secret);
                await Expect(organiser.Page.GetByText("Saved. Maps begin with")).ToBeVisibleAsync();
                await Expect(organiser.Page.GetByLabel("Name of the period").First).ToHaveValueAsync("long ago");
            },
            at: desk.Address);
    }

    [Theory]
    [InlineData("narrow", 360, 740, ColorScheme.Light)]
    [InlineData("phone", 390, 844, ColorScheme.Dark)]
    public async Task EditionsAndSchemeFitAPhone(string device, int width, int height, ColorScheme scheme)
    {
        var token = Chromium.Find() is null ? "" : desk.MakeToken("A. Organiser").Secret;
        await site.VisitAsync(
            async visitor =>
            {
                var organiser = new Organiser(visitor, device);
                await organiser.SignInAsync(token);
                foreach (var place in (string[])["Editions", "Scheme"])
                {
                    await organiser.Page.GetByRole(AriaRole.Link, new() { Name = place, Exact = true }).ClickAsync();
                    await Expect(organiser.Page.Locator(".page")).Not.ToContainTextAsync("Asking");
                    await organiser.StepAsync(place);
                    await Overlaps.AssertNoneAsync(organiser.Page, $"{device}, {place}");
                }
            },
            new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, HasTouch = true, IsMobile = true },
            desk.Address);
    }

    private Task OrganiserAsync(string place, Func<Organiser, Visitor, Task> does)
    {
        var token = Chromium.Find() is null ? "" : desk.MakeToken("A. Organiser").Secret;
        return site.VisitAsync(
            async visitor =>
            {
                var organiser = new Organiser(visitor, "desktop");
                await organiser.SignInAsync(token);
                // A failed question that the server explains is what these tests are about.
                visitor.ExpectsFailedAnswers = true;
                await organiser.Page.GetByRole(AriaRole.Link, new() { Name = place == "scheme" ? "Scheme" : "Editions", Exact = true }).ClickAsync();
                await does(organiser, visitor);
            },
            at: desk.Address);
    }
}
