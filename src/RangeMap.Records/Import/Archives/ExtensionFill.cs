namespace RangeMap.Records;

/// <summary>
/// Fills what an occurrence does not say itself with what the extensions of its archive tell of it: a length, the evidence, where it can
/// be seen. One for each reading of the occurrences.
/// </summary>
internal sealed class ExtensionFill
{
    private readonly IReadOnlyList<ExtensionIndex> _indexes;
    private readonly long[] _used;
    private readonly HashSet<ulong>[] _seen;
    private readonly string?[] _told = new string?[Enum.GetValues<Term>().Length];

    /// <param name="indexes">What the extensions tell.</param>
    public ExtensionFill(IReadOnlyList<ExtensionIndex> indexes)
    {
        _indexes = indexes;
        _used = new long[indexes.Count];
        _seen = [.. indexes.Select(_ => new HashSet<ulong>())];
    }

    /// <summary>The terms that some extension can fill.</summary>
    public IEnumerable<Term> Terms => _indexes.SelectMany(i => i.Reader.Terms).Distinct();

    /// <summary>Reads what is told of an occurrence.</summary>
    /// <param name="coreId">The identifier of the core row that it is or belongs to.</param>
    /// <param name="occurrenceId">Its occurrenceID.</param>
    /// <param name="own">What it says itself of a term.</param>
    public void MoveTo(ReadOnlySpan<char> coreId, ReadOnlySpan<char> occurrenceId, Own own)
    {
        Array.Clear(_told);
        for (var i = 0; i < _indexes.Count; i++)
        {
            var id = _indexes[i].IsByCore ? coreId : occurrenceId;
            // A row may tell of many occurrences, and is used once all the same.
            if (!id.IsEmpty && _indexes[i].Find(id, out var hash) is { } held && Take(held.Cells, own) && _seen[i].Add(hash))
                _used[i] += held.Rows;
        }
    }

    /// <summary>What an occurrence says itself of a term; empty for nothing.</summary>
    /// <param name="term">The term.</param>
    /// <param name="isOfficial">True when the column bears the name of the term and not one that says less.</param>
    public delegate ReadOnlySpan<char> Own(Term term, out bool isOfficial);

    /// <summary>What the extensions tell of a term where the occurrence at hand says nothing; null for nothing.</summary>
    public string? this[Term term] => _told[(int)term];

    /// <summary>The index of an extension with the number of its rows that filled a record so far; null where it has none.</summary>
    public (ExtensionIndex Index, long Used)? UseOf(ArchiveTable table)
    {
        for (var i = 0; i < _indexes.Count; i++)
        {
            if (ReferenceEquals(_indexes[i].Table, table))
                return (_indexes[i], _used[i]);
        }

        return null;
    }

    private bool Take(ExtensionCells cells, Own own) =>
        Take(Term.LengthMm, cells.Length, own) | Take(Term.Evidence, cells.Evidence, own) | Take(Term.EvidenceLink, cells.Link, own)
        | Take(Term.CompleteList, cells.Complete, own);

    private bool Take(Term term, string? text, Own own)
    {
        if (text is null || _told[(int)term] is not null)
            return false;
        var said = own(term, out var isOfficial).Trim();
        // HumanObservation in basisOfRecord says that somebody saw it, which a photograph does not gainsay.
        var saysLess = term == Term.Evidence && !isOfficial && ControlledWords.Evidence.Find(said) == "sighting";
        if (!said.IsEmpty && !RowCells.MeansNothing(said) && !saysLess)
            return false;
        _told[(int)term] = text;
        return true;
    }
}
