using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The names that made rows of an import refused, with the nearest names of the list as it is now.</summary>
internal static class RefusedNames
{
    private const int MostNames = 500;

    public static IReadOnlyList<UnknownName> Of(DataFolder folder, StoredBatch batch, TaxonList taxa)
    {
        var mapping = System.Text.Json.JsonSerializer.Deserialize<Dictionary<string, string>>(batch.Mapping) ?? [];
        var columns = mapping.Where(pair => IsName(pair.Value)).Select(pair => pair.Key).Append(TermNames.Name(Term.ScientificName)).ToHashSet(StringComparer.Ordinal);
        var rows = new Dictionary<string, long>(StringComparer.OrdinalIgnoreCase);
        foreach (var refusal in new BatchStore(folder.Database).Refusals(batch.Number).Where(refusal => columns.Contains(refusal.Field) && refusal.Value.Length > 0))
        {
            var name = AcceptedNames.Plain(refusal.Value);
            rows[name] = rows.GetValueOrDefault(name) + 1;
        }

        return [.. rows.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key, StringComparer.Ordinal).Take(MostNames)
            .Select(pair => new UnknownName(pair.Key, pair.Value, taxa.Suggest(pair.Key)))];
    }

    private static bool IsName(string use) => use == TermNames.Name(Term.ScientificName) || use == TermNames.Name(Term.VernacularName);
}
