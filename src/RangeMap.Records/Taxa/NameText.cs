using System.Text;

namespace RangeMap.Records;

/// <summary>A taxon name as written, parted into the name to look up and the signs of doubt or aggregate in it.</summary>
/// <param name="Name">Single spaces, without qualifiers.</param>
/// <param name="Uncertain">True when it carries cf., aff., nr. or a question mark.</param>
/// <param name="Aggregate">True when it ends in agg., aggregate, s.l. or sensu lato.</param>
internal readonly record struct NameText(string Name, bool Uncertain, bool Aggregate)
{
    private static readonly HashSet<string> Uncertainties = new(StringComparer.OrdinalIgnoreCase) { "cf", "cf.", "aff", "aff.", "nr", "nr.", "near", "?" };
    private static readonly HashSet<string> Aggregates = new(StringComparer.OrdinalIgnoreCase) { "agg", "agg.", "aggr.", "aggregate", "(agg.)", "(agg)", "s.l.", "s.lat.", "sens.lat.", "[agg.]" };

    /// <summary>Parts a name.</summary>
    public static NameText From(ReadOnlySpan<char> text)
    {
        var words = Normalise(text).Replace("sensu lato", "s.l.", StringComparison.OrdinalIgnoreCase)
            .Replace("s. l.", "s.l.", StringComparison.OrdinalIgnoreCase).Split(' ');
        var uncertain = false;
        var aggregate = false;
        var kept = new List<string>(words.Length);
        foreach (var word in words)
        {
            var bare = word.Replace("?", "", StringComparison.Ordinal);
            uncertain |= bare.Length < word.Length || Uncertainties.Contains(word);
            aggregate |= Aggregates.Contains(word);
            if (bare.Length > 0 && !Uncertainties.Contains(word) && !Aggregates.Contains(word))
                kept.Add(bare);
        }

        return new(string.Join(' ', kept), uncertain, aggregate);
    }

    /// <summary>The text with every run of white space made one space, composed characters, and none at the ends.</summary>
    public static string Normalise(ReadOnlySpan<char> text)
    {
        var result = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (!char.IsWhiteSpace(c))
                result.Append(c);
            else if (result.Length > 0 && result[^1] != ' ')
                result.Append(' ');
        }

        var plain = result.ToString().TrimEnd();
        return CharSource.FirstLoneSurrogate(plain) < 0 ? plain.Normalize(NormalizationForm.FormC) : plain;
    }

    /// <summary>The name without a subgenus in brackets: "Genus (Subgenus) species" becomes "Genus species".</summary>
    public static string WithoutSubgenus(string name)
    {
        var words = name.Split(' ');
        return words.Length > 2 && words[1].StartsWith('(') && words[1].EndsWith(')') ? string.Join(' ', words.Where((_, i) => i != 1)) : name;
    }

    /// <summary>True for text that may be an authorship: it begins with a capital, a bracket or a particle, or holds a year.</summary>
    public static bool MayBeAuthorship(ReadOnlySpan<char> text) =>
        text.Length > 0 && (char.IsUpper(text[0]) || text[0] is '(' or '[' || text.IndexOfAnyInRange('0', '9') >= 0
            || text.StartsWith("de ", StringComparison.Ordinal) || text.StartsWith("von ", StringComparison.Ordinal) || text.StartsWith("van ", StringComparison.Ordinal));
}
