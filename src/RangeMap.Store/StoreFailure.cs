using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Says in a sentence what a failure of the database means to its user.</summary>
internal static class StoreFailure
{
    // Result codes of SQLite, from its C interface: https://www.sqlite.org/rescode.html
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int NotADatabase = 26;

    /// <summary>The failure as a user can act on it; whatever was being changed is then as it was before.</summary>
    public static StoreException Of(SqliteException error) => error.SqliteErrorCode switch
    {
        Busy or Locked => new("Another program has been writing to this data folder for too long.", "Try again when its import is done.", error),
        ReadOnly => new("The database cannot be written to. Nothing was changed.", "Check that you may write to the data folder and the files in it.", error),
        InputOutput => new($"The disk failed while the database was in use ({error.Message}). Nothing was changed.", "Check the disk and the room left on it, then try again.", error),
        Full => new("There is no room left on the disk. Nothing was changed.", "Make room, then try again.", error),
        Corrupt or NotADatabase => new($"The database file is damaged ({error.Message}).", "Restore the data folder from a backup.", error),
        _ => new($"The database refused the work ({error.Message}). Nothing was changed.", "Try again; if it happens again, please report it with this message.", error),
    };
}
