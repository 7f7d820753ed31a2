using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>The rows of a core that occurrences belong to, such as events, by their identifier; held in memory, up to a limit.</summary>
internal sealed class CoreIndex
{
    private const char EndOfCell = '\u001F';
    private readonly Dictionary<string, string> _rows = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> _byId;
    private readonly HashSet<string> _used = new(StringComparer.Ordinal);
    private string[] _cells = [];

    private CoreIndex(IReadOnlyList<string> header)
    {
        Header = header;
        _byId = _rows.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>The names of the columns.</summary>
    public IReadOnlyList<string> Header { get; }

    /// <summary>Rows whose own text is broken, and rows with an identifier that an earlier one has; none of them is used.</summary>
    public long Broken { get; private set; }

    /// <summary>Rows that no occurrence belonged to so far.</summary>
    public long Unused => _rows.Count - _used.Count;

    /// <summary>Reads all rows of the core.</summary>
    /// <exception cref="ImportProblemException">They are more than the limits allow.</exception>
    public static CoreIndex Read(TableRows rows, FileLimits limits)
    {
        var index = new CoreIndex(rows.Header);
        var characters = 0L;
        while (rows.Read())
        {
            if (rows.IsBlank)
                continue;
            var text = rows.Fault is null && !rows.Id.IsEmpty ? Join(rows) : null;
            if (text is null || !index._rows.TryAdd(rows.Id.ToString(), text))
                index.Broken++;
            characters += text?.Length ?? 0;
            if (characters > limits.EventCharacters || index._rows.Count > limits.Events)
            {
                throw ContainerProblem.Of(
                    Invariant($"The archive has more than {limits.Events:N0} rows of {rows.Table.Kind}, or more than {limits.EventCharacters:N0} characters in them."), $"{rows.File}, line {rows.Line}",
                    "Split the archive, or write date and place into each occurrence.");
            }
        }

        return index;
    }

    /// <summary>True when there is a row of this identifier.</summary>
    public bool Contains(ReadOnlySpan<char> id) => _byId.ContainsKey(id);

    /// <summary>Moves to the row of an identifier; false if there is none.</summary>
    public bool MoveTo(ReadOnlySpan<char> id)
    {
        if (!_byId.TryGetValue(id, out var key, out var row))
        {
            _cells = [];
            return false;
        }

        _used.Add(key);
        _cells = row.Split(EndOfCell);
        return true;
    }

    /// <summary>A cell of the row moved to; empty where there is none.</summary>
    public ReadOnlySpan<char> Cell(int column) => column < _cells.Length ? _cells[column] : "";

    private static string Join(TableRows rows)
    {
        var cells = new string[rows.Header.Count];
        for (var i = 0; i < cells.Length; i++)
            cells[i] = rows[i].ToString().Replace(EndOfCell, ' ');
        return string.Join(EndOfCell, cells);
    }
}
