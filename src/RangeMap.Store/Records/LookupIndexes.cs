using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>
/// The indexes by which records are looked up. Maps do not need them, so a first import leaves them out and they are made
/// after its commit; whoever looks records up before that makes them.
/// </summary>
internal static class LookupIndexes
{
    private const int Count = 5;

    /// <summary>Makes the indexes that are missing.</summary>
    public static void Make(SqliteConnection connection)
    {
        if (connection.ExecuteScalar<int>(RecordSql.CountLookupIndexes) == Count)
            return;
        connection.DefaultTimeout = ImportSession.LongestWaitSeconds;
        connection.Execute(RecordSql.MakeLookupIndexes);
    }
}
