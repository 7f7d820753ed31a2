using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace RangeMap.Server.Tests.Http;

/// <summary>The feed of new squares, by the rules of RFC 4287.</summary>
public sealed partial class FeedByHttpTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    [Theory]
    [InlineData("prima", "")]
    [InlineData("prima", "?grid=1km&quality=all")]
    [InlineData("gemella-agg", "?region=England")]
    [InlineData("Inventa%20quarta%20nulla", null)]
    public async Task TheFeedHasAllThatTheStandardAsksFor(string taxon, string? query)
    {
        if (query is null)
        {
            await world.Server.GetProblemAsync($"/api/v1/taxa/{taxon}/new-squares.atom", System.Net.HttpStatusCode.NotFound);
            return;
        }

        var feed = await FeedAsync(taxon + "/new-squares.atom" + query);
        Assert.Equal(Atom + "feed", feed.Name);
        // 4.1.1: exactly one id, title and updated; an author, as no entry has one; at most one subtitle, rights and generator; one link to itself.
        foreach (var name in (string[])["id", "title", "updated", "author", "rights", "generator"])
            Assert.Single(feed.Elements(Atom + name));
        Assert.Equal("self", (string?)feed.Elements(Atom + "link").Single().Attribute("rel"));
        Assert.NotEmpty(feed.Elements(Atom + "entry"));
        foreach (var entry in feed.Elements(Atom + "entry"))
        {
            // 4.1.2: exactly one id, title and updated, at most one content and published.
            foreach (var name in (string[])["id", "title", "updated", "published", "content"])
                Assert.Single(entry.Elements(Atom + name));
            Assert.Equal("alternate", (string?)entry.Elements(Atom + "link").Single().Attribute("rel"));
        }

        // 4.2.6: identifiers are IRIs, unique in the feed; RFC 4151: tag:authority,date:specific.
        var identifiers = feed.DescendantsAndSelf().Elements(Atom + "id").Select(id => id.Value).ToList();
        Assert.Equal(identifiers.Distinct(), identifiers);
        Assert.All(identifiers, id => Assert.Matches(TagUri(), id));
        // 3.3: dates of RFC 3339 with capital T and Z.
        Assert.All(feed.Descendants().Where(element => element.Name.LocalName is "updated" or "published"), date =>
            Assert.True(DateTimeOffset.TryParseExact(date.Value, "yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out _), date.Value));
        Assert.All(feed.Descendants(Atom + "link"), link => Assert.True(Uri.TryCreate((string?)link.Attribute("href"), UriKind.Absolute, out _)));
    }

    [Fact]
    public async Task TheNewestSquareComesFirstWithItsDate()
    {
        var entries = (await FeedAsync("prima/new-squares.atom")).Elements(Atom + "entry").ToList();
        Assert.Equal(["Inventa prima in WV64", "Inventa prima in J37", "Inventa prima in SU13", "Inventa prima in NZ26"], entries.Select(entry => (string?)entry.Element(Atom + "title")));
        Assert.Equal("First for this square on 1 Jun 2014.", (string?)entries[0].Element(Atom + "content"));
        Assert.Equal("2014-06-01T00:00:00Z", (string?)entries[0].Element(Atom + "updated"));
        Assert.EndsWith("new-squares/prima/10km/WV64", (string?)entries[0].Element(Atom + "id"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheFeedHasATypeAndATag()
    {
        using var answer = await world.Server.Client.GetAsync("/api/v1/taxa/prima/new-squares.atom");
        Assert.Equal("application/atom+xml", answer.Content.Headers.ContentType?.MediaType);
        Assert.NotNull(answer.Headers.ETag);
    }

    private async Task<XElement> FeedAsync(string address) => XDocument.Parse(await world.Server.GetAsync($"/api/v1/taxa/{address}")).Root!;

    [GeneratedRegex(@"^tag:[a-z0-9.-]+,2026:[A-Za-z0-9/%._~-]+$")]
    private static partial Regex TagUri();
}
