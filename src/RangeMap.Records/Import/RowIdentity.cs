using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace RangeMap.Records;

/// <summary>
/// Gives rows their identity. A row with an occurrenceID is known by it, any other by everything it says; the second and
/// later rows of the same identity in a file are told apart by their ordinal and marked as repeated.
/// </summary>
/// <remarks>
/// Identities are 128-bit hashes (XXH3). Which of them were seen is remembered in 64 bits each: among 10 million rows
/// the odds that any row is taken for a repeated one by mistake are about 3 in a million, and it would be kept even so.
/// </remarks>
/// <param name="expectedRows">Rows to make room for at once; more still fit.</param>
internal sealed class RowIdentity(long expectedRows = 0)
{
    private const char EndOfValue = '\u001F';

    /// <summary>Characters that a 64-bit number takes.</summary>
    private const int MarkLength = 4;

    private readonly SeenHashes _seen = new(expectedRows);
    private readonly Dictionary<ulong, int> _repeats = [];
    private char[] _text = new char[1024];
    private int _length;

    /// <summary>Begins a row.</summary>
    public void Begin() => _length = 0;

    /// <summary>Adds what one column says; an empty cell adds nothing, so that a new empty column changes no identity.</summary>
    /// <param name="mark">What the column is; see <see cref="IdentityColumn"/>.</param>
    /// <param name="value">The cell.</param>
    public void Add(ulong mark, ReadOnlySpan<char> value)
    {
        if (value.IsEmpty)
            return;
        var place = Make(MarkLength + 1 + value.Length);
        MemoryMarshal.Write(MemoryMarshal.AsBytes(place), mark);
        value.CopyTo(place[MarkLength..]);
        place[^1] = EndOfValue;
    }

    /// <summary>Adds a number.</summary>
    public void Add(long number) => MemoryMarshal.Write(MemoryMarshal.AsBytes(Make(MarkLength)), number);

    /// <summary>Hash of all that was added.</summary>
    public UInt128 Hash() => XxHash128.HashToUInt128(MemoryMarshal.AsBytes(_text.AsSpan(0, _length)));

    /// <summary>What the row whose cells were added is known by; <see cref="KeyOf"/> makes its identity of it.</summary>
    /// <param name="occurrenceId">The row's own identifier, or empty.</param>
    public UInt128 KnownBy(ReadOnlySpan<char> occurrenceId)
    {
        var key = occurrenceId.IsEmpty ? Hash() : XxHash128.HashToUInt128(MemoryMarshal.AsBytes(occurrenceId), seed: 1);
        _seen.Expect((ulong)key);
        return key;
    }

    /// <summary>The identity of a row.</summary>
    /// <param name="key">What it is known by.</param>
    /// <param name="repeated">True when an earlier row of the file had the same identity.</param>
    public UInt128 KeyOf(UInt128 key, out bool repeated)
    {
        var mark = (ulong)key;
        repeated = !_seen.Add(mark);
        if (!repeated)
            return key;
        var ordinal = _repeats[mark] = _repeats.GetValueOrDefault(mark) + 1;
        return XxHash128.HashToUInt128(MemoryMarshal.AsBytes(new Span<UInt128>(ref key)), seed: ordinal + 1);
    }

    private Span<char> Make(int room)
    {
        if (_length + room > _text.Length)
            Array.Resize(ref _text, Math.Max(_text.Length * 2, _length + room));
        _length += room;
        return _text.AsSpan(_length - room, room);
    }
}
