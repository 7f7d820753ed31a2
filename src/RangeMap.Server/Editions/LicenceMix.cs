using System.Text.Json;
using RangeMap.Maps;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The licences under which the records of a data folder came. A data set has that of its newest import that states one.</summary>
internal static class LicenceMix
{
    public static IReadOnlyList<LicenceShare> Of(Database database)
    {
        var citations = new Dictionary<string, ArchiveCitation>(StringComparer.Ordinal);
        foreach (var batch in new BatchStore(database).ReadAll().Where(batch => batch is { UndoneAt: null, Citation: not null }))
        {
            var citation = JsonSerializer.Deserialize<ArchiveCitation>(batch.Citation!)!;
            if (citation.Licence is not null || citation.LicenceUrl is not null || !citations.ContainsKey(batch.Dataset))
                citations.TryAdd(batch.Dataset, citation);
        }

        return [.. new RecordStore(database).CountByDataset().Select(pair => Share(pair.Key, pair.Value, citations.GetValueOrDefault(pair.Key)))];
    }

    private static LicenceShare Share(string dataset, long records, ArchiveCitation? citation) => new(dataset, citation?.Title, citation?.Licence, citation?.LicenceUrl, records);
}
