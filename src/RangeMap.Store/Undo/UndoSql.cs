namespace RangeMap.Store;

internal static class UndoSql
{
    public const string ReadState = "SELECT number, undone_at AS UndoneAt FROM batch WHERE number = @batch";

    /// <summary>Records whose present version the batch stated.</summary>
    public const string StatedBy = $"SELECT {ImportSql.RowColumns} FROM record WHERE batch = @batch";

    /// <summary>Of these, the ones that had an earlier version.</summary>
    public const string ReplacedBy =
        "SELECT p.id FROM replaced_record AS p JOIN record AS r ON r.id = p.id WHERE p.replaced_by_batch = @batch AND r.batch = @batch";

    public const string VersionBefore = """
        SELECT p.batch, b.undone_at IS NOT NULL AS Undone
        FROM replaced_record AS p JOIN batch AS b ON b.number = p.batch
        WHERE p.replaced_by_batch = @by AND p.id = @id
        """;

    public const string Restore =
        $"UPDATE record SET ({ImportSql.Columns}) = (SELECT {ImportSql.Columns} FROM replaced_record WHERE replaced_by_batch = @by AND id = @id) WHERE id = @id";

    public const string RemoveVersion = "DELETE FROM replaced_record WHERE replaced_by_batch = @by AND id = @id";

    public const string RemoveStatedBy = "DELETE FROM record WHERE batch = @batch";

    public const string CountChangedLater = "SELECT COUNT(*) FROM replaced_record WHERE batch = @batch";

    public const string RepeatedBy = """
        SELECT number FROM batch
        WHERE dataset = (SELECT dataset FROM batch WHERE number = @batch) AND number > @batch AND unchanged > 0 AND undone_at IS NULL
        ORDER BY number
        """;

    public const string Mark = "UPDATE batch SET undone_at = @at WHERE number = @batch";
}
