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
    private readonly AcceptedNames _accepted;
    private readonly bool _addUnknown;
    private readonly Dictionary<string, Resolution> _remembered = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Resolution>.AlternateLookup<ReadOnlySpan<char>> _lookup;
    private readonly Dictionary<string, Taxon> _added = new(StringComparer.OrdinalIgnoreCase);
    private int _suggestionsLeft;

    /// <param name="list">The taxon list.</param>
    /// <param name="accepted">Names that a person accepted once.</param>
    /// <param name="addUnknown">True to make new taxa of unknown names.</param>
    public TaxonResolver(TaxonList list, AcceptedNames accepted, bool addUnknown)
    {
        _list = list;
        _accepted = accepted;
        _addUnknown = addUnknown;
        _suggestionsLeft = Math.Max(100, MostComparisons / Math.Max(1, list.NameCount));
        _lookup = _remembered.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>What a text came to: a taxon, perhaps in doubt, or the reason why not, with what may be meant.</summary>
    internal sealed record Resolution(Taxon? Taxon, bool Uncertain, string? Why)
    {
        public IReadOnlyList<NameSuggestion> Suggestions { get; init; } = [];
    }

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
        var joined = JoinedNames.Split(parts.Name);
        if (parts.Aggregate)
            return joined is null ? ResolveAggregate(parts) : ResolveJoined(joined, parts);
        if (Find(parts.Name) is { } found)
            return new(found, parts.Uncertain, null);
        if (_list.IsAmbiguous(parts.Name))
            return new(null, false, $"\"{parts.Name}\" means more than one taxon of the list; add the authorship or the taxonID.");
        return joined is not null ? ResolveJoined(joined, parts) : Unknown(parts);
    }

    /// <summary>A row that names several taxa belongs to the aggregate of them all.</summary>
    private Resolution ResolveJoined(IReadOnlyList<string> names, NameText parts)
    {
        var taxa = names.Select(Find).OfType<Taxon>().ToList();
        if (taxa.Count < names.Count)
            return Unknown(parts with { Name = names.First(n => Find(n) is null) });
        if (JoinedNames.CommonAggregate(_list, taxa) is { } common)
            return new(parts.Aggregate ? AggregateOf(common) ?? common : common, parts.Uncertain, null);
        return new(null, false, $"The row names {string.Join(" and ", taxa.Select(t => t.ScientificName).Distinct())}, which are not members of one aggregate of the list. Give the one that was meant, or add their aggregate to the list.");
    }

    private Taxon? Find(string name) => FindInList(name) ?? (_accepted.Find(name) is { } id ? _list.FindById(id) : null);

    private Taxon? FindInList(string name)
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

        if (Find(parts.Name) is { } named && AggregateOf(named) is { } aggregate)
            return new(aggregate, parts.Uncertain, null);
        return _addUnknown ? Add(parts) : new(null, false, $"The list has no aggregate for \"{parts.Name}\". Add the aggregate to the taxon list, or give the species if it was told apart.");
    }

    /// <summary>The taxon itself where it is an aggregate, else the one that it is a member of.</summary>
    private Taxon? AggregateOf(Taxon taxon) =>
        string.Equals(taxon.Rank, "aggregate", StringComparison.OrdinalIgnoreCase) ? taxon : taxon.AggregateId is { } id ? _list.FindById(id) : null;

    private Resolution Unknown(NameText parts)
    {
        if (_addUnknown)
            return Add(parts);
        if (_list.Taxa.Count == 0)
            return new(null, false, "No taxon list is loaded. Load one, or import with new taxa allowed.");
        var nearest = _suggestionsLeft-- > 0 ? _list.Suggest(parts.Name) : [];
        var advice = nearest.Count == 0 ? "Correct the name or add it to the list." : $"Nearest: {Sentence.Ended(string.Join("; ", nearest.Select(n => n.Name)))}";
        return new(null, false, $"The name is not in the taxon list. {advice}") { Suggestions = nearest };
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
