using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Reads records: one, a page of those that a question names, or the queue of those that need a person, gravest doubts first.</summary>
public sealed class RecordStore(Database database)
{
    /// <summary>One record; null where there is none.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public StoredRecord? Read(RecordId id) => Ask(connection =>
        StoredRecordReader.Read(connection, RecordSql.One, new { id.Dataset, id.KeyHigh, id.KeyLow }, new()).SingleOrDefault());

    /// <summary>A page of records in the order in which they came.</summary>
    /// <exception cref="StoreException">The database cannot be read, or <see cref="RecordQuery.After"/> is not from a page before.</exception>
    public RecordPage Find(RecordQuery query) => Find(query, new());

    /// <summary>
    /// A page of the queue: unreviewed records with doubts that weigh, the heaviest first. Records with the same doubts
    /// stand together, so the queue is read one combination of doubts after the other, each from the index.
    /// </summary>
    /// <param name="query">Which of them; its status does not matter.</param>
    /// <param name="weight">How much a combination of doubts weighs; 0 keeps it out of the queue.</param>
    /// <exception cref="StoreException">The database cannot be read, or <see cref="RecordQuery.After"/> is not from a page before.</exception>
    public RecordPage Queue(RecordQuery query, Func<Doubts, double> weight) => Ask(connection =>
    {
        if (!Prepare(connection, query with { Status = null }, out var conditions, out var values))
            return new RecordPage([], null);
        conditions.AddRange([RecordSql.InQueue, RecordSql.Condition.TheseDoubts, RecordSql.Condition.After]);
        var sql = RecordSql.Page(conditions);
        var start = query.After is null ? default : Cursor.Parse(query.After);
        var (page, texts) = (new List<StoredRecord>(), new RecordTexts());
        foreach (var doubts in QueueOrder(connection, weight).SkipWhile(doubts => query.After is not null && (long)doubts != start.Doubts))
        {
            values.Add("TheseDoubts", (long)doubts);
            values.Add("AfterRow", (long)doubts == start.Doubts ? start.Row : 0);
            values.Add("Most", query.Limit + 1 - page.Count);
            page.AddRange(StoredRecordReader.Read(connection, sql, values, texts));
            if (page.Count > query.Limit)
                return new RecordPage(page[..query.Limit], new Cursor((long)page[query.Limit - 1].Doubts, page[query.Limit - 1].RowId).ToString());
        }

        return new RecordPage(page, null);
    });

    /// <summary>How many unreviewed records have each combination of doubts.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyDictionary<Doubts, long> QueueCounts() => Ask(connection =>
        connection.Query<(long Doubts, long Records)>(RecordSql.QueueCounts).ToDictionary(row => (Doubts)row.Doubts, row => row.Records));

    /// <summary>How many records a question names; its limit and page do not matter.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public long Count(RecordQuery query) => Ask(connection =>
        Prepare(connection, query, out var conditions, out var values) ? connection.ExecuteScalar<long>(RecordSql.Count(conditions), values) : 0);

    /// <summary>Records that are not rejected, by data set.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyDictionary<string, long> CountByDataset() => Ask(connection =>
        connection.Query<(string Dataset, long Records)>(RecordSql.CountByDataset).ToDictionary(row => row.Dataset, row => row.Records));

    /// <summary>Every record that a question names, one after the other, without pages.</summary>
    public IEnumerable<StoredRecord> All(RecordQuery query)
    {
        const int RowsAPage = 5_000;
        // One page is read at a time, so the texts are never asked for by two threads at once.
        var texts = new RecordTexts();
        // The next page is read while this one is worked on.
        var next = Task.Run(() => Find(query with { Limit = RowsAPage, After = null }, texts));
        while (next is not null)
        {
            var page = next.GetAwaiter().GetResult();
            next = page.Next is { } after ? Task.Run(() => Find(query with { Limit = RowsAPage, After = after }, texts)) : null;
            foreach (var record in page.Records)
                yield return record;
        }
    }

    private RecordPage Find(RecordQuery query, RecordTexts texts) => Ask(connection =>
    {
        if (!Prepare(connection, query, out var conditions, out var values))
            return new RecordPage([], null);
        conditions.Add(RecordSql.Condition.After);
        values.Add("AfterRow", query.After is null ? 0 : Cursor.Parse(query.After).Row);
        values.Add("Most", query.Limit + 1);
        var found = StoredRecordReader.Read(connection, RecordSql.Page(conditions), values, texts);
        return found.Count <= query.Limit ? new RecordPage(found, null) : new RecordPage(found[..query.Limit], new Cursor(0, found[query.Limit - 1].RowId).ToString());
    });

    private T Ask<T>(Func<SqliteConnection, T> question) => database.Use(connection =>
    {
        LookupIndexes.Make(connection);
        return question(connection);
    });

    private static IEnumerable<Doubts> QueueOrder(SqliteConnection connection, Func<Doubts, double> weight) =>
        connection.Query<(long Doubts, long Records)>(RecordSql.QueueCounts)
            .Select(row => (Doubts)row.Doubts)
            .Where(doubts => weight(doubts) > 0)
            .OrderByDescending(weight)
            .ThenBy(doubts => doubts);

    /// <summary>The conditions of a question and their values; false when it names a data set or recorder that is not there.</summary>
    private static bool Prepare(SqliteConnection connection, RecordQuery query, out List<string> conditions, out DynamicParameters values)
    {
        var wanted = conditions = [];
        var given = values = new DynamicParameters();
        void Where(string condition, string name, object? value)
        {
            if (value is null)
                return;
            wanted.Add(condition);
            given.Add(name, value);
        }

        var dataset = query.Dataset is null ? null : connection.QuerySingleOrDefault<long?>(RecordSql.DatasetNumber, new { query.Dataset });
        var recorder = query.Recorder is null ? null : connection.QuerySingleOrDefault<long?>(RecordSql.PersonNumber, new { query.Recorder });
        Where(RecordSql.Condition.Dataset, "DatasetNumber", dataset);
        Where(RecordSql.Condition.Batch, "Batch", query.Batch);
        Where(RecordSql.Condition.Taxa, "Taxa", query.Taxa);
        Where(RecordSql.Condition.WithoutTaxa, "WithoutTaxa", query.WithoutTaxa);
        Where(RecordSql.Condition.Status, "Status", (long?)query.Status);
        Where(RecordSql.Condition.WithoutStatus, "WithoutStatus", (long?)query.WithoutStatus);
        Where(RecordSql.Condition.SomeDoubt, "Doubts", (long?)query.Doubts);
        Where(RecordSql.Condition.Recorder, "RecorderNumber", recorder);
        Where(RecordSql.Condition.From, "FromDay", query.From?.DayNumber);
        Where(RecordSql.Condition.To, "ToDay", query.To?.DayNumber);
        Where(RecordSql.Condition.Within, "WithinCode", query.Within?.Code);
        if (query.Within is not null)
            DefineWithin(connection);
        return (query.Dataset is null || dataset is not null) && (query.Recorder is null || recorder is not null);
    }

    /// <summary>Teaches a connection which squares lie in which.</summary>
    internal static void DefineWithin(SqliteConnection connection) =>
        connection.CreateFunction("within", (long square, long container) => IsWithin(square, container), isDeterministic: true);

    private static bool IsWithin(long square, long container)
    {
        var wanted = Square.FromCode(container);
        return Square.FromCode(square) is var own && own.Grid == wanted.Grid && own.TryCoarsen(wanted.Size, out var found) && found == wanted;
    }

    /// <summary>Where a page ended.</summary>
    private readonly record struct Cursor(long Doubts, long Row)
    {
        public static Cursor Parse(string text) =>
            text.Split('.') is [var doubts, var row] && long.TryParse(doubts, NumberStyles.None, CultureInfo.InvariantCulture, out var d)
                && long.TryParse(row, NumberStyles.None, CultureInfo.InvariantCulture, out var r)
                ? new(d, r)
                : throw new StoreException($"\"{text}\" is not where a page of records ended.", "Use the value that the page before gave.");

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Doubts}.{Row}");
    }
}
