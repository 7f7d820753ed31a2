using RangeMap.Grids;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What lives in a square.</summary>
internal static class SquareEndpoints
{
    public static void MapSquares(this RouteGroupBuilder api)
    {
        var squares = api.MapGroup("/squares/{reference}").WithTags("Squares");
        squares.MapGet("/", Square)
            .WithSummary("The taxa found in a square, what is new and what may be missing there, how well it is known by group, its visits by year, the squares round it, and what supports one taxon there by period and finer square.");
        squares.MapGet("/change", Change)
            .WithSummary("What became of the species of a square between two periods: gained, lost or kept, and apart from these what was found in one of them while nobody looked in the other.");
        squares.MapGet("/list.html", FieldList)
            .WithSummary("A page to print and take into the field: species known and expected in a square, with boxes to tick, best weeks and room to write.")
            .Produces<string>(contentType: "text/html");
    }

    private static SquareJson Square(CurrentData current, string reference, string? taxon = null, string? periods = null, string? quality = null)
    {
        var (data, square, counted) = (current.Now(), Named(reference), Ask.Quality(quality));
        var answer = DescribeSquare.Answer(data, square, string.IsNullOrEmpty(taxon) ? null : data.Find(taxon), Ask.Periods(periods), counted);
        return SquareJson.Of(answer, KnowSquare.Answer(data, square, counted));
    }

    private static SquareChangeJson Change(CurrentData current, string reference, string? from = null, string? to = null, string? quality = null)
    {
        var square = Named(reference);
        return SquareChangeJson.Of(CompareSquare.Answer(current.Now(), square, ChangeQuestion.Of(square.Size.ToText(), from, to, quality)));
    }

    private static IResult FieldList(CurrentData current, DataFolder folder, string reference, string? quality = null)
    {
        var (data, square, counted) = (current.Now(), Named(reference), Ask.Quality(quality));
        var (answer, known) = (DescribeSquare.Answer(data, square, null, Ask.Periods(null), counted), KnowSquare.Answer(data, square, counted));
        var notice = new Settings(folder.Database).Read(SettingNames.Notice);
        return Results.Stream(to => FieldListHtml.WriteAsync(to, answer, known, taxon => BestWeeks.InWords(BestWeeks.Of(data, taxon), known.LastYear + 1), data.StateName, notice), "text/html; charset=utf-8");
    }

    private static Square Named(string reference)
    {
        var square = Ask.Square(reference);
        return MapSizes.All.Contains(square.Size) ? square : throw new UserException($"{square} is finer than maps come in.", "reference", "Ask for its 100 m square or a larger one.");
    }
}
