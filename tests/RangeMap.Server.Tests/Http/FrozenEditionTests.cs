using System.Net;

namespace RangeMap.Server.Tests.Http;

/// <summary>A frozen edition gives the same bytes after later imports, and its name is the hash of its content.</summary>
public sealed class FrozenEditionTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference,recordedBy\n";

    [Fact]
    public async Task AnOldEditionGivesTheSameBytesAfterAnImport()
    {
        await using var server = await RunningServer.StartAsync(Header + "a,Inventa prima,2005-06-01,NZ2563,A. Invented\ns,Inventa secreta,2006-06-01,NZ211612,A. Invented\n");
        var id = (await server.Data.RunAsync("edition", "freeze", "--title", "Invented atlas", "--json")).Json.Text("id");
        string[] addresses =
        [
            $"/api/v1/taxa/prima/presence?edition={id}", $"/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0?edition={id}", $"/api/v1/taxa/prima/tiles.json?edition={id}",
            $"/api/v1/exports/presence?edition={id}", $"/api/v1/exports/presence?format=geojson&edition={id}", $"/api/v1/exports/effort?edition={id[..8]}", $"/api/v1/exports/presence?format=gpkg&edition={id}",
        ];
        var before = await AskAsync(server, addresses);
        await server.Data.ImportTableAsync(Header + "b,Inventa prima,2012-06-01,SU1234,B. Invented\n");
        await Task.Delay(600);
        // Not only kept answers: made afresh, they are the same.
        Directory.Delete(Path.Combine(server.Data.Data, "exports"), recursive: true);
        Assert.Equal(before, await AskAsync(server, addresses));
        Assert.Contains("SU13", await server.GetAsync("/api/v1/taxa/prima/presence"), StringComparison.Ordinal);
        Assert.DoesNotContain("NZ2161", await server.GetAsync($"/api/v1/exports/presence?grid=1km&edition={id}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task EqualDataHaveTheSameNameAndTheContentHashesToIt()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync(Header + "a,Inventa prima,2005-06-01,NZ2563,A. Invented\n");
        var first = (await data.RunAsync("edition", "freeze", "--json")).Json;
        Assert.Equal(first.Text("id"), (await data.RunAsync("edition", "freeze", "--json")).Json.Text("id"));
        var content = await File.ReadAllBytesAsync(Path.Combine(data.Data, "editions", first.Text("id"), "cube.bin"));
        Assert.Equal(first.Text("id"), Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(content)));
        Assert.Equal((1, 1, 1), (first.Int("taxa"), first.Int("records"), first.Int("squares")));
        Assert.Single((await data.RunAsync("edition", "list", "--json")).JsonLines);
    }

    [Fact]
    public async Task AnEditionTellsHowToCiteItAndMayBeWithdrawn()
    {
        await using var server = await RunningServer.StartAsync(Header + "a,Inventa prima,2005-06-01,NZ2563,A. Invented\n");
        var id = (await server.Data.RunAsync("edition", "freeze", "--title", "Invented \"atlas\"", "--json")).Json.Text("id");
        (await server.GetAsync($"/api/v1/editions/{id}/citation.cff")).ShouldSay($"title: \"Invented \\\"atlas\\\"\"");
        Assert.Equal("http://datacite.org/schema/kernel-4", (await server.GetJsonAsync($"/api/v1/editions/{id}/datacite.json")).Text("schemaVersion"));
        (await server.GetJsonAsync($"/api/v1/editions/{id}")).Text("citation").ShouldSay($"sha256:{id}");
        Assert.Equal(0, (await server.Data.RunAsync("edition", "withdraw", id, "--reason", "A place should not be known.")).Exit);
        (await server.GetProblemAsync($"/api/v1/exports/presence?edition={id}", HttpStatusCode.Gone)).ShouldSay("should not be known");
    }

    [Fact]
    public async Task AnEditionHoldsNoSingleRecords()
    {
        await using var server = await RunningServer.StartAsync(Header + "a,Inventa prima,2005-06-01,NZ2563,A. Invented\n");
        var id = (await server.Data.RunAsync("edition", "freeze", "--json")).Json.Text("id");
        (await server.GetProblemAsync($"/api/v1/exports/records?edition={id}", HttpStatusCode.BadRequest)).ShouldSay("single records");
    }

    private static async Task<List<byte[]>> AskAsync(RunningServer server, IEnumerable<string> addresses)
    {
        var answers = new List<byte[]>();
        foreach (var address in addresses)
            answers.Add(await server.Client.GetByteArrayAsync(address));
        return answers;
    }
}
