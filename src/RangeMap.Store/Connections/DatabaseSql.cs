namespace RangeMap.Store;

internal static class DatabaseSql
{
    /// <summary>
    /// Write-ahead logging lets maps be read while an import writes; with it, "normal" still survives a crash of the
    /// program and never tears the file. The cache is in KiB (negative by SQLite's rule).
    /// </summary>
    public const string Prepare = """
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = NORMAL;
        PRAGMA foreign_keys = ON;
        PRAGMA temp_store = MEMORY;
        PRAGMA cache_size = -65536;
        """;

    public const string ReadVersion = "PRAGMA user_version;";

    public const string ReadApplication = "PRAGMA application_id;";

    public const string CountTables = "SELECT COUNT(*) FROM sqlite_schema;";
}
