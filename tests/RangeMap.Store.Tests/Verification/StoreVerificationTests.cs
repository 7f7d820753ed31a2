using Dapper;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class StoreVerificationTests : IDisposable
{
    private readonly SomeStore _store = new();

    public StoreVerificationTests() =>
        _store.Import([.. Enumerable.Range(1, 120).Select(key => Version(key, taxon: 1 + key % 3))], [Refused(121)]);

    public void Dispose() => _store.Dispose();

    [Fact]
    public void AWholeStoreHasNoProblems() => Assert.Empty(Problems());

    [Theory]
    [InlineData("UPDATE record SET taxon = 2 WHERE id = 3", "cube of taxon number")]
    [InlineData("UPDATE record SET sent_status = 1 WHERE id = 4", "1 records do not stand as the decisions on them say.")]
    [InlineData("DELETE FROM visit_segment WHERE id = 1", "The visits and the records differ")]
    [InlineData("DELETE FROM cube_segment WHERE taxon = 1", "The cube of taxon number 1 and its records differ in 1 cells.")]
    [InlineData("UPDATE cube_segment SET data = X'80' WHERE taxon = 2", "The cube cannot be read")]
    [InlineData("DELETE FROM record WHERE id = 5", "Import 1: it brought 120 new or changed records, but 119 are kept.")]
    [InlineData("DELETE FROM refusal", "Import 1: 1 rows were refused, but 0 refusals are kept.")]
    [InlineData("DELETE FROM source_block", "Import 1: 121 rows were read, but 0 are kept as they were sent.")]
    [InlineData("UPDATE source_block SET data = X'FF00FF'", "Import 1: its rows 1 to 121 as they were sent cannot be read.")]
    [InlineData("UPDATE source_block SET first_row = 3", "are followed by row 3.")]
    [InlineData("UPDATE batch SET unchanged = 9", "Import 1: 121 rows were read, but 130 are accounted for.")]
    [InlineData("UPDATE batch SET undone_at = '2020-01-01T00:00:00Z'", "Import 1: it was taken back, but 120 records of it still count.")]
    [InlineData("DELETE FROM person", "120 records name a recorder that is not there.")]
    [InlineData("PRAGMA foreign_keys = OFF; UPDATE batch SET dataset = 99", "1 rows of table batch point to something that is not there.")]
    [InlineData("UPDATE record SET key_high = 7, key_low = 8 WHERE id < 3", "1 records are kept twice under one identity.")]
    public void WhatIsBrokenIsTold(string damage, string told)
    {
        using (var connection = _store.Database.Connect())
            connection.Execute(damage);
        Assert.Contains(Problems(), problem => problem.Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void ADamagedCubeIsASentenceForWhoeverReadsIt()
    {
        using (var connection = _store.Database.Connect())
            connection.Execute("UPDATE cube_segment SET data = X'80' WHERE taxon = 2");
        Assert.Contains("damaged", Assert.Throws<StoreException>(() => _store.Cubes.Read([2])).Message, StringComparison.Ordinal);
        Assert.Throws<StoreException>(_store.Cubes.ReadAll);
    }

    private IReadOnlyList<string> Problems() => new StoreVerification(_store.Database).FindProblems();
}
