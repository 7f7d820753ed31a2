using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Compares what each batch says of itself with what the tables hold, and looks whether all its rows are there as they were sent.</summary>
internal static class BatchVerification
{
    public static IEnumerable<string> FindProblems(SqliteConnection connection, SqliteTransaction transaction)
    {
        var rows = CountRows(connection, transaction, out var broken);
        foreach (var problem in broken)
            yield return problem;
        foreach (var batch in connection.Query<BatchRow>(VerificationSql.Batches, transaction: transaction))
        {
            foreach (var problem in Of(batch, rows.GetValueOrDefault(batch.Number)))
                yield return FormattableString.Invariant($"Import {batch.Number}: {problem}.");
        }
    }

    private static IEnumerable<string> Of(BatchRow batch, long rowsKept)
    {
        if (batch.Accepted + batch.Updated + batch.Unchanged + batch.Refused != batch.Read)
            yield return FormattableString.Invariant($"{batch.Read} rows were read, but {batch.Accepted + batch.Updated + batch.Unchanged + batch.Refused} are accounted for");
        if (batch.Refusals != batch.Refused)
            yield return FormattableString.Invariant($"{batch.Refused} rows were refused, but {batch.Refusals} refusals are kept");
        if (rowsKept != batch.Read)
            yield return FormattableString.Invariant($"{batch.Read} rows were read, but {rowsKept} are kept as they were sent");
        if (batch.Undone && batch.Stated > 0)
            yield return FormattableString.Invariant($"it was taken back, but {batch.Stated} records of it still count");
        if (!batch.Undone && batch.Stated + batch.Replaced != batch.Accepted + batch.Updated)
            yield return FormattableString.Invariant($"it brought {batch.Accepted + batch.Updated} new or changed records, but {batch.Stated + batch.Replaced} are kept");
    }

    /// <summary>The rows kept as they were sent, by batch; a block that cannot be read or leaves a gap is told.</summary>
    private static Dictionary<long, long> CountRows(SqliteConnection connection, SqliteTransaction transaction, out List<string> broken)
    {
        var kept = new Dictionary<long, long>();
        broken = [];
        foreach (var block in connection.Query<BlockRow>(VerificationSql.SourceBlocks, transaction: transaction, buffered: false))
        {
            var before = kept.GetValueOrDefault(block.Batch);
            if (block.FirstRow != before + 1)
                broken.Add(FormattableString.Invariant($"Import {block.Batch}: its rows from {before + 1} as they were sent are followed by row {block.FirstRow}."));
            if (CountRows(block) != block.RowCount)
                broken.Add(FormattableString.Invariant($"Import {block.Batch}: its rows {block.FirstRow} to {block.FirstRow + block.RowCount - 1} as they were sent cannot be read."));
            kept[block.Batch] = before + block.RowCount;
        }

        return kept;
    }

    private static int CountRows(BlockRow block)
    {
        try
        {
            return SourceBlock.Rows(block.Data).Count();
        }
        catch (InvalidDataException)
        {
            return -1;
        }
    }

    private sealed record BlockRow
    {
        public long Batch { get; init; }

        public long FirstRow { get; init; }

        public long RowCount { get; init; }

        public byte[] Data { get; init; } = [];
    }

    private sealed record BatchRow
    {
        public long Number { get; init; }

        public bool Undone { get; init; }

        public long Read { get; init; }

        public long Accepted { get; init; }

        public long Updated { get; init; }

        public long Unchanged { get; init; }

        public long Refused { get; init; }

        public long Stated { get; init; }

        public long Replaced { get; init; }

        public long Refusals { get; init; }
    }
}
