using System.IO.Hashing;
using System.Runtime.InteropServices;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>Counts the rows of the tables of an archive that are not used, once all occurrences were read.</summary>
/// <param name="files">The files of the archive.</param>
/// <param name="unused">The tables.</param>
/// <param name="notes">What was noticed before the first row.</param>
internal sealed class ArchiveTally(FileBundle files, IReadOnlyList<ArchiveTable> unused, IReadOnlyList<string> notes)
{
    private readonly SeenHashes _ids = new();
    private readonly List<string> _problems = [];
    private List<KeptFile>? _kept;

    /// <summary>What was counted; empty until all occurrences were read.</summary>
    public IReadOnlyList<KeptFile> Kept => _kept ?? [];

    /// <summary>Remembers the identifier of a core row, in 64 bits.</summary>
    public void Note(ReadOnlySpan<char> id)
    {
        if (unused.Count > 0 && !id.IsEmpty)
            _ids.Add(HashOf(id));
    }

    /// <summary>Counts all rows of the unused tables, once.</summary>
    /// <param name="core">The core that they belong to; null where the occurrences are the core.</param>
    public void CountExtensions(CoreIndex? core)
    {
        if (_kept is not null)
            return;
        _kept = [];
        foreach (var table in unused)
            Count(table, core);
    }

    /// <summary>What was noticed, in sentences.</summary>
    public IEnumerable<string> Sentences(CoreIndex? core)
    {
        foreach (var note in notes.Concat(_problems))
            yield return note;
        if (core is { Broken: > 0 })
            yield return Invariant($"{core.Broken:N0} rows of the core are broken or repeat an identifier; they were not used.");
        if (core is { Unused: > 0 } && _kept is not null)
            yield return Invariant($"{core.Unused:N0} rows of the core have no occurrence.");
        foreach (var kept in Kept)
            yield return Invariant($"{kept.Name}: {kept.Rows:N0} rows of {kept.RowType}, counted and not used") + (kept.Orphans > 0 ? Invariant($"; {kept.Orphans:N0} of them belong to no row of the core.") : ".");
    }

    private void Count(ArchiveTable table, CoreIndex? core)
    {
        try
        {
            using var rows = new TableRows(files, table);
            long count = 0, orphans = 0;
            while (rows.Read())
            {
                if (rows.IsBlank)
                    continue;
                count++;
                orphans += core?.Contains(rows.Id) ?? _ids.Contains(HashOf(rows.Id)) ? 0 : 1;
            }

            _kept!.Add(new(string.Join(", ", table.Files), table.Kind, count, orphans));
        }
        catch (ImportProblemException stopped)
        {
            // The occurrences are sound; a broken table that is not used does not take them away.
            _problems.Add($"A table that is not used could not be counted: {stopped.Message}");
        }
    }

    private static ulong HashOf(ReadOnlySpan<char> id) => XxHash3.HashToUInt64(MemoryMarshal.AsBytes(id));
}
