using System.Runtime.InteropServices;
using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Presence;

namespace RangeMap.Store;

/// <summary>
/// Compares the cube and the visit log with the records: the segments are added, every record is taken back, and nothing
/// may be left. Memory is bounded by the cells that the cube really has, because equal cells are summed on the way.
/// </summary>
internal sealed class CubeVerification
{
#if DEBUG
    private const int MostGathered = 50;
#else
    private const int MostGathered = 4_000_000;
#endif

    private readonly Dictionary<int, List<CubeCell>> _cells = [];
    private List<VisitEntry> _visits = [];
    private int _gathered;

    public static IReadOnlyList<string> FindProblems(SqliteConnection connection, SqliteTransaction transaction)
    {
        var difference = new CubeVerification();
        try
        {
            foreach (var row in connection.Query<SegmentRow>(CubeSql.SegmentsOfAll, transaction: transaction, buffered: false))
                difference.CellsOf(row.Taxon).AddRange(CubeCodec.Unpack(row.Data).Cells);
            foreach (var data in connection.Query<byte[]>(CubeSql.VisitSegments, transaction: transaction, buffered: false))
                difference._visits.AddRange(VisitLog.Unpack(data).Entries);
        }
        catch (InvalidDataException error)
        {
            return [$"The cube cannot be read: {error.Message}"];
        }

        foreach (var row in connection.Query<RecordRow>(VerificationSql.Records, transaction: transaction, buffered: false))
            difference.TakeBack(row);
        return [.. difference.Left()];
    }

    private List<CubeCell> CellsOf(int taxon)
    {
        ref var cells = ref CollectionsMarshal.GetValueRefOrAddDefault(_cells, taxon, out _);
        return cells ??= [];
    }

    private void TakeBack(RecordRow row)
    {
        if (row.TryCell(out var cell))
            CellsOf((int)row.Taxon).Add(cell with { Counts = -cell.Counts });
        if (row.TryVisit(out var visit))
            _visits.Add(visit with { Count = -visit.Count });
        if (++_gathered >= MostGathered)
            Settle();
    }

    private void Settle()
    {
        foreach (var taxon in _cells.Keys)
            _cells[taxon] = [.. TaxonCube.Gather(CollectionsMarshal.AsSpan(_cells[taxon])).Cells];
        _visits = [.. VisitLog.Gather(CollectionsMarshal.AsSpan(_visits)).Entries];
        _gathered = 0;
    }

    private IEnumerable<string> Left()
    {
        Settle();
        foreach (var (taxon, cells) in _cells.Where(pair => pair.Value.Count > 0).OrderBy(pair => pair.Key))
            yield return FormattableString.Invariant($"The cube of taxon number {taxon} and its records differ in {cells.Count} cells.");
        if (_visits.Count > 0)
            yield return FormattableString.Invariant($"The visits and the records differ in {_visits.Count} notes.");
    }

    private sealed record SegmentRow
    {
        public int Taxon { get; init; }

        public byte[] Data { get; init; } = [];
    }
}
