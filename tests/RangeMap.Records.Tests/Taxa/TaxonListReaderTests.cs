using System.Text;
using RangeMap.Grids;

namespace RangeMap.Records.Tests;

public sealed class TaxonListReaderTests
{
    private const string Header = "taxonID,scientificName,scientificNameAuthorship,vernacularName,acceptedNameUsageID,parentNameUsageID,aggregate,group,generaliseTo,firstYear,confusedWith,season,shelf";

    [Fact]
    public void AFullListIsRead()
    {
        var reading = Read(
            "1,\"Fictus ruber Nemo, 1801\",\"Nemo, 1801\",Red Fictus,,,9,fictuses,10km,1978,2,worker 16-44,B7",
            "2,Fictus albus,,,2,,9,fictuses,,,,,",
            "3,Fictus sanguineus,,,1,,,,,,,,",
            "4,Fictus vetus,,,3,,,,,,,,",
            "9,Fictus ruber agg.,,,,,,fictuses,,,,,");

        Assert.Empty(reading.Refusals);
        Assert.Equal(["1", "2", "9"], reading.List.Taxa.Select(t => t.Id));
        var taxon = reading.List.FindByName("fictus RUBER")!;
        Assert.Equal(("Nemo, 1801", "Red Fictus", "9", "fictuses", 1978), (taxon.Authorship, taxon.VernacularName, taxon.AggregateId, taxon.Group, taxon.FirstYear));
        Assert.Equal(SquareSize.Km10, taxon.GeneraliseTo);
        Assert.Equal(("worker 16-44", "B7", "2"), (taxon.Notes["season"], taxon.Notes["shelf"], taxon.Notes["confusedWith"]));
        Assert.Equal(["shelf"], reading.UnknownColumns);
        Assert.Same(taxon, reading.List.FindByName("Fictus sanguineus"));
        Assert.Same(taxon, reading.List.FindByName("Fictus vetus"));
        Assert.Same(taxon, reading.List.FindById("4"));
        Assert.Null(reading.List.FindById("5"));
    }

    [Theory]
    [InlineData(",Fictus ruber,,,,,,,,,,,", "taxonID", "missing")]
    [InlineData("5,,,,,,,,,,,,", "scientificName", "missing")]
    [InlineData("1,Fictus niger,,,,,,,,,,,", "taxonID", "line 2")]
    [InlineData("5,Fictus albus,,,,,,,,,,,", "scientificName", "line 2")]
    [InlineData("5,Fictus niger,,,7,,,,,,,,", "acceptedNameUsageID", "no taxon with")]
    [InlineData("5,Fictus niger,,,,7,,,,,,,", "parentNameUsageID", "no taxon with")]
    [InlineData("5,Fictus niger,,,,,7,,,,,,", "aggregate", "no taxon with")]
    [InlineData("5,Fictus niger,,,,,,,,,1;7,,", "confusedWith", "no taxon with")]
    [InlineData("5,Fictus niger,,,,,,,3km,,,,", "generaliseTo", "10km")]
    [InlineData("5,Fictus niger,,,,,,,,soon,,,", "firstYear", "four figures")]
    [InlineData("5,Fictus niger", "", "2 fields")]
    public void ABadRowIsRefusedWithItsLine(string row, string field, string reason)
    {
        var reading = Read("1,Fictus albus,,,,,,,,,,,", row);

        var refusal = Assert.Single(reading.Refusals);
        Assert.Equal((3, field), (refusal.Line, refusal.Field));
        Assert.Contains(reason, refusal.Reason, StringComparison.Ordinal);
        Assert.Equal("1", Assert.Single(reading.List.Taxa).Id);
    }

    [Fact]
    public void WhatReferredToARefusedRowIsRefusedToo()
    {
        var reading = Read("1,Fictus albus,,,,,,,,,,,", "5,A a,,,7,,,,,,,,", "6,B b,,,5,,,,,,,,");

        Assert.Equal([3L, 4L], reading.Refusals.Select(r => r.Line));
    }

    [Fact]
    public void SynonymsInACircleAreRefused()
    {
        var reading = Read("1,A a,,,2,,,,,,,,", "2,B b,,,1,,,,,,,,", "3,C c,,,,,,,,,,,");

        Assert.Equal(2, reading.Refusals.Count);
        Assert.Single(reading.List.Taxa);
    }

    [Fact]
    public void TaxaLoadedBeforeMayBeReferredTo()
    {
        var known = new TaxonList([new("1", "Fictus albus")]);
        using var stream = new MemoryStream("taxonID,scientificName,acceptedNameUsageID\n2,Fictus candidus,1\n"u8.ToArray());
        var reading = TaxonListReader.Read(stream, known);

        Assert.Equal("1", Assert.Single(reading.List.Synonyms).AcceptedId);
    }

    [Theory]
    [InlineData("taxonID,name\n1,A a\n", "scientificName")]
    [InlineData("taxonID,scientificName,TaxonId\n1,A a,1\n", "Two columns")]
    [InlineData("", "empty")]
    public void AListThatCannotBeReadAtAllIsAProblem(string text, string what)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        Assert.Contains(what, Assert.Throws<ImportProblemException>(() => TaxonListReader.Read(stream)).Problem.What, StringComparison.Ordinal);
    }

    private static TaxonListReading Read(params string[] rows)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes($"{Header}\n{string.Join('\n', rows)}\n"));
        return TaxonListReader.Read(stream);
    }
}
