namespace RangeMap.Records.Tests;

public sealed class TaxonResolverTests
{
    [Theory]
    [InlineData("Fictus ruber", "1")]
    [InlineData("  fictus   RUBER ", "1")]
    [InlineData("Fictus ruber Nemo, 1801", "1")]
    [InlineData("Fictus ruber (Nemo)", "1")]
    [InlineData("Fictus albus (Nemo, 1799)", "2")]
    [InlineData("Fictus (Subfictus) ruber", "1")]
    [InlineData("Fictus sanguineus", "1")]
    [InlineData("Red Fictus", "1")]
    [InlineData("Fictus ruber agg.", "9")]
    [InlineData("Fictus ruber agg", "9")]
    [InlineData("Fictus ruber sensu lato", "9")]
    [InlineData("Fictus albus agg.", "9")]
    public void ANameIsFoundHoweverItIsWritten(string name, string id)
    {
        var record = Assert.Single(Reading.OfRow("species,date,gridref", $"\"{name}\",1998,TQ38").Records);

        Assert.Equal(id, record.Taxon.Id);
        Assert.Equal(Doubts.None, record.Doubts);
    }

    [Theory]
    [InlineData("Fictus cf. ruber", "1")]
    [InlineData("Fictus ruber?", "1")]
    [InlineData("?Fictus ruber", "1")]
    [InlineData("Fictus aff. ruber", "1")]
    [InlineData("cf. Fictus ruber agg.", "9")]
    public void AQualifiedNameIsInDoubt(string name, string id)
    {
        var record = Assert.Single(Reading.OfRow("species,date,gridref", $"{name},1998,TQ38").Records);

        Assert.Equal((id, Doubts.NameUncertain), (record.Taxon.Id, record.Doubts));
    }

    [Theory]
    [InlineData("?")]
    [InlineData("Fictus")]
    [InlineData("Fictus ruber niger")]
    [InlineData("Ignotus agg.")]
    public void ANameThatIsNotInTheListIsRefused(string name) =>
        Assert.Single(Reading.OfRow("species,date,gridref", $"{name},1998,TQ38").Refusals);

    [Fact]
    public void TheQualifierColumnCounts()
    {
        const string header = "species,identificationQualifier,date,gridref";
        Assert.Equal(Doubts.NameUncertain, Assert.Single(Reading.OfRow(header, "Fictus ruber,cf.,1998,TQ38").Records).Doubts);
        Assert.Equal("9", Assert.Single(Reading.OfRow(header, "Fictus ruber,agg.,1998,TQ38").Records).Taxon.Id);
    }

    [Fact]
    public void ATaxonIdBeatsTheNameAndADisagreementIsInDoubt()
    {
        const string header = "taxonID,species,date,gridref";
        Assert.Equal("2", Assert.Single(Reading.OfRow(header, "2,,1998,TQ38").Records).Taxon.Id);
        var record = Assert.Single(Reading.OfRow(header, "2,Fictus ruber,1998,TQ38").Records);
        Assert.Equal(("2", Doubts.NameUncertain), (record.Taxon.Id, record.Doubts));
        Assert.Equal("1", Assert.Single(Reading.OfRow(header, "foreign:7,Fictus ruber,1998,TQ38").Records).Taxon.Id);
        Assert.Contains("taxonID", Assert.Single(Reading.OfRow(header, "foreign:7,,1998,TQ38").Refusals).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownNamesBecomeNewTaxaWhenAllowed()
    {
        var reading = Reading.Of("species,date,gridref\nNovus primus,1998,TQ38\nnovus primus,1999,TQ38\nNovus secundus agg.,1999,TQ38\n", Reading.Options with { NewTaxa = true });

        Assert.Equal(["Novus primus", "Novus secundus agg."], reading.Reader.NewTaxa.Select(t => t.ScientificName));
        Assert.Same(reading.Records[0].Taxon, reading.Records[1].Taxon);
    }

    [Fact]
    public void ARecordBeforeTheFirstYearIsInDoubt()
    {
        Assert.Equal(Doubts.BeforeFirstYear, Assert.Single(Reading.OfRow("species,date,gridref", "Fictus ruber,1899,TQ38").Records).Doubts);
        Assert.Equal(Doubts.None, Assert.Single(Reading.OfRow("species,date,gridref", "Fictus ruber,1899/1900,TQ38").Records).Doubts);
    }

    [Fact]
    public void ANameThatMeansTwoTaxaNeedsItsAuthorship()
    {
        var list = new TaxonList([new("1", "Idem nomen") { Authorship = "Nemo" }, new("2", "Idem nomen") { Authorship = "Nullus" }]);

        Assert.Contains("more than one", Assert.Single(Reading.Of("species,date,gridref\nIdem nomen,1998,TQ38\n", taxa: list).Refusals).Reason, StringComparison.Ordinal);
        Assert.Equal("2", Assert.Single(Reading.Of("species,date,gridref\nIdem nomen Nullus,1998,TQ38\n", taxa: list).Records).Taxon.Id);
    }

    // Distances counted by hand.
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("abc", "abc", 0)]
    [InlineData("abc", "acb", 1)]
    [InlineData("abc", "ab", 1)]
    [InlineData("abc", "xabc", 1)]
    [InlineData("kitten", "sitting", 3)]
    public void TheDistanceOfNamesCountsEdits(string a, string b, int edits) => Assert.Equal(edits, EditDistance.Of(a, b, 10));
}
