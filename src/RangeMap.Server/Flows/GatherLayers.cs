using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Gathers the features of tile layers beside that of presence. All of it comes from the generalised snapshot, as every other answer does.</summary>
internal static class GatherLayers
{
    /// <summary>A layer by its name, made ready for a tile matrix set and kept.</summary>
    public static LayerTiles Of(DataSnapshot data, PresenceQuestion question, string name, TileMatrixSet set) =>
        data.Answers.GetOrMake((question, set.Id, name, "layer"), () => name switch
        {
            LayerNames.Arrivals => new(TileLayer.Arrivals, set, [.. Arrivals(data, question)]),
            LayerNames.Fronts => new(TileLayer.Fronts, set, [.. Fronts(data, question)]),
            LayerNames.Forecast => new(TileLayer.Forecast, set, [.. Forecast(data, question)]),
            _ => new LayerTiles(TileLayer.Effort(question.PeriodList.Count), set, [.. Effort(data, question)]),
        });

    private static bool HasModel(DataSnapshot data, PresenceQuestion question) => ForecastSpread.Fit(data, question.Taxon, question.Size).Answer.Fit is not null;

    /// <summary>Squares with a find, and those where the model has it more likely than not; the earliest first.</summary>
    private static IEnumerable<TileFeature> Arrivals(DataSnapshot data, PresenceQuestion question)
    {
        var found = AnswerPresence.Arrivals(data, question.Taxon, question.Size, question.Quality).ToDictionary(arrival => arrival.Square, arrival => arrival.Year);
        var modelled = HasModel(data, question) ? DrawFronts.Arrivals(data, question.Taxon, question.Size).ToDictionary(arrival => arrival.Square) : [];
        return found.Keys.Union(modelled.Keys)
            .Select(square => (Square: square, Year: found.TryGetValue(square, out var year) ? year : default(int?), Model: modelled.GetValueOrDefault(square)))
            .OrderBy(arrival => arrival.Year ?? arrival.Model?.Median ?? int.MaxValue).ThenBy(arrival => arrival.Square.Code)
            .Select(arrival => SquareOf(arrival.Square, ExportValue.Of(arrival.Year), ExportValue.Of(arrival.Model?.Median), ExportValue.Of(arrival.Model?.Low), ExportValue.Of(arrival.Model?.High)));
    }

    private static IEnumerable<TileFeature> Fronts(DataSnapshot data, PresenceQuestion question)
    {
        if (!HasModel(data, question))
            return [];
        var (fronts, now) = DrawFronts.Answer(data, question.Taxon, question.Size, null);
        return fronts.Where(front => front.Lines.Count > 0).Select(front => new TileFeature(
            default, front.Lines, [ExportValue.Of(front.Year.ToString(System.Globalization.CultureInfo.InvariantCulture)), ExportValue.Of(front.Year), ExportValue.Of(front.Year > now)]));
    }

    /// <summary>The squares of the forecast for the year after the last visits, the likeliest first; none of a sensitive species.</summary>
    private static IEnumerable<TileFeature> Forecast(DataSnapshot data, PresenceQuestion question)
    {
        if (question.Taxon.GeneraliseTo is not null || !HasModel(data, question))
            return [];
        var answer = ForecastSpread.Answer(data, question.Taxon, question.Size, null);
        return ForecastSpread.Squares(answer).Where(square => square.ByYear >= ForecastGeoJson.LeastChance)
            .OrderByDescending(square => square.ByYear).ThenBy(square => square.Square.Code)
            .Select(square => SquareOf(square.Square, ExportValue.Of(answer.Forecast.Year), ExportValue.Of(Math.Round(square.Now, 3)), ExportValue.Of(Math.Round(square.ByYear, 3)), ExportValue.Of(square.Search)));
    }

    /// <summary>Squares that recorders of the taxon's group visited in the periods asked, those with most visits first.</summary>
    private static IEnumerable<TileFeature> Effort(DataSnapshot data, PresenceQuestion question)
    {
        var gathered = GroupData.Of(data, question.Taxon.Group, null, question.Size, question.PeriodList, question.Quality);
        var tables = gathered.Survey.Periods.Select(period => EffortTable.Of(gathered.Survey, period)).ToList();
        return gathered.Squares.Select((square, i) => (Square: square, Effort: tables.Select(table => table[i]).ToList(), Visits: tables.Sum(table => (long)table[i].Visits)))
            .Where(visited => visited.Visits > 0)
            .OrderByDescending(visited => visited.Visits).ThenBy(visited => visited.Square.Code)
            .Select(visited => SquareOf(visited.Square,
            [
                ExportValue.Of(visited.Visits), ExportValue.Of(visited.Effort.TrueForAll(effort => effort.WellSurveyed)),
                .. visited.Effort.Select(effort => effort.Visits > 0 ? ExportValue.Of(effort.Visits) : default),
            ]));
    }

    private static TileFeature SquareOf(Square square, params ReadOnlySpan<ExportValue> values) =>
        new(square, null, [ExportValue.Of(square.ToString()), ExportValue.Of(NationalGrid.Get(square.Grid).Code), .. values]);
}
