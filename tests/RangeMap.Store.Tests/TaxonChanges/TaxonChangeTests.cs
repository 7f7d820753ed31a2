using Dapper;
using RangeMap.Grids;
using RangeMap.Records;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class TaxonChangeTests : IDisposable
{
    private static readonly string[] Stays = ["taxon_change", "decision", "decision_set", "edition", "cube_segment", "visit_segment", "sqlite_sequence"];

    private readonly SomeStore _store = new();

    private TaxonChangeStore Changes => new(_store.Database, Clock);

    private TaxonStore List => new(_store.Database, Clock);

    public void Dispose() => _store.Dispose();

    [Fact]
    public void ARenamedTaxonIsFoundByBothNamesAndByTheOldAloneAfterTheUndo()
    {
        var before = Dump();
        var change = Changes.Rename("t1", "Inventa nova", "Someone, 2026", "T. Invented", "A new revision.");
        var list = List.Read();
        Assert.Equal("t1", list.FindByName("Inventa nova")!.Id);
        Assert.Equal("t1", list.FindByName("Inventa exempla1")!.Id);
        Assert.Equal("Inventa nova", list.FindById("t1")!.ScientificName);

        Changes.Undo(change.Number, "T. Invented");

        Assert.Equal(before, Dump());
        Assert.Null(List.Read().FindByName("Inventa nova"));
        Assert.Equal(("rename", "2020-02-03T04:05:06Z"), (Changes.ReadAll()[0].Kind, Changes.ReadAll()[0].UndoneAt));
    }

    [Fact]
    public void AMergedTaxonsRecordsAndNamesAreThoseOfTheOtherUntilTheUndo()
    {
        List.Keep([], [new Synonym("s1", "Inventa vetus", "t1")]);
        _store.Import([Version(1), Version(2, "SU99"), Version(3, taxon: 2)]);
        ImportAftercare.Run(_store.Database);
        var (before, cubes) = (Dump(), FromRecords.Cubes(_store.Database));

        var change = Changes.Merge("t1", "t2", "T. Invented", "They are one.");

        Assert.Equal(2, change.Records);
        Assert.Equal([2], _store.Cubes.ReadAll().Keys);
        var list = List.Read();
        Assert.Equal(["t2", "t2", "t2", "t2"], ((string[])["Inventa exempla1", "Inventa vetus", "Inventa exempla2"]).Select(name => list.FindByName(name)!.Id).Append(list.FindById("t1")!.Id));
        Assert.DoesNotContain(list.Taxa, taxon => taxon.Id == "t1");
        AssertWhole();

        Assert.Equal(2, Changes.Undo(change.Number, "T. Invented").Records);
        Assert.Equal(cubes, FromRecords.Cubes(_store.Database));
        Assert.Equal(before, Dump());
        AssertWhole();
    }

    [Fact]
    public void MergesInARowLeadToTheOneThatStands()
    {
        Changes.Merge("t1", "t2", "T. Invented", "");
        Changes.Merge("t2", "t3", "T. Invented", "");
        Assert.Equal(["t3", "t3"], ((string[])["Inventa exempla1", "Inventa exempla2"]).Select(name => List.Read().FindByName(name)!.Id));
        Assert.Contains("later", Assert.Throws<StoreException>(() => Changes.Undo(1, "T. Invented")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ASplitTaxonKeepsOnlyTheRecordsThatNoRuleTells()
    {
        _store.Import([
            Version(1, "SU1234"),
            Version(2, "NZ2563", "2001-05-06"),
            Version(3, "NZ2563", "2010-05-06"),
            Version(4, "TQ1234", "2010-05-06") with { Stage = "queen" },
            Version(5, "TQ1234", "2010-05-06") with { Stage = "worker" },
        ]);
        var cubes = FromRecords.Cubes(_store.Database);

        var change = Changes.Split(
            "t1",
            [
                new("t2") { Within = [GridReference.Parse("SU"), GridReference.Parse("TQ99")] },
                new("t3") { Within = [GridReference.Parse("NZ")], From = new(2005, 1, 1) },
                new("t3") { Stage = "queen" },
            ],
            "T. Invented", "Two species were told apart.");

        Assert.Equal(3, change.Records);
        Assert.Equal([2L, 1L, 3L, 3L, 1L], Taxa());
        var list = List.Read();
        Assert.Equal(("aggregate", "t1", "t1"), (list.FindById("t1")!.Rank, list.FindById("t2")!.AggregateId, list.FindById("t3")!.AggregateId));
        AssertWhole();

        Changes.Undo(change.Number, "T. Invented");
        Assert.Equal(cubes, FromRecords.Cubes(_store.Database));
        Assert.Null(List.Read().FindById("t2")!.AggregateId);
        AssertWhole();
    }

    [Fact]
    public void ARecordOnWhichAPersonDecidedLaterStaysAsThePersonSaidWhenTheChangeIsTakenBack()
    {
        _store.Import([Version(1), Version(2, "SU99")]);
        var change = Changes.Merge("t1", "t2", "T. Invented", "");
        var record = new RecordStore(_store.Database).Find(new()).Records[0];
        new DecisionStore(_store.Database, Clock).Decide(new([new(record.Id, record.Version)], "R. Invented", "") { TaxonId = "t3" });
        var undone = Changes.Undo(change.Number, "T. Invented");
        Assert.Equal((1, 1), (undone.Records, undone.DecidedLater));
        Assert.Equal([3L, 1L], Taxa());
        AssertWhole();
    }

    [Fact]
    public void AChangeOnWhichALaterOneBuildsIsNotTakenBackBeforeThatOne()
    {
        var first = Changes.Rename("t1", "Inventa nova", null, "T. Invented", "");
        var second = Changes.Rename("t1", "Inventa novissima", null, "T. Invented", "");
        Assert.Contains("later", Assert.Throws<StoreException>(() => Changes.Undo(first.Number, "T. Invented")).Message, StringComparison.Ordinal);
        Changes.Undo(second.Number, "T. Invented");
        Changes.Undo(first.Number, "T. Invented");
        Assert.Equal("Inventa exempla1", List.Read().FindById("t1")!.ScientificName);
        Assert.Contains("already", Assert.Throws<StoreException>(() => Changes.Undo(first.Number, "T. Invented")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatCannotBeChangedIsRefusedAndNothingChanges()
    {
        var before = Dump();
        Assert.Throws<StoreException>(() => Changes.Rename("t9", "Inventa nova", null, "", ""));
        Assert.Throws<StoreException>(() => Changes.Rename("t1", "Inventa exempla1", null, "", ""));
        Assert.Throws<StoreException>(() => Changes.Merge("t1", "t1", "", ""));
        Assert.Throws<StoreException>(() => Changes.Split("t1", [], "", ""));
        Assert.Throws<StoreException>(() => Changes.Split("t1", [new("t1")], "", ""));
        Assert.Throws<StoreException>(() => Changes.Undo(1, ""));
        Assert.Equal(before, Dump());
    }

    private IEnumerable<long> Taxa() => new RecordStore(_store.Database).Find(new()).Records.Select(record => record.Taxon);

    /// <summary>Everything but the histories; the indexes for look-ups come when they are first needed.</summary>
    private string Dump()
    {
        using (var connection = _store.Database.Connect())
            connection.Execute(RecordSql.MakeLookupIndexes);
        return LogicalDump.Of(_store.Database, Stays);
    }

    private void AssertWhole()
    {
        FromRecords.AssertAgree(_store.Database);
        Assert.Empty(new StoreVerification(_store.Database).FindProblems());
    }
}
