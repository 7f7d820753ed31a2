using System.Xml.Linq;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps.Tests;

public class NewSquaresFeedTests
{
    [Theory]
    [InlineData("2026-05-03", "2026-05-03", "on 3 May 2026")]
    [InlineData("2026-05-01", "2026-05-31", "in May 2026")]
    [InlineData("2026-01-01", "2026-12-31", "in 2026")]
    [InlineData("2024-02-01", "2024-02-29", "in Feb 2024")]
    [InlineData("2026-05-03", "2026-05-04", "between 3 May 2026 and 4 May 2026")]
    [InlineData("1990-01-01", "1999-12-31", "between 1 Jan 1990 and 31 Dec 1999")]
    public void ADateIsToldAsPreciselyAsItIsKnown(string first, string last, string words) => Assert.Equal(words, NewSquaresFeed.InWords(Find(0, first, last)));

    [Fact]
    public async Task OnlyTheNewestTwoHundredSquaresAreTold()
    {
        var finds = Enumerable.Range(0, 300).Select(i => Find(i, DateOnly.FromDayNumber(730_000 + i).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
        var caption = new FeedCaption("a b/<c>", "Inventa <nova>", "New & newest", null, "An invented scheme", "(c)", DateTimeOffset.UnixEpoch, "https://maps.example.org/feed", "https://maps.example.org/{square}", "maps.example.org");
        var feed = XDocument.Parse(await Written.TextAsync(stream => NewSquaresFeed.WriteAsync(stream, finds, caption))).Root!;
        var entries = feed.Elements().Where(element => element.Name.LocalName == "entry").ToList();
        Assert.Equal(NewSquaresFeed.MostEntries, entries.Count);
        var dates = entries.Select(entry => entry.Elements().Single(element => element.Name.LocalName == "updated").Value).ToList();
        Assert.Equal(dates.OrderByDescending(date => date, StringComparer.Ordinal), dates);
        Assert.Contains(feed.Elements(), element => element.Value == "tag:maps.example.org,2026:new-squares/a%20b%2F%3Cc%3E");
        Assert.Contains(feed.Elements(), element => element.Value == "New & newest");
    }

    private static FirstFind Find(int i, string first, string? last = null) =>
        new(new(GridId.British, SquareSize.Km1, 300_000 + i * 1000, 500_000), Day(first), Day(last ?? first));

    private static int Day(string text) => DateOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture).DayNumber;
}
