namespace RangeMap.Store;

internal static class VerificationSql
{
    public const string Integrity = "PRAGMA integrity_check(20)";

    public const string ForeignKeys = """SELECT "table" AS Name, COUNT(*) AS Count FROM pragma_foreign_key_check GROUP BY "table" ORDER BY 1""";

    public const string Records = $"SELECT {ImportSql.RowColumns} FROM record";

    /// <summary>What records point to without the database's watching it, because it would slow each insert. NULL is asked for first: nothing is not in an empty list either.</summary>
    public const string Orphans = """
        SELECT 'taxon' AS Name, COUNT(*) AS Count FROM record WHERE taxon NOT IN (SELECT number FROM taxon)
        UNION ALL SELECT 'import', COUNT(*) FROM record WHERE batch NOT IN (SELECT number FROM batch)
        UNION ALL SELECT 'data set', COUNT(*) FROM record WHERE dataset NOT IN (SELECT number FROM dataset)
        UNION ALL SELECT 'recorder', COUNT(*) FROM record WHERE recorder IS NOT NULL AND recorder NOT IN (SELECT number FROM person)
        UNION ALL SELECT 'determiner', COUNT(*) FROM record WHERE determiner IS NOT NULL AND determiner NOT IN (SELECT number FROM person)
        UNION ALL SELECT 'stage, sex, site, evidence, host or behaviour', COUNT(*) FROM record
            WHERE (stage IS NOT NULL AND stage NOT IN (SELECT number FROM word)) OR (sex IS NOT NULL AND sex NOT IN (SELECT number FROM word))
                OR (site IS NOT NULL AND site NOT IN (SELECT number FROM word)) OR (evidence IS NOT NULL AND evidence NOT IN (SELECT number FROM word))
                OR (host IS NOT NULL AND host NOT IN (SELECT number FROM word)) OR (behaviour IS NOT NULL AND behaviour NOT IN (SELECT number FROM word))
        """;

    /// <summary>Records on which somebody decided, and any that claim so.</summary>
    public const string DecidedRecords = $"""
        SELECT {ImportSql.RowColumns} FROM record
        WHERE key_low IN (SELECT key_low FROM decision) OR sent_taxon IS NOT NULL OR sent_status IS NOT NULL OR (doubts & (1 << 22)) <> 0
        """;

    public const string RepeatedKeys = """
        SELECT COUNT(*) FROM record AS a JOIN record AS b ON b.key_high = a.key_high AND b.key_low = a.key_low AND b.dataset = a.dataset AND b.id > a.id
        WHERE a.key_high IN (SELECT key_high FROM record GROUP BY key_high HAVING COUNT(*) > 1)
        """;

    /// <summary>Each batch's own counts beside what the tables hold; a version of a record counts for the batch that stated it.</summary>
    public const string Batches = """
        WITH stated AS (SELECT batch, COUNT(*) AS n FROM record GROUP BY batch),
             replaced AS (SELECT batch, COUNT(*) AS n FROM replaced_record GROUP BY batch),
             refused AS (SELECT batch, COUNT(*) AS n FROM refusal GROUP BY batch)
        SELECT b.number, b.undone_at IS NOT NULL AS Undone, b.rows_read AS Read, b.accepted, b.updated, b.unchanged, b.refused,
            COALESCE(s.n, 0) AS Stated, COALESCE(p.n, 0) AS Replaced, COALESCE(f.n, 0) AS Refusals
        FROM batch AS b LEFT JOIN stated AS s ON s.batch = b.number LEFT JOIN replaced AS p ON p.batch = b.number
            LEFT JOIN refused AS f ON f.batch = b.number
        ORDER BY b.number
        """;

    public const string SourceBlocks = "SELECT batch, first_row AS FirstRow, row_count AS RowCount, data FROM source_block ORDER BY batch, first_row";
}
