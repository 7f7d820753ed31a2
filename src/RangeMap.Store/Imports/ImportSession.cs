using System.Globalization;
using System.Numerics;
using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>
/// One import, from its first row to its commit. Records, refusals, source rows, cube and visits change together:
/// before <see cref="Commit"/> nobody sees any of it, and disposing without it leaves the data as they were.
/// </summary>
public sealed class ImportSession : IDisposable
{
    /// <summary>How long a change waits for another program's to end.</summary>
    internal const int LongestWaitSeconds = 600;

    private readonly SqliteConnection _connection;
    private readonly SqliteTransaction _transaction;
    private readonly TimeProvider _clock;
    private readonly long _dataset;
    private readonly bool _keysMayExist;
    private readonly CubeChange _change;
    private readonly DecisionLookup _decisions;
    private readonly VisitComparison? _comparison;
    private readonly RecordWriter _records;
    private readonly RefusalRows _refusals;
    private readonly int[] _doubts = new int[32];
    private readonly Dictionary<string, int> _newTaxa = new(StringComparer.Ordinal);
    private int _added, _updated, _unchanged, _refused;
    private bool _gatheredIsWritten, _failed;

    private ImportSession(SqliteConnection connection, string datasetId, string fileName, TimeProvider clock)
    {
        _connection = connection;
        // A large import by another program takes its minutes; waiting for it is better than failing.
        _connection.DefaultTimeout = LongestWaitSeconds;
        _connection.Execute(ImportSql.KeepInLog);
        _transaction = _connection.BeginTransaction(deferred: false);
        _clock = clock;
        _dataset = _connection.QuerySingleOrDefault<long?>(ImportSql.FindDataset, new { Id = datasetId }, _transaction)
            ?? _connection.ExecuteScalar<long>(ImportSql.AddDataset, new { Id = datasetId }, _transaction);
        _keysMayExist = _connection.ExecuteScalar<bool>(ImportSql.AnyRecordOfDataset, new { Dataset = _dataset }, _transaction);
        var first = !_connection.ExecuteScalar<bool>(ImportSql.AnyRecord, transaction: _transaction);
        _connection.Execute(first ? RecordSql.DropLookupIndexes : RecordSql.MakeLookupIndexes, transaction: _transaction);

        var importedAt = UtcText.Of(clock.GetUtcNow());
        Batch = _connection.ExecuteScalar<long>(ImportSql.AddBatch, new { Dataset = _dataset, FileName = fileName, ImportedAt = importedAt }, _transaction);
        _change = new(_connection, _transaction);
        _decisions = new(_connection, _transaction);
        // Within one file the reader compares; a store that was empty has nothing to compare with.
        _comparison = first ? null : new(_connection, _transaction, CheckLimits.Default.FarPlacesKm);
        _records = new(_connection, _transaction, _dataset, Batch);
        _refusals = new(_connection, _transaction, Batch);
    }

    /// <summary>The number of the batch that this import becomes.</summary>
    public long Batch { get; }

    /// <summary>Begins an import; waits while another writes.</summary>
    /// <param name="database">The data folder's database.</param>
    /// <param name="datasetId">The data set that the file belongs to; made if it is new.</param>
    /// <param name="fileName">Name of the file, for people.</param>
    /// <param name="clock">Tells the time of the import.</param>
    /// <exception cref="StoreException">The database cannot be written to, or another import did not end within ten minutes.</exception>
    public static ImportSession Begin(Database database, string datasetId, string fileName, TimeProvider clock)
    {
        SqliteConnection? connection = null;
        try
        {
            connection = database.Connect();
            return new(connection, datasetId, fileName, clock);
        }
        catch (SqliteException error)
        {
            connection?.Dispose();
            throw StoreFailure.Of(error);
        }
    }

    /// <summary>Keeps rows as they were sent.</summary>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public void KeepSource(SourceBlock block) => Write(this, block, static (session, block) => session._connection.Execute(
        ImportSql.AddSourceBlock, new { session.Batch, block.FirstRow, RowCount = block.Count, block.Data }, session._transaction));

    /// <summary>Keeps a record: adds it, or changes the one of the same key, or finds that nothing changed.</summary>
    /// <param name="record">The record; within one import no two have the same key.</param>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public void Keep(Record record) => Write(this, record, static (session, record) => session.KeepRecord(record));

    private void KeepRecord(Record record)
    {
        var stored = _keysMayExist ? _records.Find(record.Key) : null;
        if (stored is { } same && same.Content == (long)(ulong)record.Content)
        {
            _unchanged++;
            return;
        }

        var standing = StandingOf(record);
        var id = stored is { } old ? Replace(record, standing, old.Id) : Insert(record, standing);
        Count(record.Doubts);
        Add(id, record, standing);
    }

    /// <summary>As the file says, or as people decided when the same record was here before.</summary>
    private Standing StandingOf(Record record)
    {
        var taxon = NumberOf(record.Taxon);
        var days = record.Dates;
        return _decisions.StandingOf(
            new(_dataset, record.Key), Standing.AsSent(taxon, record.Status, record.Doubts),
            DecisionBasis.Of(taxon, record.Square.Code, days.First.DayNumber, days.Last.DayNumber, record.Present));
    }

    private void Add(long id, Record record, in Standing standing)
    {
        var status = (ReviewStatus)standing.Status;
        if (status == ReviewStatus.Rejected)
            return;
        int first = record.Dates.First.DayNumber, last = record.Dates.Last.DayNumber;
        if (record.Present)
            _change.Add((int)standing.Taxon, new CubeCell(record.Square.Code, first, last, CubeFold.Count(status, (Doubts)standing.Doubts)));
        if (!record.Dates.IsOneDay)
            return;
        var visit = new VisitEntry(record.Square.Code, first, _records.RecorderOf(record), (int)standing.Taxon, record.Present, 1, record.OnCompleteList);
        _change.Add(visit);
        _comparison?.Note(id, visit);
    }

    /// <summary>Keeps a refused row with its reason.</summary>
    /// <param name="refusal">What was wrong, and where.</param>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public void Refuse(Refusal refusal) => Write(this, refusal, static (session, refusal) =>
    {
        session._refused++;
        session._refusals.Add(refusal);
    });

    /// <summary>What the import has done so far.</summary>
    public ImportFigures Figures() => new(Batch, (long)_added + _updated + _unchanged + _refused, _added, _refused, _updated, _unchanged, DoubtCounts());

    /// <summary>
    /// Writes what was gathered on the way, cube, visits and doubts that follow from earlier imports. <see cref="Commit"/> does so where it was not done; on its own it can run
    /// while the hash of the file is being made.
    /// </summary>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public void WriteGathered() => Write(this, 0, static (session, _) =>
    {
        if (session._gatheredIsWritten || session._added + session._updated == 0)
            return;
        session._records.Flush();
        session._change.Write();
        session.Compare();
        CubeStore.Compact(session._connection, session._transaction);
        session._gatheredIsWritten = true;
    });

    /// <summary>
    /// Makes the import part of the data. Where the same file was imported before and nothing is new, nothing is written at
    /// all, and the figures name the earlier batch.
    /// </summary>
    /// <param name="fileHash">Hash of the file's bytes.</param>
    /// <param name="header">The header row as it was sent.</param>
    /// <param name="mapping">Which column was taken for which term.</param>
    /// <param name="details">How the import was made.</param>
    /// <exception cref="StoreException">The database cannot be written to; nothing of the import is kept.</exception>
    public ImportFigures Commit(string fileHash, string header, IReadOnlyDictionary<string, string> mapping, BatchDetails? details = null)
    {
        ThrowIfFailed();
        try
        {
            return Finish(fileHash, header, mapping, details ?? new());
        }
        catch (SqliteException error)
        {
            throw Failed(error);
        }
    }

    private ImportFigures Finish(string fileHash, string header, IReadOnlyDictionary<string, string> mapping, BatchDetails details)
    {
        var batch = _added + _updated == 0
            ? _connection.QuerySingleOrDefault<long?>(ImportSql.SameFileBefore, new { Dataset = _dataset, FileHash = fileHash, Batch }, _transaction)
            : null;
        if (batch is { } earlier)
            return Figures() with { Batch = earlier };
        WriteGathered();
        var figures = Figures();
        var row = new
        {
            Batch,
            FileHash = fileHash,
            Header = header,
            figures.Read,
            Accepted = _added,
            Refused = _refused,
            Updated = _updated,
            Unchanged = _unchanged,
            Mapping = JsonSerializer.Serialize(mapping),
            Doubts = JsonSerializer.Serialize(figures.Doubts),
            details.MadeBy,
            Seconds = (_clock.GetUtcNow() - details.Began)?.TotalSeconds,
            details.Form,
            details.Stated,
            details.Citation,
            Notes = details.Notes.Count == 0 ? null : JsonSerializer.Serialize(details.Notes),
            details.Options,
        };
        _connection.Execute(ImportSql.FinishBatch, row, _transaction);
        if (_added + _updated > 0)
            Editions.Advance(_connection, _transaction, string.Create(CultureInfo.InvariantCulture, $"import {Batch}"), _clock.GetUtcNow());
        _transaction.Commit();
        return figures;
    }

    /// <summary>Adds the doubts that follow from records of earlier imports; they weigh too little to change a map.</summary>
    private void Compare()
    {
        foreach (var (id, doubts) in _comparison?.Find() ?? [])
        {
            _connection.Execute(ImportSql.AddDoubts, new { Doubts = (long)doubts, Id = id }, _transaction);
            Count(doubts);
        }
    }

    /// <summary>Ends the import; what was not committed is as if it had not been.</summary>
    public void Dispose()
    {
        _records.Dispose();
        _refusals.Dispose();
        _transaction.Dispose();
        _connection.Dispose();
    }

    /// <summary>The number of a taxon; one that the file itself added gets its number here.</summary>
    private int NumberOf(Taxon taxon)
    {
        if (taxon.Number != 0)
            return taxon.Number;
        if (!_newTaxa.TryGetValue(taxon.Id, out var number))
            _newTaxa.Add(taxon.Id, number = _connection.ExecuteScalar<int>(TaxonSql.AddTaxon, TaxonRow.Of(taxon), _transaction));
        return number;
    }

    private long Insert(Record record, in Standing standing)
    {
        _added++;
        return _records.Insert(record, standing);
    }

    private long Replace(Record record, in Standing standing, long id)
    {
        _change.Remove(_connection.QuerySingle<RecordRow>(ImportSql.ReadForCube, new { Id = id }, _transaction));
        _records.Replace(record, standing, id);
        _updated++;
        return id;
    }

    /// <summary>Runs one step of the import and turns a failure of the database into a sentence.</summary>
    private static void Write<T>(ImportSession session, T what, Action<ImportSession, T> step)
    {
        session.ThrowIfFailed();
        try
        {
            step(session, what);
        }
        catch (SqliteException error)
        {
            throw session.Failed(error);
        }
    }

    private StoreException Failed(SqliteException error)
    {
        _failed = true;
        return StoreFailure.Of(error);
    }

    /// <summary>A full disk may have ended the transaction: a further step would then be kept on its own, half an import.</summary>
    private void ThrowIfFailed()
    {
        if (_failed)
            throw new InvalidOperationException("The import has failed; it can only be disposed of.");
    }

    private void Count(Doubts doubts)
    {
        for (var rest = (uint)doubts; rest != 0; rest &= rest - 1)
            _doubts[BitOperations.TrailingZeroCount(rest)]++;
    }

    private SortedDictionary<string, int> DoubtCounts() =>
        new(_doubts.Index().Where(d => d.Item > 0).ToDictionary(d => DoubtCatalogue.Of((Doubts)(1 << d.Index)).Code, d => d.Item), StringComparer.Ordinal);
}

/// <summary>What an import did.</summary>
/// <param name="Batch">Its batch; for a file that changed nothing, the earlier batch of the same file.</param>
/// <param name="Read">Rows read.</param>
/// <param name="Accepted">New records.</param>
/// <param name="Refused">Rows refused.</param>
/// <param name="Updated">Records that changed.</param>
/// <param name="Unchanged">Rows whose record was there already and says the same.</param>
/// <param name="Doubts">New or changed records by the code of the doubt.</param>
public sealed record ImportFigures(
    long Batch, long Read, int Accepted, int Refused, int Updated, int Unchanged, IReadOnlyDictionary<string, int> Doubts);
