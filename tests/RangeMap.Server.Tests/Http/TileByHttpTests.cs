using System.IO.Compression;
using System.Net;

namespace RangeMap.Server.Tests.Http;

/// <summary>How tiles are sent: packed under tags of their own, not again where they are known, and the same on every way through the server.</summary>
public sealed class TileByHttpTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference,recordedBy\n", Tile = "/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0", Empty = "/api/v1/taxa/prima/tiles/WebMercatorQuad/6/0/0";

    /// <summary>So many squares that packing pays.</summary>
    private static readonly string Table = Header + string.Concat(Enumerable.Range(0, 60).Select(i => $"p{i},Inventa prima,2005-06-01,NZ{i % 10}{i / 10},A. Invented\n"));

    [Theory]
    [InlineData(Tile)]
    [InlineData("/ogc/collections/presence/tiles/BritishNationalGrid/0/0/0?taxonID=prima")]
    public async Task EveryCodingHasItsOwnStrongTagAndHoldsTheSameTile(string address)
    {
        await using var server = await RunningServer.StartAsync(Table);
        var plain = await AskAsync(server, address);
        foreach (var (asked, coding) in ((string, string?)[])[("gzip, deflate, br", "br"), ("gzip", "gzip"), ("br;q=0, gzip;q=0.5", "gzip"), ("identity", null), ("br;q=0.0", null), ("deflate", null)])
        {
            var packed = await AskAsync(server, address, asked);
            Assert.Equal(coding, packed.Coding);
            Assert.Equal(plain.Bytes, Unpacked(packed));
            Assert.Equal(coding is null, packed.Tag == plain.Tag);
            Assert.DoesNotContain("W/", packed.Tag, StringComparison.Ordinal);
            // Again, by the short way that ready tiles take.
            Assert.Equal((packed.Tag, packed.Coding), ((await AskAsync(server, address, asked)) is var again ? (again.Tag, again.Coding) : default));
            Assert.Equal(HttpStatusCode.NotModified, (await AskAsync(server, address, asked, packed.Tag)).Status);
        }
    }

    [Fact]
    public async Task TheLongWayAndTheShortWaySendTheSameHeaders()
    {
        await using var server = await RunningServer.StartAsync(Table);
        using var first = await server.Client.GetAsync(Tile);
        using var second = await server.Client.GetAsync(Tile);
        Assert.Equal(Headers(first), Headers(second));
        Assert.Contains("ETag", Headers(first), StringComparison.Ordinal);
        Assert.Contains("Access-Control-Allow-Origin=*", Headers(first), StringComparison.Ordinal);
        Assert.Contains("X-Content-Type-Options=nosniff", Headers(second), StringComparison.Ordinal);
        Assert.Contains("Vary=Accept-Encoding", Headers(second), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnImportChangesTheTagOfTilesItTouchesAndNoOther()
    {
        await using var server = await RunningServer.StartAsync(Table);
        var (touched, other) = (await AskAsync(server, Tile), await AskAsync(server, Empty));
        Assert.Empty(other.Bytes);
        await server.Data.ImportTableAsync(Header + "later,Inventa prima,2006-06-01,SU1234,A. Invented\n");
        // The server looks for a new edition every half second.
        await Task.Delay(600);
        var later = await AskAsync(server, Tile, known: touched.Tag);
        Assert.Equal(HttpStatusCode.OK, later.Status);
        Assert.NotEqual(touched.Tag, later.Tag);
        Assert.NotEqual(touched.Bytes, later.Bytes);
        Assert.Equal(HttpStatusCode.NotModified, (await AskAsync(server, Empty, known: other.Tag)).Status);
    }

    [Fact]
    public async Task AKnownTagMayStandInAListOrBeWeakened()
    {
        await using var server = await RunningServer.StartAsync(Table);
        var tile = await AskAsync(server, Tile);
        foreach (var known in (string[])[$"\"other\", {tile.Tag}", $"W/{tile.Tag}", "*"])
            Assert.Equal(HttpStatusCode.NotModified, (await AskAsync(server, Tile, known: known)).Status);
        Assert.Equal(HttpStatusCode.OK, (await AskAsync(server, Tile, known: "\"other\"")).Status);
    }

    [Fact]
    public async Task ATileOfAFrozenEditionMayBeKept()
    {
        await using var server = await RunningServer.StartAsync(Table);
        var frozen = await server.Data.RunAsync("edition", "freeze", "--title", "Invented", "--json");
        var id = frozen.Json.Text("id");
        using var answer = await server.Client.GetAsync($"{Tile}?edition={id}");
        Assert.Equal(TimeSpan.FromDays(1), answer.Headers.CacheControl!.MaxAge);
        using var live = await server.Client.GetAsync(Tile);
        Assert.True(live.Headers.CacheControl!.NoCache);
        Assert.Equal(live.Headers.ETag, answer.Headers.ETag);
    }

    private static string Headers(HttpResponseMessage answer) => string.Join('\n', answer.Headers.Concat(answer.Content.Headers)
        .Where(header => header.Key != "Date").Select(header => $"{header.Key}={string.Join(',', header.Value)}").Order(StringComparer.Ordinal));

    private static byte[] Unpacked(Answer answer)
    {
        using Stream packed = answer.Coding switch
        {
            "br" => new BrotliStream(new MemoryStream(answer.Bytes), CompressionMode.Decompress),
            "gzip" => new GZipStream(new MemoryStream(answer.Bytes), CompressionMode.Decompress),
            _ => new MemoryStream(answer.Bytes),
        };
        using var plain = new MemoryStream();
        packed.CopyTo(plain);
        return plain.ToArray();
    }

    private static async Task<Answer> AskAsync(RunningServer server, string address, string? coding = null, string? known = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        if (coding is not null)
            request.Headers.TryAddWithoutValidation("Accept-Encoding", coding);
        if (known is not null)
            request.Headers.TryAddWithoutValidation("If-None-Match", known);
        using var answer = await server.Client.SendAsync(request);
        return new(answer.StatusCode, answer.Headers.ETag!.ToString(), answer.Content.Headers.ContentEncoding.SingleOrDefault(), await answer.Content.ReadAsByteArrayAsync());
    }

    private sealed record Answer(HttpStatusCode Status, string Tag, string? Coding, byte[] Bytes);
}
