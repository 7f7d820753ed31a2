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

    /// <summary>A client that bears a new token.</summary>
    public async Task<HttpClient> ClientOfAsync(string name, params string[] rights)
    {
        var made = await Data.RunAsync(["token", "create", name, "--json", .. rights.SelectMany(right => new[] { "--right", right })]);
        var client = new HttpClient { BaseAddress = Client.BaseAddress };
        client.DefaultRequestHeaders.Authorization = new("Bearer", made.Json.Text("token"));
        return client;
    }

    /// <summary>Asks, and must get JSON with this status.</summary>
    public static async Task<JsonNode> JsonAsync(Task<HttpResponseMessage> asking, HttpStatusCode status = HttpStatusCode.OK)
    {
        using var answer = await asking;
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == status, $"{answer.RequestMessage?.RequestUri}: {answer.StatusCode} {text}");
        return JsonNode.Parse(text)!;
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
