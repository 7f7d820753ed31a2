using System.Globalization;

namespace RangeMap.Store;

internal static class DatabaseSql
{
    /// <summary>
    /// Write-ahead logging lets maps be read while an import writes; with it, "normal" still survives a crash of the
    /// program and never tears the file. The cache is in KiB (negative by SQLite's rule). Sorting goes through temporary files,
    /// in threads of its own: within memory the key index of ten million records took 500 MB.
    /// </summary>
    public const string Prepare = """
        PRAGMA page_size = 8192;
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = NORMAL;
        PRAGMA wal_autocheckpoint = 1000;
        PRAGMA foreign_keys = ON;
        PRAGMA temp_store = FILE;
        PRAGMA threads = 2;
        PRAGMA cache_size = -65536;
        """;

    public const string ReadVersion = "PRAGMA user_version;";

    public const string ReadApplication = "PRAGMA application_id;";

    public const string CountTables = "SELECT COUNT(*) FROM sqlite_schema;";

    /// <summary>Writes the schema's number and whose file it is. A pragma takes no parameters; both values are our own integers.</summary>
    public static string Mark(int version, int applicationId) =>
        string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version = {version}; PRAGMA application_id = {applicationId};");
}
