using System.Net.Http.Headers;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;
using RangeMap.Server.Tests.Demo;
using RangeMap.Store;

namespace RangeMap.Server.Tests.Http;

/// <summary>The invented scheme of the demo, served; it has a species that spreads, refused rows and records to review.</summary>
public sealed class DemoServer : IAsyncLifetime
{
    private readonly DemoTruthTests.MadeDemo _demo = new();
    private WebApplication _host = null!;

    /// <summary>Asks with a token for everything.</summary>
    internal HttpClient Client { get; private set; } = null!;

    /// <summary>The data.</summary>
    internal DataFolder Folder => _demo.Folder;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        await _demo.InitializeAsync();
        _host = ServerHost.Build(Folder, "http://127.0.0.1:0", FixedClock.Winter2026);
        await _host.StartAsync();
        Client = new() { BaseAddress = new(_host.Urls.Single()) };
        var (_, secret) = new TokenStore(Folder.Database, FixedClock.Winter2026).Make("A. Organiser", [.. RightText.All.Keys]);
        Client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", secret);
    }

    /// <summary>An answer that must be JSON of some kind.</summary>
    internal async Task<(JsonNode Json, string MediaType)> GetAsync(string address)
    {
        using var answer = await Client.GetAsync(address);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, $"{address}: {answer.StatusCode} {text}");
        return (JsonNode.Parse(text)!, answer.Content.Headers.ContentType!.MediaType!);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _host.DisposeAsync();
        await _demo.DisposeAsync();
    }
}
