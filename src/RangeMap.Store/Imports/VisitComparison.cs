using System.Runtime.InteropServices;
using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>
/// Compares the records of an import with those that the store held before: the same taxon, place, day and recorder once
/// more, or one recorder far away on the same day. The import is noted as it goes; the store's side is read once, from the
/// visit log, which costs a fraction of asking for each record.
/// </summary>
internal sealed class VisitComparison(SqliteConnection connection, SqliteTransaction transaction, double farKm)
{
    private const int FilterBits = 20;

    private readonly Dictionary<(int Recorder, int Day), Visit> _visits = [];

    /// <summary>A bit for each recorder's day noted, and for a few others: of millions of visits in the log few are asked about, and this answers for most of the rest.</summary>
    private readonly ulong[] _filter = new ulong[1 << (FilterBits - 6)];

    /// <summary>Notes a record of one day that the import added or changed.</summary>
    public void Note(long record, in VisitEntry entry)
    {
        if (entry.Recorder == 0)
            return;
        var bit = FilterBit(entry);
        _filter[bit >> 6] |= 1UL << bit;
        ref var visit = ref CollectionsMarshal.GetValueRefOrAddDefault(_visits, (entry.Recorder, entry.Day), out _);
        (visit ??= new()).Noted.Add((record, entry));
    }

    /// <summary>The records in doubt; to be asked when the visits of the import are written.</summary>
    public IEnumerable<(long Record, Doubts Doubts)> Find()
    {
        if (_visits.Count == 0)
            yield break;
        Gather();
        foreach (var visit in _visits.Values)
        {
            foreach (var (record, entry) in visit.Noted)
            {
                var doubts = (visit.HeldBefore(entry) && HasTwin(record) ? Doubts.DuplicateRecord : 0) | (visit.IsFar(entry.SquareCode, farKm) ? Doubts.TwoFarPlaces : 0);
                if (doubts != 0)
                    yield return (record, doubts);
            }
        }
    }

    /// <summary>Sums what the log says of the days that the import touches, and takes away what the import itself added.</summary>
    private void Gather()
    {
        foreach (var data in connection.Query<byte[]>(CubeSql.VisitSegments, transaction: transaction, buffered: false))
        {
            foreach (var entry in VisitLog.Scan(data))
            {
                var bit = FilterBit(entry);
                if ((_filter[bit >> 6] >> bit & 1) != 0 && _visits.TryGetValue((entry.Recorder, entry.Day), out var visit))
                    visit.Add(entry, entry.Count);
            }
        }

        foreach (var visit in _visits.Values)
        {
            foreach (var (_, entry) in visit.Noted)
                visit.Add(entry, -entry.Count);
        }
    }

    private static int FilterBit(in VisitEntry entry) => (int)(((uint)entry.Recorder * 0x9E3779B1 ^ (uint)entry.Day * 0x85EBCA6B) >> (32 - FilterBits));

    /// <summary>The visit log does not know stage and sex: a worker and a queen of one visit are two records, not one sent twice.</summary>
    private bool HasTwin(long record) => connection.ExecuteScalar<bool>(ImportSql.HasTwin, new { record }, transaction);

    /// <summary>One recorder's day.</summary>
    private sealed class Visit
    {
        private readonly Dictionary<(long Square, int Taxon, bool Present), int> _before = [];

        public List<(long Record, VisitEntry Entry)> Noted { get; } = [];

        public void Add(in VisitEntry entry, int count)
        {
            ref var sum = ref CollectionsMarshal.GetValueRefOrAddDefault(_before, (entry.SquareCode, entry.TaxonNumber, entry.Present), out _);
            sum += count;
        }

        public bool HeldBefore(in VisitEntry entry) => _before.GetValueOrDefault((entry.SquareCode, entry.TaxonNumber, entry.Present)) > 0;

        public bool IsFar(long square, double farKm)
        {
            foreach (var (before, count) in _before)
            {
                if (count > 0 && before.Square != square && SquareDistance.Km(Square.FromCode(before.Square), Square.FromCode(square)) > farKm)
                    return true;
            }

            return false;
        }
    }
}
