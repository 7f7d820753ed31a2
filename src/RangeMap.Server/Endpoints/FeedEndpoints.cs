using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Feeds of new squares.</summary>
internal static class FeedEndpoints
{
    public static void MapFeeds(this RouteGroupBuilder api) =>
        api.MapGet("/taxa/{taxon}/new-squares.atom", NewSquares)
            .WithTags("Feeds")
            .WithSummary("The squares in which the taxon was found for the first time, the newest 200, as an Atom feed; region narrows it to a nation or a region that was loaded.")
            .Produces<string>(contentType: NewSquaresFeed.MediaType);

    private static IResult NewSquares(CurrentData current, DataFolder folder, HttpRequest request, string taxon, string? region = null, string? grid = null, string? quality = null)
    {
        var address = OwnAddress.Of(request);
        var data = current.Now();
        var (found, size, counted) = (data.Find(taxon), Ask.Size(grid), Ask.Quality(quality));
        var within = KnownRegions.Of(data).Find(region);
        var finds = data.Answers.GetOrMake((found.Number, size, counted, "first finds"), () => FirstFind.Of(data.Cube(found, size), counted)).Where(find => within?.Holds(find.Square) ?? true);
        var caption = new FeedCaption(
            found.Id, found.ScientificName, TitleOf(found, within), found.GeneraliseTo is { } coarsest ? $"A sensitive species: places are shown no finer than {coarsest.ToWords()}." : null,
            SourceLines.Publisher(folder), string.Join("; ", Credits.OfPrintedMaps), SourceLines.MadeAt(data) ?? DateTimeOffset.UnixEpoch, $"{address}{request.Path}{request.QueryString}",
            $"{address}/api/v1/squares/{{square}}?taxon={Uri.EscapeDataString(found.Id)}", Authority(request));
        return Results.Stream(to => NewSquaresFeed.WriteAsync(to, finds, caption), NewSquaresFeed.MediaType);
    }

    private static string TitleOf(Taxon taxon, NamedRegion? region) =>
        $"New squares of {taxon.ScientificName}{(string.IsNullOrWhiteSpace(taxon.VernacularName) ? "" : $" ({taxon.VernacularName})")}{(region is null ? "" : $" in {region.Name}")}";

    /// <summary>The host's name; an address of IPv6 may not stand in a tag URI (RFC 4151, 2.1).</summary>
    private static string Authority(HttpRequest request) =>
        Uri.CheckHostName(request.Host.Host) is UriHostNameType.Dns or UriHostNameType.IPv4 && request.Host.Host.All(sign => char.IsAsciiLetterOrDigit(sign) || sign is '-' or '.')
            ? request.Host.Host.ToLowerInvariant()
            : "localhost";
}
