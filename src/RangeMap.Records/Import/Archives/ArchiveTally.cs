using System.IO.Hashing;
using System.Runtime.InteropServices;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>Counts the rows of the extensions of an archive, and how many of them filled a record, once all occurrences were read.</summary>
/// <param name="files">The files of the archive.</param>
/// <param name="extensions">The tables that belong to the core, without the occurrences.</param>
/// <param name="notes">What was noticed before the first row.</param>
internal sealed class ArchiveTally(FileBundle files, IReadOnlyList<ArchiveTable> extensions, IReadOnlyList<string> notes)
{
    private readonly SeenHashes _ids = new();
    private readonly List<string> _problems = [];
    private List<KeptFile>? _kept;

    /// <summary>What was counted; empty until all occurrences were read.</summary>
    public IReadOnlyList<KeptFile> Kept => _kept ?? [];

    /// <summary>Remembers the identifier of a core row, in 64 bits.</summary>
    public void Note(ReadOnlySpan<char> id)
    {
        if (extensions.Count > 0 && !id.IsEmpty)
            _ids.Add(HashOf(id));
    }

    /// <summary>Counts all rows of the extensions, once.</summary>
    /// <param name="core">The core that they belong to; null where the occurrences are the core.</param>
    /// <param name="fill">What became of their rows.</param>
    public void CountExtensions(CoreIndex? core, ExtensionFill fill)
    {
        if (_kept is not null)
            return;
        _kept = [];
        foreach (var table in extensions)
            Count(table, core, fill.UseOf(table));
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
            yield return ExtensionWords.Of(kept);
    }

    private void Count(ArchiveTable table, CoreIndex? core, (ExtensionIndex Index, long Used)? use)
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

            _kept!.Add(new(string.Join(", ", table.Files), table.Kind, count, orphans) { Used = use?.Used ?? 0, BeyondLimit = use?.Index.BeyondLimit ?? 0 });
        }
        catch (ImportProblemException stopped)
        {
            // The occurrences are sound; a broken extension does not take them away.
            _problems.Add($"An extension could not be read and was not used: {stopped.Message}");
        }
    }

    private static ulong HashOf(ReadOnlySpan<char> id) => XxHash3.HashToUInt64(MemoryMarshal.AsBytes(id));
}
