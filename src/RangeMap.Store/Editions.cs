using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Counts the committed changes of a data folder, so that answers can be cached and dated.</summary>
public sealed class Editions(Database database)
{
    /// <summary>The state of the data now.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public Edition Current() => database.Use(connection =>
        connection.QuerySingle<Edition>("SELECT number, made_at AS MadeAt FROM edition ORDER BY number DESC LIMIT 1"));

    internal static void Advance(SqliteConnection connection, SqliteTransaction transaction, string cause, DateTimeOffset now) =>
        connection.Execute(
            "INSERT INTO edition (number, made_at, cause) SELECT MAX(number) + 1, @MadeAt, @Cause FROM edition",
            new { MadeAt = now.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture), Cause = cause },
            transaction);
}

/// <summary>A state of the data.</summary>
public sealed record Edition
{
    /// <summary>Grows by one with every committed change; 0 is the empty folder.</summary>
    public long Number { get; init; }

    /// <summary>When the change was committed, ISO 8601 in UTC; empty for the empty folder.</summary>
    public string MadeAt { get; init; } = "";
}
