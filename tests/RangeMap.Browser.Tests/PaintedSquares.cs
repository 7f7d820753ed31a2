using System.Globalization;
using Microsoft.Playwright;

namespace RangeMap.Browser.Tests;

/// <summary>Reads the map as the eye does: pixels in the colours of the legend.</summary>
internal static class PaintedSquares
{
    private const int MostLooks = 60;
    private const int PauseMs = 150;

    // Gives the number of pixels in the colours of the legend's swatches, and a place well inside a patch of one colour, in pixels of the page.
    private const string Look = """
        () => {
          const hexes = [...document.querySelectorAll('.key .swatch')].map((s) => getComputedStyle(s).getPropertyValue('--swatch').trim());
          const wanted = new Set(hexes.map((hex) => parseInt(hex.slice(1), 16)));
          let count = 0, x = 0, y = 0;
          for (const canvas of document.querySelectorAll('#map canvas')) {
            const { width, height } = canvas;
            if (width === 0 || height === 0) continue;
            const box = canvas.getBoundingClientRect();
            const data = canvas.getContext('2d').getImageData(0, 0, width, height).data;
            const at = (i) => data[4 * i + 3] === 255 ? data[4 * i] << 16 | data[4 * i + 1] << 8 | data[4 * i + 2] : -1;
            for (let i = 0; i < width * height; i++) {
              const colour = at(i);
              if (!wanted.has(colour)) continue;
              count++;
              if ([5, -5, 5 * width, -5 * width].every((step) => at(i + step) === colour))
                [x, y] = [box.left + (i % width) * box.width / width, box.top + Math.floor(i / width) * box.height / height];
            }
          }
          return [count, Math.round(x), Math.round(y)];
        }
        """;

    /// <summary>Number of painted pixels, above 0, once the map has come to rest.</summary>
    public static async Task<int> CountAsync(IPage page) => (await LookAsync(page))[0];

    /// <summary>A place of the page inside a painted square of at least ten pixels.</summary>
    public static async Task<(int X, int Y)> AnyPlaceAsync(IPage page)
    {
        var seen = await LookAsync(page);
        Assert.True(seen[1] > 0, "No square is large enough to be clicked at its middle.");
        return (seen[1], seen[2]);
    }

    private static async Task<int[]> LookAsync(IPage page)
    {
        var (before, still) = (-1, 0);
        for (var look = 0; look < MostLooks; look++)
        {
            await page.WaitForTimeoutAsync(PauseMs);
            var seen = await page.EvaluateAsync<int[]>(Look);
            still = seen[0] > 0 && seen[0] == before ? still + 1 : 0;
            before = seen[0];
            if (still == 3)
                return seen;
        }

        throw new TimeoutException(string.Create(CultureInfo.InvariantCulture, $"The map is empty or still changing after {MostLooks} looks."));
    }
}
