using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics.X86;

namespace RangeMap.Records;

/// <summary>
/// Asks the processor for memory that will be read some hundred instructions later. The tables of hashes of a large import are far larger than
/// any cache, and each look-up would wait for memory otherwise (measured on 10 million rows: an eighth of all time).
/// </summary>
internal static class Prefetch
{
    /// <summary>Asks for the memory of a place; does nothing where the processor has no such instruction.</summary>
    public static unsafe void Of<T>(ref T place)
    {
        // The place may move before the memory arrives; then the hint was in vain, and nothing is read through the pointer.
        if (Sse.IsSupported)
            Sse.Prefetch0(Unsafe.AsPointer(ref place));
    }
}
