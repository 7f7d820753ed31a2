using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using RangeMap.Browser.Tests;
using RangeMap.Server;
using RangeMap.TestKit;

[assembly: AssemblyFixture(typeof(DemoSite))]

namespace RangeMap.Browser.Tests;

/// <summary>One invented scheme, served once for all tests, and one browser.</summary>
public sealed class DemoSite : IAsyncLifetime
{
    private const long Rows = 60_000;

    // Generous, since the machine may be busy; no test waits longer than it must.
    private const float PatienceMs = 20_000;

    private readonly TemporaryFolder _folder = new();
    private WebApplication? _server;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Where the demo is served.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Chromium.Find() is not { } program)
            return;
        Assertions.SetDefaultExpectTimeout(PatienceMs);
        await MakeDemo.RunAsync(DataFolder.Open(_folder.Path), new() { Rows = Rows }, TimeProvider.System);
        _server = await StartServerAsync();
        Address = AddressOf(_server);
        _playwright = await Playwright.CreateAsync();
        _browser = await Chromium.StartAsync(_playwright, program);
    }

    /// <summary>Starts a server of its own over the demo, for a test that stops it.</summary>
    /// <param name="address">Where; a free port where none is named.</param>
    public async Task<WebApplication> StartServerAsync(string address = "http://127.0.0.1:0")
    {
        var server = ServerHost.Build(DataFolder.Open(_folder.Path), address, TimeProvider.System);
        await server.StartAsync();
        return server;
    }

    /// <summary>Asks for what the server reckons long at the first time and then keeps, so that no page waits for it.</summary>
    public async Task AskFirstAsync(string path)
    {
        if (_server is null)
            return;
        using var client = new HttpClient { Timeout = TimeSpan.FromMinutes(3) };
        using var answer = await client.GetAsync(new Uri(Address, path), TestContext.Current.CancellationToken);
        answer.EnsureSuccessStatusCode();
    }

    /// <summary>The address that a started server listens on.</summary>
    public static Uri AddressOf(WebApplication server) => new(server.Urls.Single());

    /// <summary>
    /// Visits the site in a window of its own. The visit fails also when the page reported an error or asked anything of another place.
    /// </summary>
    /// <param name="does">What the visitor does and sees.</param>
    /// <param name="window">Size, scheme and kind of the window; 1400 by 900 pixels and light where not said.</param>
    /// <param name="at">The site, where it is not the shared one.</param>
    public async Task VisitAsync(Func<Visitor, Task> does, BrowserNewContextOptions? window = null, Uri? at = null)
    {
        if (_browser is null)
        {
            if (Environment.GetEnvironmentVariable("CI") is "true" or "1")
                Assert.Fail(Chromium.Missing);
            Assert.Skip(Chromium.Missing);
        }

        window ??= new() { ViewportSize = new() { Width = 1400, Height = 900 } };
        window.Locale = "en-GB";
        await using var context = await _browser.NewContextAsync(window);
        context.SetDefaultTimeout(PatienceMs);
        var visitor = new Visitor(await context.NewPageAsync(), at ?? Address);
        await does(visitor);
        visitor.AssertNothingWentWrong();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_server is not null)
            await _server.DisposeAsync();
        _folder.Dispose();
    }
}
