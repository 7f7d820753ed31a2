using Microsoft.AspNetCore.Builder;
using RangeMap.Server;
using RangeMap.Store;
using RangeMap.TestKit;

namespace RangeMap.Browser.Tests;

/// <summary>An invented scheme of its own for the desk, since its tests change the data.</summary>
public sealed class DeskSite : IAsyncLifetime
{
    private const long Rows = 12_000;
    private readonly TemporaryFolder _folder = new();

    /// <summary>The server; a test that stops it puts another in its place.</summary>
    public WebApplication? Server { get; private set; }

    /// <summary>Where it is served.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Chromium.Find() is null)
            return;
        await MakeDemo.RunAsync(DataFolder.Open(_folder.Path), new() { Rows = Rows }, TimeProvider.System);
        await StartAsync("http://127.0.0.1:0");
    }

    /// <summary>A token for both rights, with its number.</summary>
    public (long Number, string Secret) MakeToken(string name) => Tokens().Make(name, [.. RightText.All.Keys]);

    /// <summary>Files that were sent and are not part of the data yet, whole or in part.</summary>
    public IReadOnlyList<string> Waiting => Directory.Exists(Uploads) ? [.. Directory.EnumerateFiles(Uploads).Select(file => Path.GetFileName(file))] : [];

    private string Uploads => Path.Combine(_folder.Path, "uploads");

    /// <summary>Makes a token count no more.</summary>
    public void Revoke(long number) => Tokens().Revoke(number);

    /// <summary>Stops the server.</summary>
    public async Task StopAsync()
    {
        await Server!.DisposeAsync();
        Server = null;
    }

    /// <summary>Starts it again where it was.</summary>
    public Task StartAgainAsync() => StartAsync(Address.AbsoluteUri);

    /// <summary>Starts another server over the same data, which takes files up to a length.</summary>
    public async Task<WebApplication> StartBesideAsync(long mostUploadBytes)
    {
        var beside = ServerHost.Build(DataFolder.Open(_folder.Path), "http://127.0.0.1:0", TimeProvider.System, new() { MostUploadBytes = mostUploadBytes });
        await beside.StartAsync();
        return beside;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (Server is not null)
            await Server.DisposeAsync();
        _folder.Dispose();
    }

    private async Task StartAsync(string address)
    {
        Server = ServerHost.Build(DataFolder.Open(_folder.Path), address, TimeProvider.System);
        await Server.StartAsync();
        Address = DemoSite.AddressOf(Server);
    }

    private TokenStore Tokens() => new(DataFolder.Open(_folder.Path).Database, TimeProvider.System);
}
