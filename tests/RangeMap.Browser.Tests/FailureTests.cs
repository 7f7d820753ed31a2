using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>What the page says when things go wrong.</summary>
public class FailureTests(DemoSite site)
{
    [Fact]
    public Task AnUnknownSpeciesIsToldInWords() => site.VisitAsync(async visitor =>
    {
        visitor.ExpectsFailedAnswers = true;
        await visitor.OpenAsync("#taxon=no-such-thing");
        await Expect(visitor.Page.Locator("#species").GetByRole(AriaRole.Alert)).ToContainTextAsync("no-such-thing");
        await visitor.Search.FillAsync("harbour");
        await visitor.Found.First.ClickAsync();
        await Expect(visitor.Heading).ToHaveTextAsync("harbour ember-wing");
    });

    [Fact]
    public async Task AServerThatStoppedIsToldAndTriedAgain()
    {
        var server = await site.StartServerAsync();
        var address = DemoSite.AddressOf(server);
        await site.VisitAsync(
            async visitor =>
            {
                visitor.ExpectsFailedAnswers = true;
                await visitor.OpenAsync();
                await server.DisposeAsync();
                await visitor.Page.Locator(".offered button").First.ClickAsync();
                var alert = visitor.Page.Locator("#species").GetByRole(AriaRole.Alert);
                await Expect(alert).ToContainTextAsync("The server does not answer. Check the connection, then try again.");

                await using var again = await site.StartServerAsync(address.AbsoluteUri);
                await alert.GetByRole(AriaRole.Button, new() { Name = "Try again" }).ClickAsync();
                await Expect(visitor.Heading).ToBeVisibleAsync();
            },
            at: address);
    }
}
