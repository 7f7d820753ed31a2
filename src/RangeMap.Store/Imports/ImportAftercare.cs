using Dapper;

namespace RangeMap.Store;

/// <summary>
/// What an import leaves for afterwards, so that maps need not wait: the indexes by which records are looked up, and moving what it
/// wrote from the write-ahead log into the database. Without it both are done by whoever needs them first.
/// </summary>
public static class ImportAftercare
{
    /// <summary>Does what was left. May be stopped at any moment without harm.</summary>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public static void Run(Database database)
    {
        // The tables of the import are given back first, so that sorting the indexes takes their room and not room beside it.
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        database.Use(connection =>
        {
            LookupIndexes.Make(connection);
            connection.Execute(ImportSql.Checkpoint);
            return true;
        });
    }
}
