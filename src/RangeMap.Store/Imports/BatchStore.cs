using Dapper;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Reads what became of imports.</summary>
public sealed class BatchStore(Database database)
{
    /// <summary>All batches, newest first.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<StoredBatch> ReadAll() => database.Use(connection =>
        connection.Query<StoredBatch>(BatchSql.ReadAll).AsList());

    /// <summary>One batch, or null.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public StoredBatch? Read(long number) => database.Use(connection =>
        connection.QuerySingleOrDefault<StoredBatch>(BatchSql.ReadOne, new { number }));

    /// <summary>The refused rows of a batch, in the order of the file, streamed.</summary>
    public IEnumerable<Refusal> Refusals(long batch)
    {
        using var connection = database.Connect();
        foreach (var row in connection.Query<RefusalRow>(BatchSql.ReadRefusals, new { batch }, buffered: false))
            yield return row.ToRefusal();
    }

    /// <summary>Some refused rows of a batch, in the order of the file.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="after">Row after which they begin; 0 for the beginning.</param>
    /// <param name="limit">How many at most.</param>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<Refusal> RefusalPage(long batch, long after, int limit) => database.Use<IReadOnlyList<Refusal>>(connection =>
        [.. connection.Query<RefusalRow>(BatchSql.ReadRefusalPage, new { batch, after, limit }).Select(row => row.ToRefusal())]);

    /// <summary>A row of a batch as it was sent, or null where there is none.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public string? SourceRow(long batch, long row) => database.Use(connection =>
    {
        var block = connection.QuerySingleOrDefault<BlockRow>(BatchSql.ReadBlockOfRow, new { batch, row });
        return block is null ? null : SourceBlock.Read(block.Data, row - block.FirstRow);
    });

    private sealed record RefusalRow
    {
        public long Row { get; init; }

        public long Line { get; init; }

        public string Field { get; init; } = "";

        public string Value { get; init; } = "";

        public string Reason { get; init; } = "";

        public string Raw { get; init; } = "";

        public Refusal ToRefusal() => new(Row, Line, Field, Value, Reason, Raw);
    }

    private sealed record BlockRow
    {
        public long FirstRow { get; init; }

        public byte[] Data { get; init; } = [];
    }
}

/// <summary>One import, as it was kept.</summary>
public sealed record StoredBatch
{
    /// <summary>The batch's number.</summary>
    public long Number { get; init; }

    /// <summary>The data set it belongs to.</summary>
    public string Dataset { get; init; } = "";

    /// <summary>The name of the file.</summary>
    public string FileName { get; init; } = "";

    /// <summary>ISO 8601, UTC.</summary>
    public string ImportedAt { get; init; } = "";

    /// <summary>The header row as it was sent.</summary>
    public string Header { get; init; } = "";

    /// <summary>Rows read.</summary>
    public long Read { get; init; }

    /// <summary>New records.</summary>
    public long Accepted { get; init; }

    /// <summary>Rows refused.</summary>
    public long Refused { get; init; }

    /// <summary>Records changed.</summary>
    public long Updated { get; init; }

    /// <summary>Rows that said nothing new.</summary>
    public long Unchanged { get; init; }

    /// <summary>JSON: which column was taken for which term.</summary>
    public string Mapping { get; init; } = "{}";

    /// <summary>JSON: doubts by code.</summary>
    public string Doubts { get; init; } = "{}";

    /// <summary>When the batch was taken back, ISO 8601 in UTC; null while it counts.</summary>
    public string? UndoneAt { get; init; }

    /// <summary>Who made it; null for the command line.</summary>
    public string? MadeBy { get; init; }

    /// <summary>How long it took; null where that is not known.</summary>
    public double? Seconds { get; init; }

    /// <summary>What kind of file it was, in words.</summary>
    public string? Form { get; init; }

    /// <summary>JSON: what was stated about columns and dates.</summary>
    public string? Stated { get; init; }

    /// <summary>JSON: what was stated beside columns and dates; null for imports of before it was kept.</summary>
    public string? Options { get; init; }

    /// <summary>JSON: what was noticed about the file, in sentences; null for nothing.</summary>
    public string? Notes { get; init; }

    /// <summary>JSON: title, licence and citation that came with the file.</summary>
    public string? Citation { get; init; }

    /// <summary>SHA-256 of the file, hexadecimal.</summary>
    public string FileHash { get; init; } = "";
}
