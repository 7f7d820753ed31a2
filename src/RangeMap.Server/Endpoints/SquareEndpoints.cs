namespace RangeMap.Server;

/// <summary>What lives in a square.</summary>
internal static class SquareEndpoints
{
    public static void MapSquares(this RouteGroupBuilder api) =>
        api.MapGet("/squares/{reference}", Square)
            .WithTags("Squares")
            .WithSummary("The taxa found in a square, what is new and what may be missing there, how well it is known by group, its visits by year, the squares round it, and what supports one taxon there by period and finer square.");

    private static SquareJson Square(CurrentData current, string reference, string? taxon = null, string? periods = null, string? quality = null)
    {
        var data = current.Now();
        var square = Ask.Square(reference);
        if (!MapSizes.All.Contains(square.Size))
            throw new UserException($"{square} is finer than maps come in.", "reference", "Ask for its 100 m square or a larger one.");
        var counted = Ask.Quality(quality);
        var answer = DescribeSquare.Answer(data, square, string.IsNullOrEmpty(taxon) ? null : data.Find(taxon), Ask.Periods(periods), counted);
        return SquareJson.Of(answer, KnowSquare.Answer(data, square, counted));
    }
}
