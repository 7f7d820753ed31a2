using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Scientific names as they are printed: genus, species and what is below in italics, signs of rank and of doubt upright.</summary>
internal static class TaxonNameParts
{
    private static readonly HashSet<string> Upright = new(StringComparer.OrdinalIgnoreCase)
    {
        "agg.", "agg", "aggregate", "group", "subgen.", "sect.", "subsp.", "ssp.", "var.", "f.", "forma", "sp.", "spp.", "cf.", "aff.", "s.l.", "s.s.", "s.lat.", "s.str.", "sensu", "lato", "stricto", "x", "×", "/",
    };

    private static readonly HashSet<string> AboveGenus = new(StringComparer.OrdinalIgnoreCase)
    {
        "kingdom", "phylum", "subphylum", "class", "subclass", "superorder", "order", "suborder", "infraorder", "superfamily", "family", "subfamily", "tribe", "subtribe",
    };

    /// <summary>The parts of a taxon's name.</summary>
    public static IReadOnlyList<NamePart> Of(Taxon taxon)
    {
        var isAboveGenus = taxon.Rank is { } rank && AboveGenus.Contains(rank);
        var parts = new List<NamePart>();
        foreach (var word in taxon.ScientificName.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var italic = !isAboveGenus && !Upright.Contains(word);
            if (parts.Count > 0 && parts[^1].Italic == italic)
                parts[^1] = new($"{parts[^1].Text} {word}", italic);
            else
                parts.Add(new(word, italic));
        }

        return parts;
    }
}
