using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace RangeMap.Store;

/// <summary>Tells whether a record still says what a person saw: from what the file said, and from what was decided.</summary>
internal static class RecordVersion
{
    /// <summary>The version of a record.</summary>
    public static long Of(long content, long taxon, long status) => (long)XxHash3.HashToUInt64(MemoryMarshal.AsBytes((ReadOnlySpan<long>)[content, taxon, status]));
}
