using Dapper;
using RangeMap.Records;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class ImportSessionTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    [Fact]
    public void RecordsRefusalsRowsCubeAndVisitsComeTogether()
    {
        var figures = _store.Import([Version(1), Version(2, taxon: 2)], [Refused(3)]);

        Assert.Equal((3, 2, 1, 0, 0), (figures.Read, figures.Accepted, figures.Refused, figures.Updated, figures.Unchanged));
        var batches = new BatchStore(_store.Database);
        Assert.Equal(Refused(3), Assert.Single(batches.Refusals(figures.Batch)));
        Assert.Equal(["row 1 as it was sent", "row 3 as it was sent", null], new long[] { 1, 3, 4 }.Select(row => batches.SourceRow(figures.Batch, row)));
        Assert.Equal([1, 2], _store.Cubes.ReadAll().Keys.Order());
        Assert.Equal(2, _store.Cubes.ReadVisits().Entries.Length);
        FromRecords.AssertAgree(_store.Database);
    }

    [Fact]
    public void WithoutACommitEverythingIsAsItWas()
    {
        _store.Import([Version(1), Version(2)], [Refused(3)]);
        var before = LogicalDump.Of(_store.Database);
        using (var session = ImportSession.Begin(_store.Database, "another", "another.csv", Clock))
            Fill(session, [.. Enumerable.Range(1, 200).Select(key => Version(key, taxon: 3, version: 2))], [Refused(201)]);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    [Fact]
    public void AFirstImportWithoutACommitLeavesTheEmptyStoreWithItsIndexes()
    {
        var (before, indexes) = (LogicalDump.Of(_store.Database), IndexesOfRecords());
        using (var session = ImportSession.Begin(_store.Database, "invented", "invented.csv", Clock))
            Fill(session, [Version(1)], [Refused(2)]);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
        Assert.Equal(indexes, IndexesOfRecords());
    }

    [Fact]
    public void AFirstImportLeavesItsIndexesForAfterwardsAndTheNextImportMakesThemIfNobodyDid()
    {
        _store.Import([Version(1)]);
        Assert.Empty(IndexesOfRecords());
        _store.Import([Version(1), Version(2)]);
        Assert.Equal(["record_in_queue", "record_of_batch", "record_of_key", "record_of_recorder", "record_of_taxon"], IndexesOfRecords());
    }

    [Fact]
    public void TheAftercareOfAnImportMakesTheIndexesAndEmptiesTheLog()
    {
        _store.Import([Version(1)]);
        ImportAftercare.Run(_store.Database);
        Assert.Equal(5, IndexesOfRecords().Count);
        using var connection = _store.Database.Connect();
        var (_, inLog, moved) = connection.QuerySingle<(long Busy, long InLog, long Moved)>("PRAGMA wal_checkpoint(PASSIVE)");
        Assert.Equal(inLog, moved);
    }

    private List<string> IndexesOfRecords()
    {
        using var connection = _store.Database.Connect();
        return connection.Query<string>("SELECT name FROM sqlite_schema WHERE type = 'index' AND tbl_name = 'record' AND sql IS NOT NULL ORDER BY name").AsList();
    }

    [Fact]
    public void TheSameRecordsAgainChangeNothingAndMakeNoEdition()
    {
        _store.Import([Version(1), Version(2)]);
        var (edition, before) = (_store.Edition, LogicalDump.Of(_store.Database, "batch", "source_block"));
        var again = _store.Import([Version(1), Version(2)]);
        Assert.Equal((0, 0, 2), (again.Accepted, again.Updated, again.Unchanged));
        Assert.Equal(edition, _store.Edition);
        Assert.Equal(before, LogicalDump.Of(_store.Database, "batch", "source_block"));
    }

    [Fact]
    public void TheSameFileAgainWritesNothingAndNamesTheEarlierImport()
    {
        var first = _store.Import([Version(1)], [Refused(2)], hash: "h");
        var before = LogicalDump.Of(_store.Database);
        var again = _store.Import([Version(1)], [Refused(2)], hash: "h");
        Assert.Equal(first.Batch, again.Batch);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    [Fact]
    public void ARecordThatMovesEmptiesItsOldSquareAndKeepsWhatItSaid()
    {
        var first = _store.Import([Version(1, "SU1234")]);
        var edition = _store.Edition;
        var second = _store.Import([Version(1, "SU5678", version: 2)]);

        Assert.Equal((0, 1), (second.Accepted, second.Updated));
        Assert.Equal(edition + 1, _store.Edition);
        var cell = Assert.Single(_store.Cubes.Read([1]).Cells.ToArray());
        Assert.Equal("SU5678", Grids.Square.FromCode(cell.SquareCode).ToString());
        using var connection = _store.Database.Connect();
        var (by, from, square) = connection.QuerySingle<(long, long, long)>("SELECT replaced_by_batch, batch, square FROM replaced_record");
        Assert.Equal((second.Batch, first.Batch, "SU1234"), (by, from, Grids.Square.FromCode(square).ToString()));
    }

    [Fact]
    public void ARecordThatChangesItsTaxonLeavesTheOldOne()
    {
        _store.Import([Version(1, taxon: 1)]);
        _store.Import([Version(1, taxon: 2, version: 2)]);
        Assert.Equal([2], _store.Cubes.ReadAll().Keys);
        FromRecords.AssertAgree(_store.Database);
    }

    [Fact]
    public void TwoDataSetsMayUseTheSameKey()
    {
        _store.Import([Version(1)], dataset: "one");
        var other = _store.Import([Version(1)], dataset: "two");
        Assert.Equal(1, other.Accepted);
        Assert.Equal(2, Assert.Single(_store.Cubes.Read([1]).Cells.ToArray()).Counts.All);
    }

    [Fact]
    public void AnAbsenceMakesAVisitAndNoCell()
    {
        _store.Import([Version(1) with { Present = false }]);
        Assert.Empty(_store.Cubes.ReadAll());
        Assert.False(Assert.Single(_store.Cubes.ReadVisits().Entries.ToArray()).Present);
    }

    [Fact]
    public void ARecordOnACompleteListMakesACompleteVisit()
    {
        _store.Import([Version(1) with { OnCompleteList = true }, Version(2, day: "2001-05-07")]);
        Assert.Equal([true, false], _store.Cubes.ReadVisits().Entries.ToArray().Select(entry => entry.Complete));
        _store.Import([Version(1, version: 2)]);
        Assert.DoesNotContain(_store.Cubes.ReadVisits().Entries.ToArray(), entry => entry.Complete);
    }

    [Fact]
    public void ARejectedRecordMakesNeither()
    {
        _store.Import([Version(1) with { Status = ReviewStatus.Rejected }]);
        Assert.Empty(_store.Cubes.ReadAll());
        Assert.Equal(0, _store.Cubes.ReadVisits().Entries.Length);
    }

    [Fact]
    public void AVagueDateMakesACellAndNoVisit()
    {
        _store.Import([Version(1, day: "2001-05-01/2001-05-31")]);
        Assert.Single(_store.Cubes.Read([1]).Cells.ToArray());
        Assert.Equal(0, _store.Cubes.ReadVisits().Entries.Length);
    }

    [Fact]
    public void ATaxonThatTheFileNamesFirstIsNumberedOnce()
    {
        var taxon = new Taxon("name:Inventa nova", "Inventa nova");
        _store.Import([Version(1) with { Taxon = taxon }, Version(2, "SU99") with { Taxon = taxon }]);
        var kept = Assert.Single(new TaxonStore(_store.Database, Clock).ReadTaxa(), kept => kept.Id == taxon.Id);
        Assert.Equal(2, _store.Cubes.Read([kept.Number]).Cells.Length);
    }

    [Fact]
    public void ATaxonThatTheListGotMeanwhileKeepsWhatTheListSays()
    {
        var taxon = new Taxon("name:Inventa nova", "Inventa nova");
        using var session = ImportSession.Begin(_store.Database, "invented", "invented.csv", Clock);
        session.Dispose();
        new TaxonStore(_store.Database, Clock).Keep([taxon with { Group = "emberwings" }], []);
        _store.Import([Version(1) with { Taxon = taxon }]);
        Assert.Equal("emberwings", new TaxonStore(_store.Database, Clock).ReadTaxa().Single(kept => kept.Id == taxon.Id).Group);
    }

    [Fact]
    public void AFileOfRefusalsOnlyKeepsItsBatchAndMakesNoEdition()
    {
        var edition = _store.Edition;
        var figures = _store.Import([], [Refused(1), Refused(2)]);
        Assert.Equal(2, new BatchStore(_store.Database).Read(figures.Batch)!.Refused);
        Assert.Equal(2, new BatchStore(_store.Database).Refusals(figures.Batch).Count());
        Assert.Equal(edition, _store.Edition);
    }

    [Fact]
    public void DoubtsAreCountedByCode()
    {
        var figures = _store.Import([Version(1) with { Doubts = Doubts.AtSea | Doubts.CountZero }, Version(2) with { Doubts = Doubts.AtSea }]);
        Assert.Equal([KeyValuePair.Create("atSea", 2), KeyValuePair.Create("countZero", 1)], figures.Doubts);
    }
}
