using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace RangeMap.Records;

/// <summary>A column that counts for the identity of a row, with the mark that stays when columns change places.</summary>
/// <param name="Column">Its place in the file.</param>
/// <param name="Mark">Hash of the term's name, or of the header of a column that is kept and not used.</param>
internal readonly record struct IdentityColumn(int Column, ulong Mark)
{
    /// <summary>The mark of a name, whose case does not count.</summary>
    public static ulong MarkOf(string name) => XxHash3.HashToUInt64(MemoryMarshal.AsBytes(name.ToUpperInvariant().AsSpan()));

    /// <summary>All columns but those of an earlier refusal, in an order that does not depend on their places.</summary>
    public static IdentityColumn[] Of(ColumnMapping mapping) =>
        [.. Enumerable.Range(0, mapping.Columns.Count)
            .Where(i => !RefusalColumns.Contains(mapping.Columns[i]))
            .Select(i => new IdentityColumn(i, MarkOf(mapping.TermOf(i) is { } term ? TermNames.Name(term) : mapping.Columns[i])))
            .OrderBy(c => c.Mark)];
}
