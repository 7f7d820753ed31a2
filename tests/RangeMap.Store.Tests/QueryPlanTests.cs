namespace RangeMap.Store.Tests;

/// <summary>Statements that run once a row or once a question must find their rows by an index at any size of the data.</summary>
public sealed class QueryPlanTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    [Theory]
    [InlineData(CubeSql.SegmentsOfTaxon)]
    [InlineData(ImportSql.FindByKey)]
    [InlineData(ImportSql.ReadForCube)]
    [InlineData(ImportSql.KeepReplaced)]
    [InlineData(ImportSql.ChangeRecord)]
    [InlineData(BatchSql.ReadBlockOfRow)]
    [InlineData(BatchSql.ReadRefusals)]
    [InlineData(UndoSql.VersionBefore)]
    [InlineData(UndoSql.Restore)]
    [InlineData(UndoSql.RemoveVersion)]
    [InlineData(UndoSql.ReplacedBy)]
    [InlineData(DecisionSql.OfRecord)]
    [InlineData(DecisionSql.OfSet)]
    [InlineData(DecisionSql.FindRecord)]
    [InlineData(DecisionSql.Stand)]
    [InlineData(DecisionSql.History)]
    [InlineData(RecordSql.One)]
    public void FindsItsRowsByAnIndex(string statement) => AssertByIndex(statement);

    [Fact]
    public void ThePageOfTheQueueComesFromTheIndexOfTheQueueInItsOrder() =>
        AssertByIndex(RecordSql.Page([RecordSql.InQueue, RecordSql.Condition.TheseDoubts, RecordSql.Condition.After]), "record_in_queue");

    [Fact]
    public void TheCountsOfTheQueueComeFromItsIndexAlone()
    {
        using var connection = _store.Database.Connect();
        Assert.Contains(Plan(connection, RecordSql.QueueCounts), step => step.Contains("COVERING INDEX record_in_queue", StringComparison.Ordinal));
    }

    private void AssertByIndex(string statement, string index = "")
    {
        using var connection = _store.Database.Connect();
        var plan = Plan(connection, statement);
        Assert.NotEmpty(plan);
        Assert.DoesNotContain(plan, step => step.StartsWith("SCAN", StringComparison.Ordinal) || step.Contains("TEMP B-TREE", StringComparison.Ordinal));
        Assert.Contains(plan, step => step.Contains(index, StringComparison.Ordinal));
    }

    private static List<string> Plan(Microsoft.Data.Sqlite.SqliteConnection connection, string statement)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "EXPLAIN QUERY PLAN " + statement;
        foreach (var name in ParameterNames(statement))
            command.Parameters.AddWithValue(name, 1);
        using var reader = command.ExecuteReader();
        var plan = new List<string>();
        while (reader.Read())
            plan.Add(reader.GetString(3));
        return plan;
    }

    private static IEnumerable<string> ParameterNames(string statement) =>
        System.Text.RegularExpressions.Regex.Matches(statement, @"[@?]\w+").Select(match => match.Value).Distinct();
}
