namespace RangeMap.Records;

/// <summary>A name of the list that may be meant by an unknown one.</summary>
/// <param name="Name">The name of the list that is close: scientific, synonym or everyday.</param>
/// <param name="Taxon">The taxon that it stands for.</param>
public sealed record NameSuggestion(string Name, Taxon Taxon);

/// <summary>Finds the names of a list that are closest to one that is not in it.</summary>
internal sealed class NameSuggestions
{
    private const int Most = 3;
    private const int LongestCompared = 100;
    private readonly (string Capitals, string Name, Taxon Taxon)[] _names;

    /// <param name="names">Every name that means one taxon.</param>
    public NameSuggestions(IEnumerable<(string Name, Taxon Taxon)> names) => _names = [.. names.Select(n => (n.Name.ToUpperInvariant(), n.Name, n.Taxon))];

    /// <summary>Number of names to compare with.</summary>
    public int Count => _names.Length;

    /// <summary>The names closest to an unknown one, at most three, each of another taxon, the closest first.</summary>
    public IReadOnlyList<NameSuggestion> For(string name)
    {
        if (name.Length is 0 or > LongestCompared)
            return [];
        var wanted = name.ToUpperInvariant();
        return [.. _names
            .Select(n => (n.Name, n.Taxon, Unlikeness: NameLikeness.Unlikeness(wanted, n.Capitals)))
            .Where(n => n.Unlikeness is not null)
            .OrderBy(n => n.Unlikeness).ThenBy(n => n.Name, StringComparer.Ordinal)
            .DistinctBy(n => n.Taxon.Id).Take(Most)
            .Select(n => new NameSuggestion(n.Name, n.Taxon))];
    }
}
