using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace RangeMap.Browser.Tests;

/// <summary>Someone who uses the page with keyboard and mouse, and notes all that goes wrong.</summary>
public sealed class Visitor
{
    /// <summary>The invented species that arrives and spreads.</summary>
    public const string Arriving = "#taxon=cindrava-adventa";

    // What the browser says of the tests' own reading of the map.
    private const string OwnReading = "Canvas2D: Multiple readback operations";

    private readonly Uri _site;
    private readonly ConcurrentQueue<string> _wrong = new();

    /// <summary>Watches a new page of a site.</summary>
    public Visitor(IPage page, Uri site)
    {
        (Page, _site) = (page, site);
        Watch(page);
    }

    /// <summary>The page.</summary>
    public IPage Page { get; private set; }

    /// <summary>Where failed answers are what the test is about, they are no fault of the page.</summary>
    public bool ExpectsFailedAnswers { get; set; }

    /// <summary>The box to type a species into.</summary>
    public ILocator Search => Page.GetByRole(AriaRole.Combobox, new() { Name = "Find a species" });

    /// <summary>The species found by what was typed.</summary>
    public ILocator Found => Page.GetByRole(AriaRole.Listbox).GetByRole(AriaRole.Option);

    /// <summary>The name of the chosen species.</summary>
    public ILocator Heading => Page.GetByRole(AriaRole.Heading, new() { Level = 2 });

    /// <summary>The legend.</summary>
    public ILocator Legend => Page.GetByRole(AriaRole.Region, new() { Name = "Legend" });

    /// <summary>Lines of the legend, newest first.</summary>
    public ILocator Key => Legend.Locator(".key li");

    /// <summary>The panel under the legend.</summary>
    public ILocator Details => Page.GetByRole(AriaRole.Tabpanel);

    /// <summary>The slider through the years.</summary>
    public ILocator Years => Page.GetByRole(AriaRole.Slider);

    /// <summary>The whole address of a path of the site.</summary>
    public string AddressOf(string path) => new Uri(_site, path).AbsoluteUri;

    /// <summary>Opens the site at a view and waits for its squares to be drawn.</summary>
    public async Task OpenAsync(string hash = "")
    {
        await Page.GotoAsync(new Uri(_site, hash).AbsoluteUri);
        await Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
    }

    /// <summary>Opens what can be taken away of the species.</summary>
    public async Task<ILocator> OpenTakeAwayAsync()
    {
        var fold = Page.GetByRole(AriaRole.Region, new() { Name = "Take away" });
        await fold.Locator("summary").ClickAsync();
        return fold;
    }

    /// <summary>Opens a whole address in another page of the same window, and stays on that.</summary>
    public async Task OpenInNewPageAsync(string address)
    {
        Page = await Page.Context.NewPageAsync();
        Watch(Page);
        await Page.GotoAsync(address);
        await Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
    }

    /// <summary>Waits until the address holds a part.</summary>
    public Task SeesInAddressAsync(string part) => Assertions.Expect(Page).ToHaveURLAsync(new Regex(Regex.Escape(part)));

    /// <summary>The number of squares that the legend's heading tells, once it has answered.</summary>
    public async Task<int> SquaresToldAsync()
    {
        var told = await Legend.Locator("h3 .aside").TextContentAsync() ?? "";
        return int.Parse(told.Split(' ')[0], NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
    }

    /// <summary>Fails when the page reported an error or asked anything of another place.</summary>
    public void AssertNothingWentWrong() => Assert.Empty(_wrong);

    private bool IsExpected(string message) =>
        message.StartsWith(OwnReading, StringComparison.Ordinal)
        || (ExpectsFailedAnswers && message.StartsWith("Failed to load resource", StringComparison.Ordinal));

    private void Watch(IPage page)
    {
        page.PageError += (_, error) => _wrong.Enqueue($"error: {error}");
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" && !IsExpected(message.Text))
                _wrong.Enqueue($"console: {message.Text}");
        };
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(_site.AbsoluteUri, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal))
                _wrong.Enqueue($"asked elsewhere: {request.Url}");
        };
    }
}
