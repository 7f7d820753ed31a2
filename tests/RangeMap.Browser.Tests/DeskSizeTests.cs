using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>The desk on the narrowest phone and on the widest screen: nothing scrolls sideways, nothing lies over another.</summary>
public class DeskSizeTests(DemoSite site, DeskSite desk) : IClassFixture<DeskSite>
{
    // Invented; the second row is refused.
    private const string File = "scientificName,gridReference,eventDate,recordedBy\nCindrava rufa,SE5013,2021-06-05,A. Person with a Rather Long Name\nCindrava nobody,SE5013,2021-06-05,B. Person\n";

    [Theory]
    [InlineData("narrow", 360, 740)]
    [InlineData("wide", 3840, 2160)]
    public async Task NothingScrollsSidewaysAndNothingLiesOverAnother(string device, int width, int height)
    {
        var token = Chromium.Find() is null ? "" : desk.MakeToken("A. Organiser").Secret;
        await site.VisitAsync(
            async visitor =>
            {
                var organiser = new Organiser(visitor, device);
                await visitor.OpenAsync("desk.html");
                await FitsAsync(organiser, device, "sign-in");
                await organiser.SignInAgainAsync(token);
                await Expect(organiser.Page.Locator(".sent")).ToContainTextAsync("State");
                await FitsAsync(organiser, device, "imports");
                await organiser.SendAsync($"{device}.csv", File, device);
                await Expect(organiser.Page.Locator(".preview")).ToContainTextAsync("1 understood, 1 refused");
                await FitsAsync(organiser, device, "mapping");
                await organiser.ImportsAsync("2", "1", "0", "0", "1");
                await Expect(organiser.Page.Locator(".refusal-rows tbody tr")).ToHaveCountAsync(1);
                await FitsAsync(organiser, device, "report");
                await organiser.ReviewsAsync();
                await FitsAsync(organiser, device, "review");
                await organiser.PressAsync("i");
                await FitsAsync(organiser, device, "identify");
            },
            new() { ViewportSize = new() { Width = width, Height = height }, HasTouch = width < 600, IsMobile = width < 600 },
            desk.Address);
    }

    private static async Task FitsAsync(Organiser organiser, string device, string step)
    {
        await organiser.StepAsync(step);
        await Overlaps.AssertNoneAsync(organiser.Page, $"{device}, {step}");
    }
}
