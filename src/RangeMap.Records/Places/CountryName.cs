namespace RangeMap.Records;

/// <summary>Reads the name or code of a country as the two-letter code (ISO 3166-1) that tells its grids.</summary>
internal static class CountryName
{
    private static readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Known =
        Names(
            ("GB", ["GB", "GBR", "UK", "United Kingdom", "Great Britain", "Britain", "England", "Scotland", "Wales", "Northern Ireland"]),
            ("IE", ["IE", "IRL", "Ireland", "Republic of Ireland", "Eire", "Éire"]),
            ("IM", ["IM", "IMN", "Isle of Man", "Man"]),
            ("JE", ["JE", "JEY", "Jersey"]),
            ("GG", ["GG", "GGY", "Guernsey", "Alderney", "Sark"]),
            ("NL", ["NL", "NLD", "Netherlands", "The Netherlands"]));

    /// <summary>The code; the text itself where it is none that is known here, so that a reason can name it.</summary>
    public static string Read(ReadOnlySpan<char> text) => Known.TryGetValue(text, out var code) ? code : text.ToString();

    private static Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Names(params (string Code, string[] Names)[] known) =>
        known.SelectMany(k => k.Names.Select(name => (name, k.Code))).ToDictionary(k => k.name, k => k.Code, StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();
}
