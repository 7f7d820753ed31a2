using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Writes a presence map as GeoPackage or GeoParquet.</summary>
internal static class MakePresence
{
    public static Task WriteAsync(DataFolder folder, DataSnapshot data, PresenceQuestion question, ExportFormat format, string path, CancellationToken cancel)
    {
        var asked = ExportAsk.Read(data, ExportTables.PresenceMap, new() { Taxon = question.Taxon.Id });
        KeyValuePair<string, string>[] words =
        [
            new("taxon", question.Taxon.ScientificName), new("periods", question.Periods.Length == 0 ? "../.." : question.Periods),
            .. (asked with { Size = question.Size, Quality = question.Quality }).Words().Where(word => word.Key is "grid" or "quality" or "sensitive places"),
            .. question.PlaceWords(),
        ];
        var source = MakeExport.SourceOf(folder, asked) with { Question = words };
        return TableExport.WriteAsync(path, format, ExportTables.PresenceMap, source, PresenceMapRows.Of(AnswerPresence.Answer(data, question), question.Taxon.ScientificName), cancel);
    }
}
