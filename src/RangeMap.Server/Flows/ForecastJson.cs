using RangeMap.Change;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>A forecast in the form of machine output, the same over HTTP and on the command line.</summary>
/// <param name="Taxon">Identifier of the taxon.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="Edition">The edition of the data.</param>
/// <param name="Now">Last year with visits.</param>
/// <param name="Year">The year that is foretold.</param>
/// <param name="ExpectedSquares">Squares without a find so far in which the species will be by the end of the year.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end.</param>
/// <param name="Speed">Speed of the arrival surface; null where it is not measurable.</param>
/// <param name="Speeds">Speed away from the origin by decade of arrival and by region, where measurable.</param>
/// <param name="ScatterYears">Standard deviation of single squares' arrivals round the surface.</param>
/// <param name="Search">Squares to search, the best first; none for a sensitive species.</param>
/// <param name="Ahead">Squares that the species is most likely to reach in the years that are foretold, the likeliest first; none for a sensitive species.</param>
/// <param name="Weeks">Best weeks of the year to look.</param>
/// <param name="Caution">What to bear in mind in the field.</param>
/// <param name="Hindcast">How forecasts from past years would have done.</param>
internal sealed record ForecastJson(
    string Taxon, string Grid, long Edition, int Now, int Year, double ExpectedSquares, double Low, double High, ForecastSpeedJson? Speed, IReadOnlyList<SpeedPartJson> Speeds, double ScatterYears,
    IReadOnlyList<SearchJson> Search, IReadOnlyList<AheadJson> Ahead, IReadOnlyList<int> Weeks, string Caution, IReadOnlyList<HindcastJson> Hindcast)
{
    internal const string FieldCaution =
        "A forecast is no permission: ask before you enter land, keep to paths, tell somebody where you go, and leave what you find where it is unless you hold a licence.";

    public static ForecastJson Of(DataSnapshot data, ForecastAnswer answer) => new(
        answer.Taxon.Id, answer.Size.ToText(), data.Edition.Number, answer.Forecast.Now, answer.Forecast.Year,
        Math.Round(answer.Forecast.Expected, 1), answer.Forecast.Low, answer.Forecast.High,
        ArrivalSpeed.Of(answer.Fit) is { } speed ? new(Math.Round(speed.KmPerYear, 4), Math.Round(speed.Interval.Low, 4), Math.Round(speed.Interval.High, 4), speed.Squares) : null,
        answer.Speeds, Math.Round(answer.Fit.ScatterYears, 3),
        [.. answer.Search.Select(square => SearchJson.Of(answer, square))],
        [.. answer.Ahead.Select(square => new AheadJson(answer.Squares[square.Square].ToString(), Math.Round(square.Arrives, 3), Math.Round(square.Now, 3)))], answer.Weeks, FieldCaution,
        [.. answer.Hindcast.Select(HindcastJson.Of)]);
}

/// <summary>Speed of the arrival surface.</summary>
internal sealed record ForecastSpeedJson(double KmPerYear, double Low, double High, int N);

/// <summary>A square to search.</summary>
internal sealed record SearchJson(string Square, double Probability, double Find, int Visits, string Why, IReadOnlyList<int> Weeks)
{
    public static SearchJson Of(ForecastAnswer answer, SearchSquare square) => new(
        answer.Squares[square.Square].ToString(), Math.Round(square.Probability, 3), Math.Round(square.Find, 3), square.Visits,
        (square.Visits, square.Probability) switch
        {
            (0, >= 0.5) => "Probably there, and nobody has looked.",
            (0, _) => "Near the front, and nobody has looked.",
            (_, >= 0.5) => "Probably there, and missed so far.",
            _ => "At the front.",
        },
        answer.Weeks);
}

/// <summary>A square along the front.</summary>
internal sealed record AheadJson(string Square, double Arrives, double There);

/// <summary>Scores of the forecast from one past year; skills are above 0 where it did better than the reference.</summary>
internal sealed record HindcastJson(
    int Cut, int Horizon, double? Brier, double? Log, double? Skill, double? SkillAgainstNeighbours, double? SkillAgainstDistance, double? Auc, double? Slope, int N, int Happened, string? Refused)
{
    public static HindcastJson Of(HindcastCut cut) => new(
        cut.Cut, cut.Horizon, Rounded.To(cut.Model?.Brier, 4), Rounded.To(cut.Model?.Log, 4), SkillOf(cut, cut.NoSpread), SkillOf(cut, cut.Beside), SkillOf(cut, cut.Distance),
        Rounded.To(cut.Model?.Auc, 3), Rounded.To(cut.Model?.Slope, 3), cut.Model?.N ?? 0, cut.Model?.Happened ?? 0, cut.Refused);

    private static double? SkillOf(HindcastCut cut, ForecastScores? reference) =>
        cut.Model is null || reference is null ? null : Rounded.To(cut.Model.SkillAgainst(reference), 3);
}
