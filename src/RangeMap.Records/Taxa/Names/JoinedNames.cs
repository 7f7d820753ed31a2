namespace RangeMap.Records;

/// <summary>Takes apart a name that leaves it open which taxon is meant: "A/B", "A or B", "Genus one/two".</summary>
internal static class JoinedNames
{
    /// <summary>More names than anybody hesitates between.</summary>
    private const int MostNames = 10;

    /// <summary>The names, each with its genus; null where the text is one name, or so many that it is none.</summary>
    public static IReadOnlyList<string>? Split(string name)
    {
        var parts = name.Replace(" or ", "/", StringComparison.OrdinalIgnoreCase).Split('/', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length is < 2 or > MostNames)
            return null;
        var genus = parts[0].Split(' ')[0];
        return [.. parts.Select(part => part.Contains(' ', StringComparison.Ordinal) ? part : $"{genus} {part}")];
    }

    /// <summary>The closest taxon that stands for all of these: an aggregate of which each is a member, at any remove; null if there is none.</summary>
    public static Taxon? CommonAggregate(TaxonList list, IReadOnlyList<Taxon> taxa) =>
        WithAggregates(list, taxa[0]).FirstOrDefault(candidate => taxa.All(t => WithAggregates(list, t).Any(a => a.Id == candidate.Id)));

    private static IEnumerable<Taxon> WithAggregates(TaxonList list, Taxon taxon)
    {
        var passed = new HashSet<string>(StringComparer.Ordinal);
        for (var at = taxon; at is not null && passed.Add(at.Id); at = at.AggregateId is { } id ? list.FindById(id) : null)
            yield return at;
    }
}
