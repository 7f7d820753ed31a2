namespace RangeMap.Records;

/// <summary>The row of an extension that a reader stands on, by the short names of its columns.</summary>
internal sealed class ExtensionRow(TableRows rows)
{
    private readonly Dictionary<string, int> _columns = rows.Header.Select((name, i) => (name, i)).ToDictionary(c => c.name, c => c.i, StringComparer.OrdinalIgnoreCase);

    /// <summary>Trimmed text of a column; empty where there is none.</summary>
    public ReadOnlySpan<char> this[string column]
    {
        get
        {
            if (!_columns.TryGetValue(column, out var index))
                return default;
            var text = rows[index].Trim();
            return RowCells.MeansNothing(text) ? default : text;
        }
    }
}
