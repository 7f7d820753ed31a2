namespace RangeMap.Presence;

/// <summary>Reads the entries of a packed visit log in their order; a duck-typed enumerator, so that <c>foreach</c> takes it.</summary>
public ref struct PackedVisits
{
    private VarintReader _reader;
    private VisitEntry _at;
    private int _note;

    internal PackedVisits(ReadOnlySpan<byte> bytes) => _reader = new(bytes);

    /// <summary>The entry at hand.</summary>
    public readonly VisitEntry Current => _at;

    /// <summary>Itself.</summary>
    public readonly PackedVisits GetEnumerator() => this;

    /// <summary>Moves to the next entry; false at the end.</summary>
    /// <exception cref="InvalidDataException">The bytes are no packed log.</exception>
    public bool MoveNext()
    {
        if (_reader.AtEnd)
            return false;
        var (square, day, recorder, note) = (_reader.Read(), (int)_reader.Read(), (int)_reader.Read(), _reader.Read());
        _note += (int)(note >> 1);
        _at = new(_at.SquareCode + square, _at.Day + day, _at.Recorder + recorder, Math.Abs(_note), (note & 1) == 1, (int)_reader.Read(), _note < 0);
        return true;
    }

    /// <summary>
    /// The taxon as it is packed: below 0 on a complete list. Taxa are numbered from 1, and logs that were packed before complete lists were
    /// told apart have none below 0, so they are read as they are.
    /// </summary>
    internal static int NoteOf(in VisitEntry entry) => entry.Complete ? -entry.TaxonNumber : entry.TaxonNumber;
}
