using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Looks whether a data folder is whole: the file itself, what its tables say of each other, and the cube against the records.</summary>
/// <remarks>Reads everything once in one read transaction, so it may run beside an import. Changes nothing.</remarks>
public sealed class StoreVerification(Database database)
{
    /// <summary>What is wrong, a sentence each; empty when all is well.</summary>
    public IReadOnlyList<string> FindProblems()
    {
        var problems = new List<string>();
        try
        {
            using var connection = database.Connect();
            using var transaction = connection.BeginTransaction(deferred: true);
            problems.AddRange(InFile(connection, transaction));
            problems.AddRange(InReferences(connection, transaction));
            problems.AddRange(BatchVerification.FindProblems(connection, transaction));
            problems.AddRange(DecisionVerification.FindProblems(connection, transaction));
            problems.AddRange(CubeVerification.FindProblems(connection, transaction));
        }
        catch (SqliteException error)
        {
            problems.Add(StoreFailure.Of(error).Message);
        }

        return problems;
    }

    private static IEnumerable<string> InFile(SqliteConnection connection, SqliteTransaction transaction) =>
        connection.Query<string>(VerificationSql.Integrity, transaction: transaction)
            .Where(line => line != "ok")
            .Select(line => $"The database file is damaged: {line}.");

    private static IEnumerable<string> InReferences(SqliteConnection connection, SqliteTransaction transaction)
    {
        foreach (var found in connection.Query<Counted>(VerificationSql.ForeignKeys, transaction: transaction))
            yield return FormattableString.Invariant($"{found.Count} rows of table {found.Name} point to something that is not there.");
        foreach (var found in connection.Query<Counted>(VerificationSql.Orphans, transaction: transaction).Where(found => found.Count > 0))
            yield return FormattableString.Invariant($"{found.Count} records name a {found.Name} that is not there.");
        var repeated = connection.ExecuteScalar<long>(VerificationSql.RepeatedKeys, transaction: transaction);
        if (repeated > 0)
            yield return FormattableString.Invariant($"{repeated} records are kept twice under one identity.");
    }

    private sealed record Counted
    {
        public string Name { get; init; } = "";

        public long Count { get; init; }
    }
}
