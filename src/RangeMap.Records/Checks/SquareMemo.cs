using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// Remembers answers about squares, each for some object such as a taxon. A fixed number of slots; an answer that misses its slot
/// takes it. Not safe for several threads at once.
/// </summary>
internal sealed class SquareMemo<T>
{
    private const int SlotBits = 14;
    private readonly (object? About, long Square, T Answer)[] _slots = new (object?, long, T)[1 << SlotBits];

    public bool TryGet(Square square, object about, out T answer)
    {
        ref var slot = ref _slots[SlotOf(square, about)];
        answer = slot.Answer;
        return ReferenceEquals(slot.About, about) && slot.Square == square.Code;
    }

    public void Set(Square square, object about, T answer) => _slots[SlotOf(square, about)] = (about, square.Code, answer);

    private static int SlotOf(Square square, object about) =>
        (int)(((ulong)square.Code ^ (ulong)System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(about) << 32) * 0x9E3779B97F4A7C15 >> (64 - SlotBits));
}
