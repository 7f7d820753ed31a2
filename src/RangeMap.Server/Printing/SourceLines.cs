using System.Globalization;
using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The words at the foot of a printed map: what was counted, from which state of which data, and whom to credit.</summary>
internal static class SourceLines
{
    private const string WholeNumber = "#,0";

    private const int MostDataSets = 8;

    /// <summary>The paragraphs.</summary>
    public static IReadOnlyList<string> Of(DataSnapshot data, DataFolder folder, PrintQuestion question, MapContent content, MapArea area)
    {
        var settings = new Settings(folder.Database);
        var outside = content.Squares.Count(square => !area.Shows(square.Square));
        string?[] counted =
        [
            $"{Number(content.Records, "record")} in {Number(content.Squares.Count, "square")}{(question.Region is { } region ? $" that the region {region.Name} reaches into" : "")}; {QualityIn(question)}.",
            content.Omitted is { } omitted ? Left(omitted) : null,
            outside > 0 ? $"{Number(outside, "square")} outside this map." : null,
            question.Taxon.GeneraliseTo is { } coarsest ? $"A sensitive species: places are shown no finer than {coarsest.ToWords()}." : null,
            content.Note,
        ];
        string?[] state =
        [
            $"{settings.Read(SettingNames.Title) ?? "RangeMap"}, edition {data.Edition.Number.ToString(CultureInfo.InvariantCulture)}{(MadeAt(data) is { } at ? $" of {at.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}" : "")}.",
            settings.Read(SettingNames.Notice),
            DataSets(data, folder),
        ];
        return [string.Join(' ', counted.OfType<string>()), string.Join(' ', state.OfType<string>()), $"{string.Join("; ", Credits.OfPrintedMaps)}."];
    }

    /// <summary>Title of the data, for the properties of a file.</summary>
    public static string Publisher(DataFolder folder) => new Settings(folder.Database).Read(SettingNames.Title) ?? "RangeMap";

    /// <summary>When the edition was made; null for an empty folder.</summary>
    public static DateTimeOffset? MadeAt(DataSnapshot data) =>
        DateTimeOffset.TryParse(data.Edition.MadeAt, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at) ? at : null;

    private static string Number(long count, string noun) => $"{count.ToString(WholeNumber, CultureInfo.InvariantCulture)} {noun}{(count == 1 ? "" : "s")}";

    private static string QualityIn(PrintQuestion question) => question.Quality switch
    {
        Presence.Quality.Confirmed => "confirmed records only",
        Presence.Quality.All => "all records but rejected ones",
        _ => "usable records: confirmed, or not yet reviewed and without a serious doubt",
    };

    private static string? Left(Presence.Omissions omitted)
    {
        (int Count, string Why)[] reasons = [(omitted.TooCoarse, "too coarse for these squares"), (omitted.BetweenPeriods, "between the periods"), (omitted.BelowQuality, "below this quality")];
        var told = reasons.Where(reason => reason.Count > 0).Select(reason => $"{reason.Count.ToString(WholeNumber, CultureInfo.InvariantCulture)} {reason.Why}").ToList();
        return told.Count == 0 ? null : $"Not shown: {string.Join(", ", told)}.";
    }

    private static string DataSets(DataSnapshot data, DataFolder folder) => data.Answers.GetOrMake("data sets in words", () =>
    {
        var sets = new BatchStore(folder.Database).ReadAll().Where(batch => batch.UndoneAt is null).GroupBy(batch => batch.Dataset, StringComparer.Ordinal)
            .OrderBy(set => set.Key, StringComparer.Ordinal).Select(set => InWords(set.Key, set.Select(batch => batch.Citation).FirstOrDefault(citation => citation is not null))).ToList();
        var more = sets.Count > MostDataSets ? $" and {sets.Count - MostDataSets} more" : "";
        return sets.Count == 0 ? "No data sets." : $"Data sets: {string.Join("; ", sets.Take(MostDataSets))}{more}.";
    });

    private static string InWords(string id, string? citation)
    {
        var told = citation is null ? null : JsonSerializer.Deserialize<ArchiveCitation>(citation);
        return told?.Licence is { } licence ? $"{told.Title ?? id} ({licence})" : told?.Title ?? id;
    }
}
