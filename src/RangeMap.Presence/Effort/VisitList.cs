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
    /// <summary>True when the list, or one of them where the square holds several places, has all taxa of the group that were found.</summary>
    public bool Complete { get; init; }

    /// <summary>The store's numbers of the taxa noted as absent and not as present, ascending; null for none.</summary>
    public int[]? Absent { get; init; }

    /// <summary>
    /// True when the recorder certainly looked for a taxon of the group: it was noted, as present or absent, or the list is complete. On any
    /// other visit a taxon that was not noted may have been passed over.
    /// </summary>
    public bool LookedFor(int taxon) => Complete || Array.BinarySearch(Taxa, taxon) >= 0 || (Absent is not null && Array.BinarySearch(Absent, taxon) >= 0);

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
        var (taxa, absent) = (new List<int>(), new List<int>());
        for (var i = 0; i < sorted.Length;)
        {
            ref readonly var first = ref sorted[i];
            taxa.Clear();
            absent.Clear();
            var complete = false;
            for (; i < sorted.Length && IsSameVisit(sorted[i], first); i++)
            {
                complete |= sorted[i].Complete;
                var noted = sorted[i].Present ? taxa : absent;
                if (noted.Count == 0 || noted[^1] != sorted[i].TaxonNumber)
                    noted.Add(sorted[i].TaxonNumber);
            }

            absent.RemoveAll(taxon => taxa.BinarySearch(taxon) >= 0);
            lists.Add(new(Square.FromCode(first.SquareCode), first.Day, first.Recorder, [.. taxa]) { Complete = complete, Absent = absent.Count == 0 ? null : [.. absent] });
        }

        return lists;
    }

    private static bool IsSameVisit(in VisitEntry a, in VisitEntry b) => a.SquareCode == b.SquareCode && a.Day == b.Day && a.Recorder == b.Recorder;
}
