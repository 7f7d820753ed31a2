using System.Net;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;

namespace RangeMap.Server.Tests.Http;

/// <summary>The real server on a free port of this machine, over a data folder of its own.</summary>
internal sealed class RunningServer : IAsyncDisposable
{
    private RunningServer(DataDirectory data, WebApplication host)
    {
        Data = data;
        Host = host;
        Client = new() { BaseAddress = new(host.Urls.Single()) };
    }

    /// <summary>The data.</summary>
    public DataDirectory Data { get; }

    /// <summary>The program.</summary>
    public WebApplication Host { get; }

    /// <summary>Asks it.</summary>
    public HttpClient Client { get; }

    /// <summary>Starts a server; a table is imported before.</summary>
    public static async Task<RunningServer> StartAsync(string? table = null)
    {
        var data = await DataDirectory.WithTaxaAsync();
        if (table is not null)
            Assert.Equal(0, (await data.ImportTableAsync(table)).Int("refused"));
        var host = ServerHost.Build(data.Open(), "http://127.0.0.1:0", FixedClock.Winter2026);
        await host.StartAsync();
        return new(data, host);
    }

    /// <summary>An address that must answer.</summary>
    public async Task<string> GetAsync(string address)
    {
        using var answer = await Client.GetAsync(address);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address}: {answer.StatusCode} {text}");
        return text;
    }

    /// <summary>An address that must answer with JSON.</summary>
    public async Task<JsonNode> GetJsonAsync(string address) => JsonNode.Parse(await GetAsync(address))!;

    /// <summary>An address that must answer with a problem of this status, in full.</summary>
    public async Task<string> GetProblemAsync(string address, HttpStatusCode status)
    {
        using var answer = await Client.GetAsync(address);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == status, $"{address}: {answer.StatusCode} {text}");
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        var problem = JsonNode.Parse(text)!;
        Assert.NotEmpty(problem.Text("title"));
        Assert.NotEmpty(problem.Text("detail"));
        Assert.Equal((int)status, problem.Int("status"));
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        return problem.Text("detail");
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await Host.DisposeAsync();
        Data.Dispose();
    }
}
