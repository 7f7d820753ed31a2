namespace RangeMap.Server;

/// <summary>Finds taxa by typed words.</summary>
public static class FindTaxa
{
    /// <summary>
    /// Taxa in whose names each typed word starts a word, those with most records first; with nothing typed, all taxa. Capitals
    /// and accents do not matter.
    /// </summary>
    public static IEnumerable<TaxonSummary> Answer(DataSnapshot data, string? typed)
    {
        var words = (typed ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return data.Summaries
            .Where(summary => words.All(word => Starts(summary, word)))
            .OrderByDescending(summary => summary.Records)
            .ThenBy(summary => summary.Taxon.ScientificName, StringComparer.Ordinal);
    }

    private static bool Starts(TaxonSummary summary, string word) =>
        string.Equals(summary.Taxon.Id, word, StringComparison.OrdinalIgnoreCase) || StartsWord(summary.Taxon.ScientificName, word) || StartsWord(summary.Taxon.VernacularName, word);

    private static bool StartsWord(string? name, string word)
    {
        var compare = System.Globalization.CultureInfo.InvariantCulture.CompareInfo;
        const System.Globalization.CompareOptions Loosely = System.Globalization.CompareOptions.IgnoreCase | System.Globalization.CompareOptions.IgnoreNonSpace;
        return name is not null && name.Split(' ', '-').Any(part => compare.IsPrefix(part, word, Loosely));
    }
}
