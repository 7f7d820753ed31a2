using System.Buffers;

namespace RangeMap.Presence;

/// <summary>Every visit of a data folder, with the taxa noted on it: what effort is measured from. A group under addition, like <see cref="TaxonCube"/>.</summary>
public sealed class VisitLog
{
    private readonly VisitEntry[] _entries;

    private VisitLog(VisitEntry[] sortedDistinctNonZero) => _entries = sortedDistinctNonZero;

    /// <summary>The log without visits.</summary>
    public static VisitLog Empty { get; } = new([]);

    /// <summary>The entries, ascending, each note once.</summary>
    public ReadOnlySpan<VisitEntry> Entries => _entries;

    /// <summary>Gathers entries in any order, sorting the given memory in place; equal notes are summed.</summary>
    public static VisitLog Gather(Span<VisitEntry> entries) => new(entries[..SumInPlace(entries)].ToArray());

    /// <summary>Gathers entries in any order into a log's packed form; sorts and sums in the memory given, which may be used again.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="count">Number of entries of the log.</param>
    public static byte[] PackSum(Span<VisitEntry> entries, out int count)
    {
        count = SumInPlace(entries);
        return Pack(entries[..count]);
    }

    /// <summary>The sum of logs.</summary>
    public static VisitLog Sum(IReadOnlyCollection<VisitLog> logs)
    {
        if (logs.Count == 1)
            return logs.First();
        var all = new List<VisitEntry>(logs.Sum(log => log._entries.Length));
        foreach (var log in logs)
            all.AddRange(log._entries);
        return Gather(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(all));
    }

    /// <summary>The entries of a packed form one by one, for a look at some of them without room for all.</summary>
    /// <exception cref="InvalidDataException">While reading: the bytes are no packed log.</exception>
    public static PackedVisits Scan(ReadOnlySpan<byte> bytes) => new(bytes);

    /// <summary>Packs the log as differences between neighbours, about five bytes an entry.</summary>
    public byte[] Pack() => Pack(_entries);

    private static byte[] Pack(ReadOnlySpan<VisitEntry> entries)
    {
        var bytes = new VarintWriter(entries.Length * 6);
        VisitEntry before = default;
        foreach (ref readonly var entry in entries)
        {
            bytes.Write(entry.SquareCode - before.SquareCode);
            bytes.Write(entry.Day - before.Day);
            bytes.Write(entry.Recorder - before.Recorder);
            bytes.Write(((long)(PackedVisits.NoteOf(entry) - PackedVisits.NoteOf(before)) << 1) | (entry.Present ? 1L : 0L));
            bytes.Write(entry.Count);
            before = entry;
        }

        return bytes.ToArray();
    }

    /// <summary>The log of a packed form.</summary>
    /// <exception cref="InvalidDataException">The bytes are no packed log.</exception>
    public static VisitLog Unpack(ReadOnlySpan<byte> bytes)
    {
        var entries = new List<VisitEntry>(bytes.Length / 5);
        foreach (var entry in new PackedVisits(bytes))
            entries.Add(entry);
        return Gather(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(entries));
    }

    /// <summary>By square first, whose numbers alone compare quickest, then within each square.</summary>
    private static void Sort(Span<VisitEntry> entries)
    {
        var squares = ArrayPool<long>.Shared.Rent(entries.Length);
        for (var i = 0; i < entries.Length; i++)
            squares[i] = entries[i].SquareCode;
        squares.AsSpan(0, entries.Length).Sort(entries);
        for (var start = 0; start < entries.Length;)
        {
            var end = start + 1;
            while (end < entries.Length && squares[end] == squares[start])
                end++;
            if (end - start > 1)
                entries[start..end].Sort();
            start = end;
        }

        ArrayPool<long>.Shared.Return(squares);
    }

    private static int SumInPlace(Span<VisitEntry> entries)
    {
        Sort(entries);
        var count = 0;
        for (var i = 0; i < entries.Length;)
        {
            var entry = entries[i++];
            while (i < entries.Length && entries[i].SameNote(entry))
                entry = entry with { Count = entry.Count + entries[i++].Count };
            if (entry.Count != 0)
                entries[count++] = entry;
        }

        return count;
    }
}
