using System.Runtime.CompilerServices;

namespace RangeMap.Records;

/// <summary>
/// Remembers answers about one or two objects, told apart by reference and not by what they say: a fraction of the time of a dictionary of texts, where equal texts are mostly one
/// string. A fixed number of slots; an answer that misses its slot takes it. Not safe for several threads at once.
/// </summary>
/// <param name="slotBits">The number of slots is 2 to this power.</param>
internal sealed class ReferenceMemo<T>(int slotBits)
{
    private readonly (object? First, object? Second, T Answer)[] _slots = new (object?, object?, T)[1 << slotBits];

    public bool TryGet(object first, object? second, out T answer)
    {
        ref var slot = ref SlotOf(first, second);
        answer = slot.Answer;
        return ReferenceEquals(slot.First, first) && ReferenceEquals(slot.Second, second);
    }

    public void Set(object first, object? second, T answer) => SlotOf(first, second) = (first, second, answer);

    private ref (object? First, object? Second, T Answer) SlotOf(object first, object? second)
    {
        var mixed = ((ulong)(uint)RuntimeHelpers.GetHashCode(first) << 32 | (uint)RuntimeHelpers.GetHashCode(second)) * 0x9E3779B97F4A7C15;
        return ref _slots[(int)((mixed ^ mixed >> 32) & (uint)(_slots.Length - 1))];
    }
}
