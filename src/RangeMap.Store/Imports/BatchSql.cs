namespace RangeMap.Store;

internal static class BatchSql
{
    private const string Read = """
        SELECT b.number, d.id AS Dataset, b.file_name AS FileName, b.imported_at AS ImportedAt, b.header, b.rows_read AS Read, b.accepted, b.refused,
            b.updated, b.unchanged, b.mapping, b.doubts, b.undone_at AS UndoneAt, b.made_by AS MadeBy, b.seconds, b.form,
            b.stated, b.options, b.notes, b.citation, b.file_hash AS FileHash
        FROM batch AS b JOIN dataset AS d ON d.number = b.dataset
        """;

    public const string ReadAll = $"{Read} ORDER BY b.number DESC";

    public const string ReadOne = $"{Read} WHERE b.number = @number";

    public const string ReadRefusals =
        "SELECT row_number AS Row, line, field, value, reason, raw FROM refusal WHERE batch = @batch ORDER BY row_number";

    public const string ReadRefusalPage =
        "SELECT row_number AS Row, line, field, value, reason, raw FROM refusal WHERE batch = @batch AND row_number > @after ORDER BY row_number LIMIT @limit";

    public const string ReadBlockOfRow =
        "SELECT first_row AS FirstRow, data FROM source_block WHERE batch = @batch AND first_row <= @row ORDER BY first_row DESC LIMIT 1";
}
