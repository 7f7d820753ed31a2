using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace RangeMap.Records;

/// <summary>
/// What the rows of one extension tell about occurrences, by the occurrence. Only rows that tell something are held, up to a limit: an
/// archive may have many millions of others.
/// </summary>
/// <remarks>
/// An occurrence is known by a 64-bit hash of its identifier. Among 2 million held and 10 million occurrences the odds that any takes
/// what belongs to another are about 1 in a million.
/// </remarks>
internal sealed class ExtensionIndex
{
    /// <summary>Links that one record takes; more are left.</summary>
    private const int MostLinks = 5;

    private readonly Dictionary<ulong, int> _held = [];
    private readonly PackedCells _packed = new();

    private ExtensionIndex(ArchiveTable table, ExtensionTable reader)
    {
        Table = table;
        Reader = reader;
    }

    /// <summary>The extension.</summary>
    public ArchiveTable Table { get; }

    /// <summary>Reads its rows.</summary>
    public ExtensionTable Reader { get; }

    /// <summary>True where it is asked by the identifier of the core row, false where by the occurrenceID.</summary>
    public required bool IsByCore { get; init; }

    /// <summary>Rows that would have told something of an occurrence beyond the limit; none of them is used.</summary>
    public long BeyondLimit { get; private set; }

    /// <summary>Reads an extension.</summary>
    /// <param name="files">The files of the archive.</param>
    /// <param name="table">The extension.</param>
    /// <param name="coreHoldsOccurrences">False where the extension belongs to events: then only its rows with an occurrenceID of their own tell of an occurrence.</param>
    /// <param name="limits">How much may be held.</param>
    /// <returns>Null where no row of the extension can tell of an occurrence.</returns>
    /// <exception cref="ImportProblemException">It cannot be read.</exception>
    public static ExtensionIndex? Read(FileBundle files, ArchiveTable table, bool coreHoldsOccurrences, FileLimits limits)
    {
        if (ExtensionTable.Of(table) is not { } reader)
            return null;
        var index = new ExtensionIndex(table, reader) { IsByCore = coreHoldsOccurrences || reader.TellsOfCore };
        if (!(index.IsByCore ? table.IdIndex is not null : table.Fields.Any(f => f.ShortName == "occurrenceID")))
            return null;
        using var rows = new TableRows(files, table);
        var row = new ExtensionRow(rows);
        while (rows.Read())
        {
            if (rows.IsBlank || rows.Fault is not null)
                continue;
            var id = index.IsByCore ? rows.Id : row["occurrenceID"];
            if (!id.IsEmpty && reader.Read(row) is { } cells)
                index.Add(HashOf(id), cells, limits);
        }

        return index;
    }

    /// <summary>What is told of an occurrence and by how many rows; null for nothing.</summary>
    /// <param name="id">The identifier.</param>
    /// <param name="hash">Its hash, the same for the same rows.</param>
    public (ExtensionCells Cells, int Rows)? Find(ReadOnlySpan<char> id, out ulong hash) => _held.TryGetValue(hash = HashOf(id), out var at) ? _packed.Read(at) : null;

    private static ulong HashOf(ReadOnlySpan<char> id) => XxHash3.HashToUInt64(MemoryMarshal.AsBytes(id));

    /// <summary>The first length counts, and the first few links; what else there is stays in the archive.</summary>
    private void Add(ulong occurrence, ExtensionCells cells, FileLimits limits)
    {
        var rows = 1;
        var isKnown = _held.TryGetValue(occurrence, out var at);
        if (isKnown)
        {
            var held = _packed.Read(at);
            if (cells.Link is null || held.Rows == MostLinks)
                return;
            (cells, rows) = (held.Cells with { Link = $"{held.Cells.Link} | {cells.Link}" }, held.Rows + 1);
        }

        if (_packed.Bytes >= limits.ExtensionBytes || (!isKnown && _held.Count >= limits.ExtensionOccurrences))
            BeyondLimit++;
        else
            _held[occurrence] = _packed.Add(cells, rows);
    }
}
