using Microsoft.Playwright;

namespace RangeMap.Browser.Tests;

/// <summary>Checks what is shown against the rules of WCAG 2.2, levels A and AA, that a program can check.</summary>
internal static class Axe
{
    // One line a fault: the rule, then the elements that break it.
    private const string Run = """
        async () => {
          const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
          const { violations } = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
          return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
        }
        """;

    private static readonly Lazy<string> Engine = new(() => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "axe.min.js")));

    /// <summary>Fails with the rules that the page breaks as it stands.</summary>
    public static async Task AssertAccessibleAsync(IPage page, string step)
    {
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window"))
            await page.EvaluateAsync(Engine.Value);
        var faults = await page.EvaluateAsync<string[]>(Run);
        Assert.True(faults.Length == 0, $"{step}: {string.Join("; ", faults)}");
    }
}
