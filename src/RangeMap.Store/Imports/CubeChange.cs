using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using RangeMap.Presence;

namespace RangeMap.Store;

/// <summary>
/// Collects what a change of records does to the cube and the visit log, and writes it as segments within the same
/// transaction. Memory stays bounded: when much has gathered it is written early, as segments of its own. Sorting and
/// packing run beside whatever else the import does; only the writing itself needs the connection.
/// </summary>
internal sealed class CubeChange(SqliteConnection connection, SqliteTransaction transaction)
{
    /// <summary>
    /// Cells and visits kept before they are packed: about 50 MB at 24 bytes each, twice that while as many are being packed. Small
    /// in debug builds, so that tests cross the seam.
    /// </summary>
#if DEBUG
    private const int MostGathered = 50;
#else
    private const int MostGathered = 2_000_000;
#endif

    private Gathering _now = new(), _packed = new();
    private int _gathered;
    private Task<PackedChange>? _packing;

    public void Add(int taxon, in CubeCell cell)
    {
        ref var cells = ref CollectionsMarshal.GetValueRefOrAddDefault(_now.Cells, taxon, out _);
        (cells ??= []).Add(cell);
        PackWhenMany();
    }

    public void Add(in VisitEntry visit)
    {
        _now.Visits.Add(visit);
        PackWhenMany();
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

    /// <summary>Begins to pack what has gathered, after writing what was packed before.</summary>
    private void BeginPacking()
    {
        WritePacked();
        var gathering = _now;
        (_now, _packed, _gathered) = (_packed, _now, 0);
        _packing = Task.Run(() => PackedChange.Of(gathering.Cells, gathering.Visits));
    }

    /// <summary>Writes all that was added.</summary>
    public void Write()
    {
        BeginPacking();
        WritePacked();
    }

    private void WritePacked()
    {
        if (_packing is null)
            return;
        var packed = _packing.GetAwaiter().GetResult();
        foreach (var (taxon, segment) in packed.Cubes)
            CubeStore.Add(connection, transaction, taxon, segment);
        CubeStore.Add(connection, transaction, packed.Visits);
        _packed.Clear();
        _packing = null;
    }

    private void PackWhenMany()
    {
        if (++_gathered >= MostGathered)
            BeginPacking();
    }

    /// <summary>What has gathered. There are two, used in turn, so that their memory is not made anew for each packing.</summary>
    private sealed class Gathering
    {
        public Dictionary<int, List<CubeCell>> Cells { get; } = [];

        public List<VisitEntry> Visits { get; } = [];

        public void Clear()
        {
            foreach (var cells in Cells.Values)
                cells.Clear();
            Visits.Clear();
        }
    }
}
