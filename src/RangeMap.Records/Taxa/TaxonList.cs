namespace RangeMap.Records;

/// <summary>The accepted taxa and their synonyms, found by identifier, scientific name or everyday name without regard to case.</summary>
public sealed class TaxonList
{
    private readonly Dictionary<string, Taxon> _byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Taxon?> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, Taxon?>.AlternateLookup<ReadOnlySpan<char>> _nameLookup;
    private readonly Dictionary<string, Taxon>.AlternateLookup<ReadOnlySpan<char>> _idLookup;
    private readonly Lazy<NameSuggestions> _suggestions;

    /// <summary>Makes the list. A name that means two taxa is found only together with its authorship.</summary>
    /// <param name="taxa">The accepted taxa; identifiers must differ.</param>
    /// <param name="synonyms">Other names; one whose accepted taxon is missing is left out of the look-up.</param>
    /// <exception cref="ArgumentException">Two taxa bear the same identifier.</exception>
    public TaxonList(IEnumerable<Taxon> taxa, IEnumerable<Synonym>? synonyms = null)
    {
        Taxa = [.. taxa];
        Synonyms = [.. synonyms ?? []];
        _idLookup = _byId.GetAlternateLookup<ReadOnlySpan<char>>();
        _nameLookup = _byName.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var taxon in Taxa)
        {
            _byId.Add(taxon.Id, taxon);
            AddName(taxon.ScientificName, taxon.Authorship, taxon);
        }

        foreach (var synonym in Synonyms)
            AddSynonym(synonym);
        foreach (var taxon in Taxa.Where(t => t.VernacularName is not null))
            AddName(taxon.VernacularName!, null, taxon);
        _suggestions = new(() => new(_byName.Where(n => n.Value is not null).Select(n => (n.Key, n.Value!))));
    }

    /// <summary>A list without taxa.</summary>
    public static TaxonList Empty { get; } = new([]);

    /// <summary>The accepted taxa, in the order given.</summary>
    public IReadOnlyList<Taxon> Taxa { get; }

    /// <summary>The synonyms, in the order given.</summary>
    public IReadOnlyList<Synonym> Synonyms { get; }

    /// <summary>Number of names that <see cref="Suggest"/> compares with.</summary>
    internal int NameCount => _byName.Count;

    /// <summary>
    /// Up to three taxa that an unknown name may mean, the closest first: by slips of the pen (at most a third of the name's length, and
    /// 6), by an abbreviated genus, by an ending of another gender. Never to be taken without a person's consent.
    /// </summary>
    public IReadOnlyList<NameSuggestion> Suggest(string name) => _suggestions.Value.For(NameText.From(name).Name);

    /// <summary>The taxon of an identifier, that of a synonym included; null if there is none.</summary>
    public Taxon? FindById(ReadOnlySpan<char> id) => _idLookup.TryGetValue(id, out var taxon) ? taxon : null;

    /// <summary>
    /// The taxon of a name exactly as the list has it, but for case and with or without authorship; null if there is
    /// none or if the name means several. Allocates nothing.
    /// </summary>
    public Taxon? FindByName(ReadOnlySpan<char> name) => _nameLookup.TryGetValue(name, out var taxon) ? taxon : null;

    /// <summary>True when the name stands for more than one taxon.</summary>
    public bool IsAmbiguous(ReadOnlySpan<char> name) => _nameLookup.TryGetValue(name, out var taxon) && taxon is null;

    private void AddSynonym(Synonym synonym)
    {
        if (!_byId.TryGetValue(synonym.AcceptedId, out var taxon))
            return;
        _byId.TryAdd(synonym.Id, taxon);
        AddName(synonym.ScientificName, synonym.Authorship, taxon);
        if (synonym.VernacularName is { } everyday)
            AddName(everyday, null, taxon);
    }

    private void AddName(string name, string? authorship, Taxon taxon)
    {
        var plain = NameText.Normalise(name);
        if (!_byName.TryAdd(plain, taxon) && _byName[plain] is { } other && other.Id != taxon.Id)
            _byName[plain] = null;
        if (!string.IsNullOrWhiteSpace(authorship))
            _byName.TryAdd(NameText.Normalise($"{plain} {authorship}"), taxon);
    }
}
