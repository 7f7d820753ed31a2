using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Counts the committed changes of a data folder, so that answers can be cached and dated.</summary>
public sealed class Editions(Database database)
{
    /// <summary>The state of the data now.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public Edition Current() => database.Use(connection =>
        connection.QuerySingle<Edition>(EditionSql.Newest));

    internal static void Advance(SqliteConnection connection, SqliteTransaction transaction, string cause, DateTimeOffset now) =>
        connection.Execute(
            EditionSql.Advance,
            new { MadeAt = UtcText.Of(now), Cause = cause },
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
