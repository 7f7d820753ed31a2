using Dapper;

namespace RangeMap.Store;

/// <summary>Reads what people decided.</summary>
public sealed class DecisionHistory(Database database)
{
    /// <summary>Everything that was decided on a record, oldest first.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<PastDecision> Of(RecordId id) => database.Use<IReadOnlyList<PastDecision>>(connection =>
        connection.Query<PastDecision>(DecisionSql.History, new { id.Dataset, id.KeyHigh, id.KeyLow }).AsList());

    /// <summary>The newest sets of decisions, newest first.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<DecisionSet> Newest(int limit) => database.Use<IReadOnlyList<DecisionSet>>(connection =>
        connection.Query<DecisionSet>(DecisionSql.Sets, new { Limit = limit }).AsList());
}
