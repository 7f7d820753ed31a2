using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The review where a name is wrong, and where two people look at one record.</summary>
public class DeskReviewTests(DemoSite site, DeskSite desk) : IClassFixture<DeskSite>
{
    [Fact]
    public Task ARecordIsIdentifiedAsAnotherTaxonAndTheNameThatWasSentStays() => ReviewerAsync("A. Organiser", async organiser =>
    {
        var name = organiser.Page.Locator(".record h2");
        var before = await name.InnerTextAsync();
        await organiser.PressAsync("i");
        await organiser.Page.Keyboard.TypeAsync(before == "Cindrava rufa" ? "Cindrava adventa" : "Cindrava rufa");
        await Expect(organiser.Decision.GetByRole(AriaRole.Option)).ToHaveCountAsync(1);
        await organiser.PressAsync("ArrowDown", "Enter");
        await Expect(organiser.Decision).ToContainTextAsync("the name that was sent stays beside it");
        await organiser.Page.Keyboard.TypeAsync("The tail is white.");
        await organiser.StepAsync("identify");
        await organiser.PressAsync("Enter");
        await Expect(organiser.Decision).ToContainTextAsync("Named afresh, Confirmed: ");

        await organiser.PressAsync("k");
        await Expect(name).Not.ToHaveTextAsync(before);
        await Expect(organiser.Page.Locator(".subtitle")).ToContainTextAsync($"sent as {before}");
        await Expect(organiser.Page.GetByRole(AriaRole.Region, new() { Name = "History" })).ToContainTextAsync("identified as");
        await organiser.StepAsync("identified");
        await organiser.PressAsync("u");
        await Expect(name).ToHaveTextAsync(before);
    });

    [Fact]
    public Task OfTwoWhoDecideAtOnceTheSecondIsShownTheFirstAndCanGoOn() => ReviewerAsync("A. Organiser", first => ReviewerAsync("B. Reviewer", async second =>
    {
        Assert.Equal(await first.Page.Locator(".record h2").InnerTextAsync(), await second.Page.Locator(".record h2").InnerTextAsync());
        await second.PressAsync("r");
        await second.Page.Keyboard.TypeAsync("No photograph.");
        await first.PressAsync("c");
        await Expect(first.Decision).ToContainTextAsync("Confirmed: ");

        await second.PressAsync("Enter");
        await Expect(second.Decision.GetByRole(AriaRole.Alert)).ToContainTextAsync("Not as things stand. The record changed after you had seen it.");
        await Expect(second.Page.Locator(".record .subtitle")).ToContainTextAsync("Confirmed");
        await Expect(second.Page.GetByRole(AriaRole.Region, new() { Name = "History" })).ToContainTextAsync("A. Organiser");
        await Expect(second.Page.GetByLabel("Why is it rejected?")).ToHaveValueAsync("No photograph.");
        await second.StepAsync("decided-meanwhile");

        // Having seen what the other decided, they may still decide otherwise.
        await second.Button("Reject it").ClickAsync();
        await Expect(second.Decision).ToContainTextAsync("Rejected: ");
        await Expect(second.Queue.First).ToContainTextAsync("Rejected");
    }));

    private Task ReviewerAsync(string name, Func<Organiser, Task> does)
    {
        var token = Chromium.Find() is null ? "" : desk.MakeToken(name).Secret;
        return site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                var organiser = new Organiser(visitor, "desktop");
                await organiser.SignInAsync(token);
                await organiser.ReviewsAsync();
                await does(organiser);
            },
            at: desk.Address);
    }
}
