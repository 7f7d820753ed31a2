namespace RangeMap.Records;

/// <summary>A name that the list does not have.</summary>
/// <param name="Name">As the file writes it.</param>
/// <param name="Rows">Rows refused for it.</param>
/// <param name="Suggestions">Names of the list that are close, the closest first.</param>
public sealed record UnknownName(string Name, long Rows, IReadOnlyList<NameSuggestion> Suggestions);

/// <summary>The names of an import that the list does not have, each once, in bounded memory.</summary>
public sealed class UnknownNames
{
    private const int MostNames = 10_000;
    private const int LongestName = 200;
    private readonly Dictionary<string, UnknownName> _names = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The names with the most rows first; of names that differ in case alone the first as written.</summary>
    public IReadOnlyList<UnknownName> All => [.. _names.Values.OrderByDescending(n => n.Rows).ThenBy(n => n.Name, StringComparer.Ordinal)];

    /// <summary>Rows refused for names that are not among <see cref="All"/>: those after the first 10,000, and those of more than 200 characters.</summary>
    public long RowsOfOthers { get; private set; }

    internal void Add(ReadOnlySpan<char> name, IReadOnlyList<NameSuggestion> suggestions)
    {
        var text = NameText.Normalise(name);
        if (_names.TryGetValue(text, out var known))
            _names[text] = known with { Rows = known.Rows + 1 };
        else if (_names.Count < MostNames && text.Length <= LongestName)
            _names.Add(text, new(text, 1, suggestions));
        else
            RowsOfOthers++;
    }
}
