using System.Reflection;
using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Numbered, forward-only changes of the schema, each applied once in a transaction of its own.</summary>
internal static class Migrations
{
    /// <summary>Marks a SQLite file as RangeMap's: the letters "RMAP".</summary>
    public const int ApplicationId = 0x524D4150;

    private const string Folder = "RangeMap.Store.Schema.sqlite.";

    public static int Newest => Scripts().Count;

    /// <summary>Refuses a database that is not RangeMap's, or that a newer RangeMap has changed.</summary>
    public static void Check(SqliteConnection connection)
    {
        // One transaction: another process may be making the tables at this moment.
        using var transaction = connection.BeginTransaction(deferred: true);
        var version = connection.ExecuteScalar<int>(DatabaseSql.ReadVersion, transaction: transaction);
        var application = connection.ExecuteScalar<int>(DatabaseSql.ReadApplication, transaction: transaction);
        var isNew = version == 0 && application == 0 && connection.ExecuteScalar<int>(DatabaseSql.CountTables, transaction: transaction) == 0;
        if (application != ApplicationId && !isNew)
            throw new StoreException("The file is a SQLite database of another program.", "Name another data folder with --data.");
        if (version > Newest)
            throw new StoreException($"The database has schema {version}; this program knows schemas up to {Newest}.", "Use a newer RangeMap for this data folder.");
    }

    public static void Apply(SqliteConnection connection)
    {
        var version = connection.ExecuteScalar<int>(DatabaseSql.ReadVersion);
        var scripts = Scripts();
        for (var next = version; next < scripts.Count; next++)
        {
            using var transaction = connection.BeginTransaction();
            // Another process may have applied it while this one waited for the lock.
            if (connection.ExecuteScalar<int>(DatabaseSql.ReadVersion, transaction: transaction) > next)
                continue;
            connection.Execute(scripts[next], transaction: transaction);
            connection.Execute(DatabaseSql.Mark(next + 1, ApplicationId), transaction: transaction);
            transaction.Commit();
        }
    }

    private static List<string> Scripts()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return [.. assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name =>
            {
                using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
                return reader.ReadToEnd();
            })];
    }
}
