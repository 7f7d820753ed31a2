using CsCheck;

namespace RangeMap.Store.Tests;

public class ImportPropertyTests
{
    [Fact]
    public void WhateverIsImportedTheCubeAndTheVisitsAreThoseOfTheRecords() =>
        SomeHistory.OfImports.Sample(history =>
        {
            using var store = new SomeStore();
            foreach (var deed in history)
            {
                SomeHistory.Do(store, deed);
                FromRecords.AssertAgree(store.Database);
            }

            store.Reopen();
            FromRecords.AssertAgree(store.Database);
            Assert.Empty(new StoreVerification(store.Database).FindProblems());
        }, iter: 40);

    [Fact]
    public void TheOrderOfImportsOfDifferentRecordsDoesNotMatter() =>
        SomeHistory.OfImports.Sample(history =>
        {
            // Each import a data set of its own: no record changes another.
            var apart = history.Select((deed, i) => deed with { Kind = DeedKind.Import, Dataset = $"set {i}" }).ToList();
            using var forwards = new SomeStore();
            using var backwards = new SomeStore();
            apart.ForEach(deed => SomeHistory.Do(forwards, deed));
            apart.AsEnumerable().Reverse().ToList().ForEach(deed => SomeHistory.Do(backwards, deed));
            Assert.Equal(FromRecords.Cubes(forwards.Database), FromRecords.Cubes(backwards.Database));
            FromRecords.AssertAgree(backwards.Database);
        }, iter: 15);
}
