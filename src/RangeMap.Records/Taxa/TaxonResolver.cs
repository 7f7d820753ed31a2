namespace RangeMap.Records;

/// <summary>
/// Turns the names that a file uses into taxa of the list. Each distinct text is worked out once and remembered, so that
/// a row costs one look-up and no allocation.
/// </summary>
internal sealed class TaxonResolver
{
    private const int MostRemembered = 200_000;
    private const int MostComparisons = 5_000_000;

    private readonly TaxonList _list;
    private readonly bool _addUnknown;
    private readonly Dictionary<string, Resolution> _remembered = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Resolution>.AlternateLookup<ReadOnlySpan<char>> _lookup;
    private readonly Dictionary<string, Taxon> _added = new(StringComparer.OrdinalIgnoreCase);
    private int _suggestionsLeft;

    /// <param name="list">The taxon list.</param>
    /// <param name="addUnknown">True to make new taxa of unknown names.</param>
    public TaxonResolver(TaxonList list, bool addUnknown)
    {
        _list = list;
        _addUnknown = addUnknown;
        _suggestionsLeft = Math.Max(100, MostComparisons / Math.Max(1, list.Names.Count));
        _lookup = _remembered.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>What a text came to: a taxon, perhaps in doubt, or the reason why not.</summary>
    internal sealed record Resolution(Taxon? Taxon, bool Uncertain, string? Why);

    /// <summary>Taxa made of names that the list does not have.</summary>
    public IReadOnlyCollection<Taxon> Added => _added.Values;

    /// <summary>The taxon of a scientific or everyday name as written.</summary>
    public Resolution Resolve(ReadOnlySpan<char> name)
    {
        if (_lookup.TryGetValue(name, out var known))
            return known;
        var resolution = WorkOut(name);
        if (_remembered.Count < MostRemembered)
            _lookup[name] = resolution;
        return resolution;
    }

    /// <summary>The taxon of a taxonID, or null.</summary>
    public Taxon? FindById(ReadOnlySpan<char> id) => _list.FindById(id);

    private Resolution WorkOut(ReadOnlySpan<char> text)
    {
        var asWritten = NameText.Normalise(text);
        if (Find(asWritten) is { } taxon)
            return new(taxon, Uncertain: false, Why: null);
        var parts = NameText.From(text);
        if (parts.Name.Length == 0)
            return new(null, false, "There is no taxon name.");
        if (parts.Aggregate)
            return ResolveAggregate(parts);
        if (_list.IsAmbiguous(parts.Name))
            return new(null, false, $"\"{parts.Name}\" means more than one taxon of the list; add the authorship or the taxonID.");
        return Find(parts.Name) is { } found ? new(found, parts.Uncertain, null) : Unknown(parts);
    }

    private Taxon? Find(string name)
    {
        var without = NameText.WithoutSubgenus(name);
        return _list.FindByName(name) ?? _list.FindByName(without) ?? FindBeforeAuthorship(without);
    }

    /// <summary>The longest beginning of two words or more that is a name, if the rest may be its authorship.</summary>
    private Taxon? FindBeforeAuthorship(string name)
    {
        for (var cut = name.LastIndexOf(' '); cut > 0; cut = name.LastIndexOf(' ', cut - 1))
        {
            if (NameText.MayBeAuthorship(name.AsSpan(cut + 1)) && _list.FindByName(name.AsSpan(0, cut).TrimEnd(',')) is { } taxon)
                return taxon;
        }

        return null;
    }

    private Resolution ResolveAggregate(NameText parts)
    {
        foreach (var ending in (ReadOnlySpan<string>)["agg.", "agg", "aggregate", "s.l.", "sensu lato"])
        {
            if (_list.FindByName($"{parts.Name} {ending}") is { } written)
                return new(written, parts.Uncertain, null);
        }

        var named = Find(parts.Name);
        if (string.Equals(named?.Rank, "aggregate", StringComparison.OrdinalIgnoreCase))
            return new(named, parts.Uncertain, null);
        if (named?.AggregateId is { } id && _list.FindById(id) is { } aggregate)
            return new(aggregate, parts.Uncertain, null);
        return _addUnknown ? Add(parts) : new(null, false, $"The list has no aggregate for \"{parts.Name}\". Add the aggregate to the taxon list, or give the species if it was told apart.");
    }

    private Resolution Unknown(NameText parts)
    {
        if (_addUnknown)
            return Add(parts);
        if (_list.Taxa.Count == 0)
            return new(null, false, "No taxon list is loaded. Load one, or import with new taxa allowed.");
        var nearest = _suggestionsLeft-- > 0 ? NearestNames.Of(parts.Name, _list.Names) : [];
        var advice = nearest.Count == 0 ? "Correct the name or add it to the list." : $"Nearest: {string.Join("; ", nearest)}.";
        return new(null, false, $"The name is not in the taxon list. {advice}");
    }

    /// <summary>The new taxon's identifier is its own name, so that another import of the file finds it again.</summary>
    private Resolution Add(NameText parts)
    {
        var name = parts.Aggregate ? $"{parts.Name} agg." : parts.Name;
        if (!_added.TryGetValue(name, out var taxon))
            _added[name] = taxon = new Taxon($"name:{name}", name) { Rank = parts.Aggregate ? "aggregate" : null };
        return new(taxon, parts.Uncertain, null);
    }
}
