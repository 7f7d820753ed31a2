namespace RangeMap.Records;

/// <summary>How unlike two names are, in edits. Both in capitals.</summary>
internal static class NameLikeness
{
    /// <summary>More edits than this make no suggestion.</summary>
    private const int MostEdits = 6;

    private const double SameButAbbreviated = 0.25;
    private const double SameButGender = 0.5;

    /// <summary>
    /// Edits between a name as written and one of the list; less than 1 where only the genus is abbreviated or the ending agrees with
    /// another gender; null beyond a third of the name's length, and beyond 6.
    /// </summary>
    public static double? Unlikeness(string written, string listed)
    {
        var limit = LimitFor(written.Length);
        if (AbbreviatedRest(written, listed) is var (rest, listedRest))
            return WithinLimit(rest, listedRest, LimitFor(rest.Length)) + SameButAbbreviated;
        if (SameStems(written, listed))
            return SameButGender;
        return WithinLimit(written, listed, limit);
    }

    private static int LimitFor(int length) => Math.Min(MostEdits, Math.Max(2, length / 3));

    private static double? WithinLimit(string a, string b, int limit) =>
        Math.Abs(a.Length - b.Length) <= limit && EditDistance.Of(a, b, limit) is var edits && edits <= limit ? edits : null;

    /// <summary>What follows the genus in both, where the written one is the beginning of the listed one: "B. EXAMPLA", "B EXAMPLA", "BO. EXAMPLA".</summary>
    private static (string Written, string Listed)? AbbreviatedRest(string written, string listed)
    {
        int cut = written.IndexOf(' ', StringComparison.Ordinal), listedCut = listed.IndexOf(' ', StringComparison.Ordinal);
        if (cut < 1 || listedCut < 1)
            return null;
        var genus = written.AsSpan(0, cut).TrimEnd('.');
        var isAbbreviated = genus.Length is 1 or 2 || (genus.Length < cut && genus.Length > 0);
        return isAbbreviated && listed.AsSpan(0, listedCut).StartsWith(genus, StringComparison.Ordinal) ? (written[(cut + 1)..], listed[(listedCut + 1)..]) : null;
    }

    /// <summary>True when all words but the last are the same and the last has one stem: ALBUS, ALBA, ALBUM; RUBER, RUBRA; AGRESTIS, AGRESTE.</summary>
    private static bool SameStems(string written, string listed)
    {
        int cut = written.LastIndexOf(' ') + 1, listedCut = listed.LastIndexOf(' ') + 1;
        return cut > 0 && cut == listedCut && written.AsSpan(0, cut).SequenceEqual(listed.AsSpan(0, cut)) && Stem(written.AsSpan(cut)) == Stem(listed.AsSpan(cut));
    }

    private static string Stem(ReadOnlySpan<char> word)
    {
        if (word.Length < 4)
            return word.ToString();
        if (word.EndsWith("ER"))
            return $"{word[..^2]}R";
        if (word.EndsWith("US") || word.EndsWith("UM") || word.EndsWith("IS"))
            return word[..^2].ToString();
        return (word[^1] is 'A' or 'E' ? word[..^1] : word).ToString();
    }
}
