using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Looks whether each record stands as the decisions on it say, and as it was sent where there are none.</summary>
internal static class DecisionVerification
{
    public static IEnumerable<string> FindProblems(SqliteConnection connection, SqliteTransaction transaction)
    {
        var decisions = new DecisionLookup(connection, transaction);
        var wrong = 0;
        foreach (var row in connection.Query<RecordRow>(VerificationSql.DecidedRecords, transaction: transaction, buffered: false))
        {
            if (row.With(decisions.StandingOf(row.Identity, Standing.AsSent(row), DecisionBasis.Of(row))) != row)
                wrong++;
        }

        if (wrong > 0)
            yield return FormattableString.Invariant($"{wrong} records do not stand as the decisions on them say.");
    }
}
