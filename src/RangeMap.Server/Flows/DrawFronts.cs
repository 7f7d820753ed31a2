using System.Globalization;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Lines of a spreading taxon's front, and when it reached each square, from the arrival model.</summary>
internal static class DrawFronts
{
    private const double MetresPerKm = 1000;
    private const int YearsApart = 5, MostFronts = 100;

    /// <summary>
    /// The front of each year: of years with commas between them, or of all years of a span written from/to; where none are named, of every fifth year from the first find and of the
    /// year after the last visits.
    /// </summary>
    /// <exception cref="UserException">There is no model, or the years cannot be read or have no front.</exception>
    public static (IReadOnlyList<FrontOfYear> Fronts, int Now) Answer(DataSnapshot data, Taxon taxon, SquareSize size, string? years)
    {
        var fitted = ForecastSpread.Fit(data, taxon, size);
        var fit = ForecastSpread.Needed(fitted, "fronts");
        var fronts = Of(data, taxon, size, fitted, fit);
        return ([.. Years(fit, years).Select(year => data.Answers.GetOrMake((taxon.Number, size, year, "front"), () => On(fitted.Squares, fronts.At(year))))], fit.LastVisit);
    }

    /// <summary>The surface that fronts are drawn from.</summary>
    public static ArrivalFronts Of(DataSnapshot data, Taxon taxon, SquareSize size, FittedSpread fitted, ArrivalFit fit) =>
        data.Answers.GetOrMake((taxon.Number, size, "arrival fronts"), () => ArrivalFronts.Of(fit, Lattices(fitted.Squares), (double)size / MetresPerKm));

    /// <summary>The front of every year from the first find to the year after the last visits; none where there is no model.</summary>
    /// <param name="data">The data.</param>
    /// <param name="taxon">The taxon.</param>
    /// <param name="size">Side of the squares.</param>
    /// <param name="span">Days that a year must meet.</param>
    public static (IEnumerable<FrontOfYear> Fronts, int Now) OfEveryYear(DataSnapshot data, Taxon taxon, SquareSize size, Period span)
    {
        if (ForecastSpread.Fit(data, taxon, size).Answer.Fit is not { } fit)
            return ([], 0);
        var first = fit.Sites.Min(site => site.FirstFound ?? int.MaxValue);
        var years = Enumerable.Range(first, fit.LastVisit + 2 - first).Where(year => Meets(year, span));
        return (years.SelectMany(year => Answer(data, taxon, size, year.ToString(CultureInfo.InvariantCulture)).Fronts), fit.LastVisit);
    }

    private static bool Meets(int year, Period span) => new DateOnly(year, 1, 1).DayNumber < span.EndDay && new DateOnly(year, 12, 31).DayNumber >= span.FirstDay;

    /// <summary>When the taxon probably reached each square: squares where it was found, and those where it is more likely than not.</summary>
    /// <exception cref="UserException">There is no model.</exception>
    public static IReadOnlyList<ModelledArrival> Arrivals(DataSnapshot data, Taxon taxon, SquareSize size)
    {
        var fitted = ForecastSpread.Fit(data, taxon, size);
        var fit = ForecastSpread.Needed(fitted, "arrivals by model");
        return data.Answers.GetOrMake((taxon.Number, size, "modelled arrivals"), () =>
        {
            var speeds = LocalSpread.Of(fit, fit.LastVisit).ToDictionary(speed => speed.Square);
            return Enumerable.Range(0, fit.Sites.Count)
                .Where(i => fit.Sites[i].FirstFound is not null || fit.Reached(i, fit.LastVisit) >= 0.5)
                .Select(i => Of(fitted, fit, i, speeds.GetValueOrDefault(i)))
                .ToList();
        });
    }

    private static ModelledArrival Of(FittedSpread fitted, ArrivalFit fit, int square, LocalSpread speed)
    {
        var arrival = fit.Squares[square];
        return new(
            fitted.Squares[square], fit.Sites[square].FirstFound, arrival.Surface, arrival.Median, arrival.Low, arrival.High, fit.Sites[square].FirstFound is not null ? 1 : fit.Reached(square, fit.LastVisit),
            speed.KmPerYear, speed.Low, speed.High, speed.Bearing);
    }

    private static IReadOnlyList<IReadOnlyDictionary<(int Column, int Row), int>> Lattices(IReadOnlyList<Square> squares) =>
        [.. squares.Select((square, i) => (square, i)).GroupBy(pair => pair.square.Grid).Select(grid =>
            grid.ToDictionary(pair => (pair.square.Easting / pair.square.SideMetres, pair.square.Northing / pair.square.SideMetres), pair => pair.i))];

    private static FrontOfYear On(IReadOnlyList<Square> squares, ArrivalFront front)
    {
        var plane = NationalGrid.Get(GridId.British);
        return new(
            front.Year,
            [.. front.Lines.Select(line => line.Select(point => plane.ToLatLon(new(point.X * MetresPerKm, point.Y * MetresPerKm))).ToList())],
            [.. front.Band.Select(i => squares[i])]);
    }

    private static List<int> Years(ArrivalFit fit, string? text)
    {
        var (first, now) = (fit.Sites.Min(site => site.FirstFound ?? int.MaxValue), fit.LastVisit);
        if (string.IsNullOrWhiteSpace(text))
            return [.. Enumerable.Range(first, now - first + 1).Where(year => year % YearsApart == 0 && year < now), now + 1];
        var years = Read(text).Distinct().Order().ToList();
        if (years.Count is 0 or > MostFronts)
            throw Unreadable(text);
        var outside = years.Where(year => year < first || year > now + Forecast.MostYearsAhead).ToList();
        return outside.Count == 0 ? years : throw new UserException(
            $"There is no front for {outside[0]}.", "years", $"The first find is of {first} and the last visits are of {now}: ask for {first} to {now + Forecast.MostYearsAhead}.") { IsArgument = true };
    }

    private static IEnumerable<int> Read(string text)
    {
        if (text.Split('/') is [var from, var to])
        {
            var (first, last) = (Year(from, text), Year(to, text));
            return last >= first && last - first < MostFronts ? Enumerable.Range(first, last - first + 1) : throw Unreadable(text);
        }

        return text.Split(',').Select(year => Year(year, text));
    }

    private static int Year(string text, string whole) => int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var year) && year < 10_000 ? year : throw Unreadable(whole);

    private static UserException Unreadable(string text) =>
        new($"'{text}' names no years of fronts.", "years", $"Write years with commas between them, such as 2005,2010, or a span such as 2005/2015; at most {MostFronts}.") { IsArgument = true };
}
