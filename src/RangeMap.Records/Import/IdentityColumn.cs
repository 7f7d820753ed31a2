namespace RangeMap.Records;

/// <summary>A column that counts for the identity of a row, with the mark that stays when columns change places.</summary>
/// <param name="Column">Its place in the file.</param>
/// <param name="Mark">The term, or the header of a column that is kept and not used.</param>
internal readonly record struct IdentityColumn(int Column, string Mark)
{
    /// <summary>All columns but those of an earlier refusal, in an order that does not depend on their places.</summary>
    public static IReadOnlyList<IdentityColumn> Of(ColumnMapping mapping) =>
        [.. Enumerable.Range(0, mapping.Columns.Count)
            .Where(i => !RefusalColumns.Contains(mapping.Columns[i]))
            .Select(i => new IdentityColumn(i, mapping.TermOf(i) is { } term ? TermNames.Name(term) : mapping.Columns[i]))
            .OrderBy(c => c.Mark, StringComparer.Ordinal)];
}
