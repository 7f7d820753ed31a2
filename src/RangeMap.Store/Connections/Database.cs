using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>An open data folder's database: hands out connections and keeps the schema up to date.</summary>
public sealed class Database
{
    private readonly string _connectionText;

    // Nowhere do two threads use one connection at a time, so the library need not lock each call (measured: a fiftieth of the time of an import). It takes this before its first use
    // only; where something has used it already, calls stay locked, which is as right and a little slower.
    static Database()
    {
        SQLitePCL.Batteries_V2.Init();
        _ = SQLitePCL.raw.sqlite3_config(SQLitePCL.raw.SQLITE_CONFIG_MULTITHREAD);
    }

    private Database(string connectionText) => _connectionText = connectionText;

    /// <summary>Opens the SQLite database at a path, makes it where it is absent, and brings its schema up to date.</summary>
    /// <param name="path">File of the database; its folder must exist.</param>
    /// <exception cref="StoreException">The file is no RangeMap database, is from a newer version, or cannot be opened.</exception>
    public static Database Open(string path)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWriteCreate,
            Pooling = true,
            DefaultTimeout = 60,
        };
        var database = new Database(text.ToString());
        try
        {
            if (File.Exists(path))
                Look(path);
            using var connection = database.Connect();
            Migrations.Apply(connection);
        }
        catch (SqliteException error)
        {
            throw new StoreException($"The database {path} cannot be opened: {error.Message}", "Check that the file is a RangeMap database and that you may write to its folder.", error);
        }

        return database;
    }

    /// <summary>Works with a connection of its own and turns a failure of the database into a sentence.</summary>
    /// <exception cref="StoreException">The database cannot be read or written.</exception>
    internal T Use<T>(Func<SqliteConnection, T> work)
    {
        try
        {
            using var connection = Connect();
            return work(connection);
        }
        catch (SqliteException error)
        {
            throw StoreFailure.Of(error);
        }
        catch (InvalidDataException error)
        {
            throw new StoreException($"The data folder is damaged: {error.Message}", "rangemap verify tells what is wrong; restore the folder from a backup.", error);
        }
    }

    /// <summary>Looks at a file before anything is set on it: another program's database must stay as it is.</summary>
    private static void Look(string path)
    {
        try
        {
            Look(path, SqliteOpenMode.ReadOnly);
        }
        catch (SqliteException)
        {
            // A program that was stopped while it made the file leaves a journal, which only a writer may play back.
            Look(path, SqliteOpenMode.ReadWrite);
        }
    }

    private static void Look(string path, SqliteOpenMode mode)
    {
        var text = new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false, DefaultTimeout = 60 };
        using var connection = new SqliteConnection(text.ToString());
        connection.Open();
        Migrations.Check(connection);
    }

    /// <summary>A new connection, ready for use; the caller disposes of it.</summary>
    internal SqliteConnection Connect()
    {
        var connection = new SqliteConnection(_connectionText);
        connection.Open();
        connection.Execute(DatabaseSql.Prepare);
        return connection;
    }
}
