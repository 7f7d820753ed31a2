using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Presence;

namespace RangeMap.Store;

/// <summary>Reads cubes and the visit log; writes changes of them within someone else's transaction.</summary>
public sealed class CubeStore(Database database)
{
    /// <summary>A taxon with more segments than this has them merged into one at the end of a change.</summary>
    internal const int MostSegments = 12;

    /// <summary>The cube of the records made at the taxa named, summed: one number for a species, several for an aggregate.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public TaxonCube Read(IReadOnlyCollection<int> taxonNumbers) => database.Use(connection =>
    {
        // One transaction: an import that ends between two taxa must not show in one and not in the other.
        using var transaction = connection.BeginTransaction(deferred: true);
        var cubes = new List<TaxonCube>();
        foreach (var number in taxonNumbers)
            cubes.AddRange(ReadSegments(connection, transaction, number));
        return cubes.Count == 0 ? TaxonCube.Empty : TaxonCube.Sum(cubes);
    });

    /// <summary>Every taxon's own cube, by taxon number; taxa without records are left out.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyDictionary<int, TaxonCube> ReadAll() => database.Use(connection =>
        connection.Query<SegmentRow>(CubeSql.SegmentsOfAll, buffered: false)
            .GroupBy(row => row.Taxon)
            .Select(rows => (Number: rows.Key, Cube: TaxonCube.Sum([.. rows.Select(row => CubeCodec.Unpack(row.Data))])))
            .Where(pair => pair.Cube.Cells.Length > 0)
            .ToDictionary(pair => pair.Number, pair => pair.Cube));

    /// <summary>The whole visit log.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public VisitLog ReadVisits() => database.Use(connection =>
    {
        var logs = connection.Query<byte[]>(CubeSql.VisitSegments, buffered: false).Select(data => VisitLog.Unpack(data)).ToList();
        return logs.Count == 0 ? VisitLog.Empty : VisitLog.Sum(logs);
    });

    internal static void Add(SqliteConnection connection, SqliteTransaction transaction, int taxon, PackedSegment change)
    {
        if (change.Entries > 0)
            connection.Execute(CubeSql.AddSegment, new { Taxon = taxon, Cells = change.Entries, change.Data }, transaction);
    }

    internal static void Add(SqliteConnection connection, SqliteTransaction transaction, PackedSegment visits)
    {
        if (visits.Entries > 0)
            connection.Execute(CubeSql.AddVisits, new { visits.Entries, visits.Data }, transaction);
    }

    /// <summary>Merges the segments of taxa, and of the visit log, that have become many, so that reading stays one short step.</summary>
    internal static void Compact(SqliteConnection connection, SqliteTransaction transaction)
    {
        foreach (var taxon in connection.Query<int>(CubeSql.TaxaWithManySegments, new { MostSegments }, transaction).AsList())
        {
            var merged = TaxonCube.Sum([.. ReadSegments(connection, transaction, taxon)]);
            connection.Execute(CubeSql.RemoveSegments, new { Taxon = taxon }, transaction);
            Add(connection, transaction, taxon, PackedSegment.Of(merged));
        }

        if (connection.ExecuteScalar<int>(CubeSql.CountVisitSegments, transaction: transaction) <= MostSegments)
            return;
        var log = VisitLog.Sum([.. connection.Query<byte[]>(CubeSql.VisitSegments, transaction: transaction).Select(data => VisitLog.Unpack(data))]);
        connection.Execute(CubeSql.RemoveVisits, transaction: transaction);
        Add(connection, transaction, PackedSegment.Of(log));
    }

    private static List<TaxonCube> ReadSegments(SqliteConnection connection, SqliteTransaction? transaction, int taxon) =>
        [.. connection.Query<byte[]>(CubeSql.SegmentsOfTaxon, new { Taxon = taxon }, transaction).Select(data => CubeCodec.Unpack(data))];

    private sealed record SegmentRow
    {
        public int Taxon { get; init; }

        public byte[] Data { get; init; } = [];
    }
}
