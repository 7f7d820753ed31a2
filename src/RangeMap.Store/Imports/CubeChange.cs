using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using RangeMap.Presence;

namespace RangeMap.Store;

/// <summary>
/// Collects what a change of records does to the cube and the visit log, and writes it as segments within the same
/// transaction. Memory stays bounded: when much has gathered it is written early, as a segment of its own.
/// </summary>
internal sealed class CubeChange(SqliteConnection connection, SqliteTransaction transaction)
{
    /// <summary>Cells and visits kept before they are written: about 100 MB at 24 bytes each. Small in debug builds, so that tests cross the seam.</summary>
#if DEBUG
    private const int MostGathered = 50;
#else
    private const int MostGathered = 4_000_000;
#endif

    private readonly Dictionary<int, List<CubeCell>> _cells = [];
    private readonly List<VisitEntry> _visits = [];
    private int _gathered;

    public void Add(int taxon, in CubeCell cell)
    {
        ref var cells = ref CollectionsMarshal.GetValueRefOrAddDefault(_cells, taxon, out _);
        (cells ??= []).Add(cell);
        WriteWhenMany();
    }

    public void Add(in VisitEntry visit)
    {
        _visits.Add(visit);
        WriteWhenMany();
    }

    /// <summary>Adds what a stored record says.</summary>
    public void Add(RecordRow row)
    {
        if (row.TryCell(out var cell))
            Add((int)row.Taxon, cell);
        if (row.TryVisit(out var visit))
            Add(visit);
    }

    /// <summary>Takes back what a stored record had added.</summary>
    public void Remove(RecordRow row)
    {
        if (row.TryCell(out var cell))
            Add((int)row.Taxon, cell with { Counts = -cell.Counts });
        if (row.TryVisit(out var visit))
            Add(visit with { Count = -visit.Count });
    }

    public void Write()
    {
        foreach (var (taxon, cells) in _cells)
            CubeStore.Add(connection, transaction, taxon, TaxonCube.Gather(CollectionsMarshal.AsSpan(cells)));
        CubeStore.Add(connection, transaction, VisitLog.Gather(CollectionsMarshal.AsSpan(_visits)));
        _cells.Clear();
        _visits.Clear();
        _gathered = 0;
    }

    private void WriteWhenMany()
    {
        if (++_gathered >= MostGathered)
            Write();
    }
}
