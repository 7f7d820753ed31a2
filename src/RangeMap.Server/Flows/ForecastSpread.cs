using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Fits the arrival model to a taxon's visits and foretells where it will be, with the record of how well such forecasts did.</summary>
internal static class ForecastSpread
{
    private const double MetresPerKm = 1000;
    private const int Hindcasts = 10, Horizon = 3, MostSearched = 30;

    /// <summary>The fitted model, or the reason why there is none.</summary>
    public static FittedSpread Fit(DataSnapshot data, Taxon taxon, SquareSize size) =>
        data.Answers.GetOrMake((taxon.Number, size, "arrival model"), () =>
        {
            var (squares, sites) = SitesOf(data, taxon, size);
            return new FittedSpread(squares, ArrivalModel.Fit(sites));
        });

    /// <summary>The forecast for a year; null for the year after the last visits.</summary>
    /// <exception cref="UserException">The model cannot be fitted, or the year is out of reach.</exception>
    public static ForecastAnswer Answer(DataSnapshot data, Taxon taxon, SquareSize size, int? year) =>
        data.Answers.GetOrMake((taxon.Number, size, year, "forecast"), () =>
        {
            var fitted = Fit(data, taxon, size);
            var fit = Needed(fitted, "forecast");
            var now = fit.LastVisit;
            var until = year ?? now + 1;
            if (until < now || until > now + Forecast.MostYearsAhead)
                throw new UserException($"{until} is out of reach of a forecast.", "year", $"The last visits are of {now}: ask for {now} to {now + Forecast.MostYearsAhead}.") { IsArgument = true };
            var forecast = Forecast.Of(fit, until);
            return new ForecastAnswer(taxon, size, fitted.Squares, fit, forecast, SearchList.Of(fit, forecast, MostSearched, MayBeNamed(taxon)), SearchList.Ahead(forecast, MostSearched, MayBeNamed(taxon)), PastForecasts(data, taxon, size, fit, now), BestWeeks.Of(data, taxon),
                data.Answers.GetOrMake((taxon.Number, size, "speeds of parts"), () => SpeedParts.Of(data, fitted, fit)));
        });

    /// <summary>The model.</summary>
    /// <exception cref="UserException">There is none.</exception>
    public static ArrivalFit Needed(FittedSpread fitted, string what) => fitted.Answer.Fit
        ?? throw new UserException($"No {what} can be given: {fitted.Answer.Refused}", "taxon", "This needs a species that spreads and whose group is visited where it is not found, too.");

    /// <summary>The chance of each square for a map; none for a sensitive species.</summary>
    public static IEnumerable<ForetoldSquare> Squares(ForecastAnswer answer)
    {
        if (answer.Taxon.GeneraliseTo is not null)
            return [];
        var places = answer.Search.Select((square, i) => (square.Square, Place: i + 1)).ToDictionary(pair => pair.Square, pair => pair.Place);
        return answer.Forecast.Squares.Select(square => new ForetoldSquare(answer.Squares[square.Square], square.Now, square.ByYear, places.TryGetValue(square.Square, out var place) ? place : null));
    }

    /// <summary>Squares to search as places to go to, those next to be reached first.</summary>
    public static IEnumerable<Waypoint> Waypoints(ForecastAnswer answer) =>
        answer.Ahead.Select(square => new Waypoint(answer.Squares[square.Square], FormattableString.Invariant($"Reached by {answer.Forecast.Year}: {100 * square.Arrives:0} %.")))
            .Concat(answer.Search.Select(square => new Waypoint(answer.Squares[square.Square], FormattableString.Invariant($"There already: {100 * square.Probability:0} %."))))
            .DistinctBy(waypoint => waypoint.Square);

    // A sensitive species is never looked for by strangers sent there.
    private static Func<int, bool>? MayBeNamed(Taxon taxon) => taxon.GeneraliseTo is null ? null : _ => false;

    /// <summary>The same for every year that is asked, so made once, and kept on file.</summary>
    private static IReadOnlyList<HindcastCut> PastForecasts(DataSnapshot data, Taxon taxon, SquareSize size, ArrivalFit fit, int now) =>
        data.Answers.GetOrMake((taxon.Number, size, "hindcast"), () => data.PastForecasts is { } kept ? kept.GetOrMake(taxon, size, data.Edition, () => HindcastOf(fit, now)) : HindcastOf(fit, now));

    private static IReadOnlyList<HindcastCut> HindcastOf(ArrivalFit fit, int now)
    {
        var cuts = Enumerable.Range(1, Hindcasts).Select(i => now - Horizon * i).Reverse().ToList();
        var past = Hindcast.Of(fit.Sites, cuts, Horizon, SideKm(fit), fit.Origin);
        // Of the years in which too little was known only the last is shown.
        var known = past.TakeWhile(cut => cut.Refused is not null).Count();
        return [.. past.Skip(Math.Max(0, known - 1))];
    }

    private static double SideKm(ArrivalFit fit)
    {
        var first = fit.Sites[0];
        return fit.Sites.Skip(1).Min(site => PlanePoint.Km(new(first.X, first.Y), new(site.X, site.Y)));
    }

    /// <summary>Squares with land, and any visited one, with all visits of the taxon's group that are dated to the day.</summary>
    private static (List<Square> Squares, List<ArrivalSite> Sites) SitesOf(DataSnapshot data, Taxon taxon, SquareSize size)
    {
        var own = data.WithMembers(taxon).Select(member => member.Number).ToHashSet();
        var visits = data.VisitLists(taxon.Group, size).GroupBy(visit => visit.Square).ToDictionary(
            group => group.Key,
            group => group.Select(visit => new ArrivalVisit(DateOnly.FromDayNumber(visit.Day).Year, visit.Taxa.Count(number => !own.Contains(number)), visit.Taxa.Any(own.Contains))).ToArray());
        var land = size is SquareSize.Km10 or SquareSize.Km5 ? new[] { GridId.British, GridId.Irish }.SelectMany(grid => BaseGeography.Squares.Of(grid, size)) : [];
        var squares = land.Concat(visits.Keys).Distinct().OrderBy(square => square.Code).ToList();
        return (squares, [.. squares.Select(square =>
        {
            var centre = Arrival.CommonCentre(square);
            return new ArrivalSite(centre.Easting / MetresPerKm, centre.Northing / MetresPerKm, visits.GetValueOrDefault(square) ?? []);
        })]);
    }
}

/// <summary>The arrival model of a taxon.</summary>
/// <param name="Squares">The square of each index of the model.</param>
/// <param name="Answer">The model, or the reason why there is none.</param>
internal sealed record FittedSpread(IReadOnlyList<Square> Squares, ArrivalAnswer Answer);

/// <summary>A forecast with what a reader must see beside it.</summary>
internal sealed record ForecastAnswer(
    Taxon Taxon, SquareSize Size, IReadOnlyList<Square> Squares, ArrivalFit Fit, Forecast Forecast, IReadOnlyList<SearchSquare> Search, IReadOnlyList<ForecastSquare> Ahead,
    IReadOnlyList<HindcastCut> Hindcast, IReadOnlyList<int> Weeks, IReadOnlyList<SpeedPartJson> Speeds);
