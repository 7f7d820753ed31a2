using Microsoft.Playwright;

namespace RangeMap.Browser.Tests;

/// <summary>Looks for things on a page that lie over one another.</summary>
internal static class Overlaps
{
    // Pairs of texts and controls, neither within the other, whose visible parts, line by line, share more than a hair. A bar that is
    // stuck to the window and an opened list lie over other things on purpose; a scrolled list shows only what is within it.
    private const string Find = """
        () => {
          const names = 'button, input, select, textarea, a, h1, h2, h3, h4, p, dt, dd, th, td, label, summary, li > span, progress';
          const shown = (e, { left, top, right, bottom }) => {
            for (let p = e.parentElement; p !== null; p = p.parentElement) {
              const style = getComputedStyle(p);
              if (style.overflowX === 'visible' && style.overflowY === 'visible') continue;
              const room = p.getBoundingClientRect();
              [left, top, right, bottom] = [Math.max(left, room.left), Math.max(top, room.top), Math.min(right, room.right), Math.min(bottom, room.bottom)];
            }
            return { left, top, right, bottom };
          };
          const isRaised = ({ position, zIndex }) => position === 'fixed' || (position === 'sticky' && zIndex !== 'auto');
          const layer = (e) => { while (e !== null && !isRaised(getComputedStyle(e))) e = e.parentElement; return e; };
          const hasOwn = (e) => e.matches('button, input, select, textarea, a, progress') || [...e.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent.trim() !== '');
          const all = [...document.querySelectorAll(names)]
            .filter((e) => e.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && hasOwn(e) && !e.classList.contains('skip') && e.closest('.ol-viewport, [role=listbox]') === null)
            .flatMap((e) => [...e.getClientRects()].map((line) => ({ e, box: shown(e, line), on: layer(e) }))).filter(({ box }) => box.right - box.left > 2 && box.bottom - box.top > 2);
          const say = (e) => `${e.localName} "${(e.textContent || e.id).trim().slice(0, 30)}"`;
          const found = [];
          for (let i = 0; i < all.length; i++) {
            for (let j = i + 1; j < all.length; j++) {
              const [a, b] = [all[i], all[j]];
              if (a.on !== b.on || a.e.contains(b.e) || b.e.contains(a.e)) continue;
              const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
              const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
              if (wide > 2 && high > 2) found.push(`${say(a.e)} and ${say(b.e)}`);
            }
          }
          return found.slice(0, 10);
        }
        """;

    /// <summary>Fails with the pairs that lie over one another.</summary>
    public static async Task AssertNoneAsync(IPage page, string step)
    {
        var found = await page.EvaluateAsync<string[]>(Find);
        Assert.True(found.Length == 0, $"{step}: {string.Join("; ", found)}");
    }
}
