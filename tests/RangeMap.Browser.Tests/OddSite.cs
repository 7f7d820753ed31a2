using Microsoft.AspNetCore.Builder;
using RangeMap.Server;
using RangeMap.TestKit;

namespace RangeMap.Browser.Tests;

/// <summary>A data folder whose one species has letters in its identifier that mean something to shells, programs and addresses. All invented.</summary>
public sealed class OddSite : IAsyncLifetime
{
    /// <summary>The identifier.</summary>
    public const string Taxon = """odd'id "q" $HOME `id` \n & 100% #1 + ü""";

    private readonly TemporaryFolder _folder = new();
    private WebApplication? _server;

    /// <summary>Where it is served.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        await RunAsync("taxa", _folder.Write("taxa.csv", $"taxonID,scientificName\n\"{Taxon.Replace("\"", "\"\"", StringComparison.Ordinal)}\",Inventa prima\nsecunda,Inventa secunda\n"));
        await RunAsync("import", _folder.Write("records.csv", "scientificName,eventDate,gridReference\nInventa prima,2005-06-01,NZ2563\nInventa prima,2007-06-01,SU1234\nInventa secunda,2006-06-01,NZ2563\n"), "--dataset", "odd");
        _server = ServerHost.Build(DataFolder.Open(_folder.File("data")), "http://127.0.0.1:0", TimeProvider.System);
        await _server.StartAsync();
        Address = DemoSite.AddressOf(_server);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_server is not null)
            await _server.DisposeAsync();
        _folder.Dispose();
    }

    private async Task RunAsync(params string[] arguments)
    {
        using var said = new StringWriter();
        Assert.True(await CommandLine.RunAsync([.. arguments, "--data", _folder.File("data")], new(said, said, TextReader.Null, TimeProvider.System)) == 0, said.ToString());
    }
}
