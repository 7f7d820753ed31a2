using System.Runtime.InteropServices;
using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>One visit with the taxa noted as present: one square, one day, one recorder or party.</summary>
/// <param name="Square">The square, of the size that was asked.</param>
/// <param name="Day">The day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="Recorder">The store's number of the recorder or party; 0 when not named.</param>
/// <param name="Taxa">The store's numbers of the taxa, ascending, each once; empty where only absences were noted.</param>
public readonly record struct VisitList(Square Square, int Day, int Recorder, int[] Taxa)
{
    /// <summary>The visits of a log, by square, day and recorder.</summary>
    /// <param name="log">The log.</param>
    /// <param name="size">The side; notes whose own square fits in no square of this side are left out.</param>
    /// <param name="counts">Tells by taxon number whether a taxon is recorded together with those of interest.</param>
    public static IReadOnlyList<VisitList> Of(VisitLog log, SquareSize size, Func<int, bool> counts)
    {
        var notes = new List<VisitEntry>(log.Entries.Length);
        foreach (ref readonly var entry in log.Entries)
        {
            if (counts(entry.TaxonNumber) && Square.FromCode(entry.SquareCode).TryCoarsen(size, out var container))
                notes.Add(entry with { SquareCode = container.Code });
        }

        var sorted = VisitLog.Gather(CollectionsMarshal.AsSpan(notes)).Entries;
        var lists = new List<VisitList>();
        var taxa = new List<int>();
        for (var i = 0; i < sorted.Length;)
        {
            ref readonly var first = ref sorted[i];
            taxa.Clear();
            for (; i < sorted.Length && IsSameVisit(sorted[i], first); i++)
            {
                if (sorted[i].Present && (taxa.Count == 0 || taxa[^1] != sorted[i].TaxonNumber))
                    taxa.Add(sorted[i].TaxonNumber);
            }

            lists.Add(new(Square.FromCode(first.SquareCode), first.Day, first.Recorder, [.. taxa]));
        }

        return lists;
    }

    private static bool IsSameVisit(in VisitEntry a, in VisitEntry b) => a.SquareCode == b.SquareCode && a.Day == b.Day && a.Recorder == b.Recorder;
}
