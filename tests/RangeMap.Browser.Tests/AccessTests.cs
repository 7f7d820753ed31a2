using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace RangeMap.Browser.Tests;

/// <summary>Use without a mouse, without colour, and by a reader of screens.</summary>
public partial class AccessTests(DemoSite site)
{
    // Contrast as in WCAG 2.2, success criterion 1.4.3: 4.5 to 1, or 3 to 1 for text of 24 pixels or more. Lists the texts below.
    private const string TooFaint = """
        () => {
          const rgb = (text) => text.match(/[\d.]+/g).map(Number);
          const channel = (v) => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
          const luminance = ([r, g, b]) => 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
          const backdrop = (e) => {
            for (; e !== null; e = e.parentElement) {
              const colour = rgb(getComputedStyle(e).backgroundColor);
              if (colour.length === 3 || colour[3] === 1) return colour;
            }
            return [255, 255, 255];
          };
          const faint = [];
          for (const e of document.querySelectorAll('body *')) {
            const hasText = [...e.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent.trim() !== '');
            if (!hasText || !e.checkVisibility() || e.closest('option') !== null) continue;
            const style = getComputedStyle(e);
            const [a, b] = [luminance(rgb(e instanceof SVGElement ? style.fill : style.color)), luminance(backdrop(e))];
            const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
            if (ratio < (parseFloat(style.fontSize) >= 24 ? 3 : 4.5)) faint.push(`${e.textContent.trim().slice(0, 40)}: ${ratio.toFixed(2)}`);
          }
          return faint;
        }
        """;

    [Theory]
    [InlineData("")]
    [InlineData($"{Visitor.Arriving}&square=TG30")]
    [InlineData($"{Visitor.Arriving}&mode=arrival&panel=spread")]
    public Task EveryControlHasAName(string view) => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync(view);
        var told = await visitor.Page.Locator("body").AriaSnapshotAsync();
        Assert.Matches(NamedControl(), told);
        Assert.DoesNotMatch(NamelessControl(), told);
    });

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public Task EveryTextStandsOutFromItsGround(ColorScheme scheme) => site.VisitAsync(
        async visitor =>
        {
            foreach (var view in new[] { "", $"{Visitor.Arriving}&square=TG30", $"{Visitor.Arriving}&mode=arrival&panel=spread" })
            {
                await visitor.OpenAsync(view);
                Assert.Empty(await visitor.Page.EvaluateAsync<string[]>(TooFaint));
            }
        },
        new() { ViewportSize = new() { Width = 1400, Height = 900 }, ColorScheme = scheme });

    [Fact]
    public Task AllIsReachedByKeyboardFromSearchToSpread() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await TabToAsync(visitor, "species-input");
        await visitor.Page.Keyboard.TypeAsync("harbour");
        await Expect(visitor.Found).ToHaveCountAsync(1);
        await visitor.Page.Keyboard.PressAsync("Enter");
        await Expect(visitor.Heading).ToHaveTextAsync("harbour ember-wing");

        await TabToAsync(visitor, "mode-presence");
        await visitor.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(visitor.Page.GetByLabel("Arrival", new() { Exact = true })).ToBeCheckedAsync();
        await TabToAsync(visitor, "size-10km");
        await visitor.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(visitor.Page.GetByLabel("5 km", new() { Exact = true })).ToBeCheckedAsync();

        await TabToAsync(visitor, "tab-square");
        await visitor.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(visitor.Details).ToContainTextAsync("km a year");
    });

    [Fact]
    public Task TheMapMovesByKeyboard() => site.VisitAsync(async visitor =>
    {
        await visitor.OpenAsync();
        await TabToAsync(visitor, "map");
        await visitor.Page.Keyboard.PressAsync("+");
        await visitor.SeesInAddressAsync("at=");
        var before = visitor.Page.Url;
        await visitor.Page.Keyboard.PressAsync("ArrowUp");
        await Expect(visitor.Page).Not.ToHaveURLAsync(before);
    });

    private static async Task TabToAsync(Visitor visitor, string id)
    {
        for (var step = 0; step < 60; step++)
        {
            if (await visitor.Page.EvaluateAsync<string>("() => document.activeElement?.id ?? ''") == id)
                return;
            await visitor.Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"The Tab key does not reach '{id}'.");
    }

    [GeneratedRegex("""- (button|radio|combobox|searchbox|textbox|slider|tab|link) "[^"]+""")]
    private static partial Regex NamedControl();

    [GeneratedRegex("""(?m)^\s*- (button|radio|combobox|searchbox|textbox|slider|tab|link|img|application)\b(?! ")""")]
    private static partial Regex NamelessControl();
}
