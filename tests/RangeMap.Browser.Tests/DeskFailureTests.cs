using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The desk when things go wrong: nothing that was typed is lost.</summary>
public class DeskFailureTests(DemoSite site, DeskSite desk) : IClassFixture<DeskSite>
{
    private const string Reason = "Two people of one name, perhaps.";

    [Fact]
    public Task AWrongTokenIsToldInWords() => site.VisitAsync(
        async visitor =>
        {
            visitor.ExpectsFailedAnswers = true;
            var organiser = new Organiser(visitor, "desktop");
            await visitor.OpenAsync("desk.html#review");
            await organiser.SignInAgainAsync("rangemap-nobody");
            await Expect(visitor.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "not known here" })).ToBeVisibleAsync();
            await organiser.StepAsync("sign-in");
        },
        at: desk.Address);

    [Fact]
    public async Task ATokenRevokedInTheMiddleIsAskedAnewAndTheReasonIsSent()
    {
        var (number, secret) = Chromium.Find() is null ? default : desk.MakeToken("A. Organiser");
        await site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                var organiser = await WithAReasonTypedAsync(visitor, secret);
                desk.Revoke(number);
                await organiser.PressAsync("Enter");
                await Expect(visitor.Page.GetByText("Your token is no longer taken.")).ToBeVisibleAsync();
                await organiser.SignInAgainAsync(desk.MakeToken("A. Organiser").Secret);
                await Expect(organiser.Decision).ToContainTextAsync("Doubtful: ");
                await Expect(organiser.Queue.First).ToContainTextAsync("Doubtful");
            },
            at: desk.Address);
    }

    [Fact]
    public async Task ATokenRevokedWhileColumnsAreMappedKeepsEveryChoice()
    {
        var (number, secret) = Chromium.Find() is null ? default : desk.MakeToken("A. Organiser");
        await site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                var organiser = new Organiser(visitor, "desktop");
                await organiser.SignInAsync(secret);
                await organiser.SendAsync("few.csv", "Art;Wo;Wann\nCindrava rufa;SE5013;2021-06-05\n", "few");
                await organiser.ReadAsAsync("Art", "scientific name");
                desk.Revoke(number);
                await organiser.ReadAsAsync("Wo", "grid reference");
                await Expect(visitor.Page.GetByText("Your token is no longer taken.")).ToBeVisibleAsync();
                await organiser.StepAsync("sign-in-again");
                await organiser.SignInAgainAsync(desk.MakeToken("A. Organiser").Secret);
                await Expect(visitor.Page.GetByLabel("Art is read as")).ToHaveValueAsync("scientificName");
                await Expect(visitor.Page.GetByLabel("Wo is read as")).ToHaveValueAsync("gridReference");
                await organiser.ReadAsAsync("Wann", "date");
                await organiser.ImportsAsync("1", "1", "0", "0", "0");
            },
            at: desk.Address);
    }

    [Fact]
    public async Task AServerThatStoppedKeepsTheReasonUntilItAnswersAgain()
    {
        var secret = Chromium.Find() is null ? "" : desk.MakeToken("A. Organiser").Secret;
        await site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                var organiser = await WithAReasonTypedAsync(visitor, secret);
                await desk.StopAsync();
                await organiser.PressAsync("Enter");
                await Expect(organiser.Decision.GetByRole(AriaRole.Alert)).ToContainTextAsync("The server does not answer.");
                await Expect(visitor.Page.GetByLabel("Why is it doubtful?")).ToHaveValueAsync(Reason);
                await desk.StartAgainAsync();
                await organiser.Button("Call it doubtful").ClickAsync();
                await Expect(organiser.Decision).ToContainTextAsync("Doubtful: ");
            },
            at: desk.Address);
    }

    private static async Task<Organiser> WithAReasonTypedAsync(Visitor visitor, string token)
    {
        var organiser = new Organiser(visitor, "desktop");
        await organiser.SignInAsync(token);
        await organiser.ReviewsAsync();
        await organiser.PressAsync("d");
        await visitor.Page.Keyboard.TypeAsync(Reason);
        return organiser;
    }
}
