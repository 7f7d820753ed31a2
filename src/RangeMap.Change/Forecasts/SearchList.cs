namespace RangeMap.Change;

/// <summary>Squares worth a visit: where one thorough visit has the best chance to find the species for the first time (docs/methods/forecast.md, eq. 9).</summary>
public static class SearchList
{
    /// <summary>Share of all list lengths below which the list of a thorough visit lies.</summary>
    private const double Thorough = 0.9;

    /// <summary>Weight of what a visit tells of the front beside the chance of a find: small, so that it only orders squares of like chance.</summary>
    private const double FrontWeight = 0.1;

    /// <summary>
    /// The squares that the species is most likely to reach in the years that are foretold, the likeliest first (docs/methods/forecast.md, eq. 13): they lie along the front, and a first find there tells
    /// how it moves, while most squares of <see cref="Of"/> lie behind it.
    /// </summary>
    /// <param name="forecast">The forecast.</param>
    /// <param name="most">How many.</param>
    /// <param name="may">False for a square that must not be named; null where all may.</param>
    public static IReadOnlyList<ForecastSquare> Ahead(Forecast forecast, int most, Func<int, bool>? may = null) =>
        [.. forecast.Squares.Where(square => square.Arrives > 0 && may?.Invoke(square.Square) != false).OrderByDescending(square => square.Arrives).ThenBy(square => square.Square).Take(most)];

    /// <summary>The best squares, the best first.</summary>
    /// <param name="fit">The model.</param>
    /// <param name="forecast">Its forecast.</param>
    /// <param name="most">How many.</param>
    /// <param name="may">False for a square that must not be named; null where all may.</param>
    public static IReadOnlyList<SearchSquare> Of(ArrivalFit fit, Forecast forecast, int most, Func<int, bool>? may = null)
    {
        var lengths = fit.Sites.SelectMany(site => site.Visits).Select(visit => visit.ListLength).Order().ToArray();
        var found = fit.Detection.Chance(lengths.Length == 0 ? 1 : lengths[(int)(Thorough * (lengths.Length - 1))]);
        return [.. forecast.Squares
            .Where(square => may?.Invoke(square.Square) != false)
            .Select(square => (Square: square, Worth: square.ByYear * found + FrontWeight * square.Now * (1 - square.Now)))
            .OrderByDescending(pair => pair.Worth).ThenBy(pair => pair.Square.Square)
            .Take(most)
            .Select(pair => new SearchSquare(pair.Square.Square, pair.Square.ByYear, pair.Square.ByYear * found, fit.Sites[pair.Square.Square].Visits.Count))];
    }
}

/// <summary>One square to search.</summary>
/// <param name="Square">Index of the square.</param>
/// <param name="Probability">Chance that the species is there by the year of the forecast.</param>
/// <param name="Find">Chance that one thorough visit then finds it.</param>
/// <param name="Visits">Visits so far, none of which found it.</param>
public readonly record struct SearchSquare(int Square, double Probability, double Find, int Visits);
