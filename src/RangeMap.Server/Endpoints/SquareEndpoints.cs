using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>What lives in a square.</summary>
internal static class SquareEndpoints
{
    public static void MapSquares(this RouteGroupBuilder api) =>
        api.MapGet("/squares/{reference}", Square)
            .WithTags("Squares")
            .WithSummary("The taxa found in a square, and what supports one taxon there by period and finer square.");

    private static SquareJson Square(CurrentData current, string reference, string? taxon = null, string? periods = null, string? quality = null)
    {
        var data = current.Now();
        var square = Ask.Square(reference);
        if (!MapSizes.All.Contains(square.Size))
            throw new UserException($"{square} is finer than maps come in.", "reference", "Ask for its 100 m square or a larger one.");
        var answer = DescribeSquare.Answer(data, square, string.IsNullOrEmpty(taxon) ? null : data.Find(taxon), Ask.Periods(periods), Ask.Quality(quality));
        return SquareJson.Of(answer);
    }
}

/// <summary>A square.</summary>
internal sealed record SquareJson(
    string Square, string Grid, string Size, double Latitude, double Longitude, int Records, int Visits, int CompleteVisits, IReadOnlyList<SquareTaxonJson> Taxa,
    SupportJson? Supports, IReadOnlyList<string> Neighbours)
{
    public static SquareJson Of(SquareAnswer answer)
    {
        var grid = NationalGrid.Get(answer.Square.Grid);
        var centre = grid.ToLatLon(answer.Square.Centre);
        return new(
            answer.Square.ToString(), grid.Code, answer.Square.Size.ToText(), Math.Round(centre.Latitude, 6), Math.Round(centre.Longitude, 6),
            answer.Species.Sum(found => found.Records), answer.Visits, answer.CompleteVisits, [.. answer.Species.Select(SquareTaxonJson.Of)],
            answer.Support is { } support ? SupportJson.Of(support) : null,
            [.. SquareNeighbours.Of(answer.Square).Select(square => square.ToString())]);
    }
}

/// <summary>A taxon found in a square.</summary>
internal sealed record SquareTaxonJson(string Id, string ScientificName, string? VernacularName, int Records, int Confirmed, int FirstYear, int LastYear)
{
    public static SquareTaxonJson Of(SpeciesInSquare found) =>
        new(found.Taxon.Id, found.Taxon.ScientificName, found.Taxon.VernacularName, found.Records, found.Confirmed, found.FirstYear, found.LastYear);
}

/// <summary>What supports a taxon in a square.</summary>
internal sealed record SupportJson(string Taxon, IReadOnlyList<SupportPeriodJson> PerPeriod, IReadOnlyList<SupportSquareJson> FinerSquares, string? Note)
{
    private const int MostSquares = 100;

    public static SupportJson Of(SquareSupport support)
    {
        var squares = support.Squares.OrderByDescending(pair => pair.Value.LastYear).ThenBy(pair => pair.Key).Take(MostSquares);
        return new(
            support.Taxon.Id,
            [.. support.Periods.Zip(support.PerPeriod, (period, count) => new SupportPeriodJson(period.Text, count.Records, count.Confirmed, count.Visits, count.FirstYear, count.LastYear))],
            [.. squares.Select(pair => new SupportSquareJson(pair.Key.ToString(), pair.Key.Size.ToText(), pair.Value.Records, pair.Value.FirstYear, pair.Value.LastYear))],
            NoteOf(support));
    }

    private static string? NoteOf(SquareSupport support)
    {
        if (support.Taxon.GeneraliseTo is { } finest)
            return $"This is a sensitive species: places finer than {finest.ToText()} are not shown.";
        return support.Squares.Count > MostSquares ? FormattableString.Invariant($"The {MostSquares} finer squares with the latest records, of {support.Squares.Count}.") : null;
    }
}

/// <summary>Counts of one period.</summary>
internal sealed record SupportPeriodJson(string Period, int Records, int Confirmed, int Visits, int FirstYear, int LastYear);

/// <summary>A finer square that records lie in.</summary>
internal sealed record SupportSquareJson(string Square, string Size, int Records, int FirstYear, int LastYear);
