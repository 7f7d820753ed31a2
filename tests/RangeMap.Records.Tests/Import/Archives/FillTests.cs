namespace RangeMap.Records.Tests;

/// <summary>What the extensions of an archive tell of its occurrences.</summary>
public sealed class FillTests
{
    private const string Dwc = "http://rs.tdwg.org/dwc/terms/";
    private const string Row = "a1,Fictus ruber,1998,TQ38\n";

    private static readonly string Measurements = SomeArchive.Extension(
        "", $"<coreid index='0'/><field index='1' term='{Dwc}measurementType'/><field index='2' term='{Dwc}measurementValue'/><field index='3' term='{Dwc}measurementUnit'/>",
        Dwc + "MeasurementOrFact", "measurement.txt");

    private static readonly string Media = SomeArchive.Extension(
        "", "<coreid index='0'/><field index='1' term='http://purl.org/dc/terms/type'/><field index='2' term='http://purl.org/dc/terms/format'/>"
        + "<field index='3' term='http://purl.org/dc/terms/identifier'/><field index='4' term='http://purl.org/dc/terms/references'/>",
        "http://rs.gbif.org/terms/1.0/Multimedia", "media.txt");

    [Theory]
    [InlineData("body length,12.5,mm", 12.5)]
    [InlineData("Length,1.2,cm", 12.0)]
    [InlineData("body length,11-13,millimetres", 12.0)]
    [InlineData("body length,12 mm,", 12.0)]
    [InlineData("body length (mm),12,", 12.0)]
    [InlineData("body length,12,", null)]
    [InlineData("body length,12,inches", null)]
    [InlineData("wing length,12,mm", null)]
    [InlineData("weight,12,g", null)]
    [InlineData("body length,long,mm", null)]
    [InlineData("body length,,mm", null)]
    public void ALengthThatStatesItsUnitFillsTheRecord(string measurement, double? mm)
    {
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(), Measurements), ("occurrence.txt", Row), ("measurement.txt", $"a1,{measurement}\n"));

        Assert.Equal(mm, Assert.Single(reading.Records).LengthMm);
        Assert.Equal(mm is null ? 0 : 1, Assert.Single(reading.Reader.Kept).Used);
    }

    [Fact]
    public void TheFirstLengthOfARecordCountsAndItsOwnBeatsAll()
    {
        var core = SomeArchive.Core("", SomeArchive.UsualFields + "<field index='4' term='http://example.org/length'/>");
        var reading = SomeArchive.Read(
            SomeArchive.Meta(core, Measurements),
            ("occurrence.txt", "a1,Fictus ruber,1998,TQ38,9 mm\na2,Fictus ruber,1998,TQ38,\na3,Fictus ruber,1998,TQ38,NULL\n"),
            ("measurement.txt", "a1,length,12,mm\na2,length,13,mm\na2,length,14,mm\na3,length,15,mm\na9,length,16,mm\n"));

        Assert.Equal([9.0, 13.0, 15.0], reading.Records.Select(r => r.LengthMm));
        var kept = Assert.Single(reading.Reader.Kept);
        Assert.Equal((5, 2, 3, 1), (kept.Rows, kept.Used, kept.Left, kept.Orphans));
        Assert.Contains("measurement.txt: 5 rows of MeasurementOrFact, 2 filled a record, 3 left in the archive; 1 row belongs to no row of the core.", reading.Reader.Notes);
    }

    [Theory]
    [InlineData("StillImage,image/jpeg,https://example.org/1.jpg,", "photograph", "https://example.org/1.jpg")]
    [InlineData(",,https://example.org/1.jpg,https://example.org/page", "photograph", "https://example.org/1.jpg")]
    [InlineData("http://purl.org/dc/dcmitype/StillImage,,1.jpg,https://example.org/page", "photograph", "https://example.org/page")]
    [InlineData("MovingImage,,https://example.org/1.mp4,", "video", "https://example.org/1.mp4")]
    [InlineData(",audio/wav,https://example.org/1.wav,", "sound", "https://example.org/1.wav")]
    [InlineData("Text,,https://example.org/1.txt,", null, null)]
    [InlineData("StillImage,,javascript:alert(1),", null, null)]
    [InlineData("StillImage,,,", null, null)]
    public void APhotographIsTheEvidenceOfARecordThatHasNone(string media, string? evidence, string? link)
    {
        var record = Assert.Single(SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(), Media), ("occurrence.txt", Row), ("media.txt", $"a1,{media}\n")).Records);

        Assert.Equal((evidence, link), (record.Evidence, record.EvidenceLink));
    }

    [Theory]
    [InlineData("HumanObservation", "photograph")]
    [InlineData("", "photograph")]
    [InlineData("PreservedSpecimen", "specimen")]
    [InlineData("MachineObservation", "trap")]
    public void APhotographSaysMoreThanASightingAndNoMoreThanASpecimen(string basis, string evidence)
    {
        var core = SomeArchive.Core("", SomeArchive.UsualFields + $"<field index='4' term='{Dwc}basisOfRecord'/>");
        var reading = SomeArchive.Read(
            SomeArchive.Meta(core, Media), ("occurrence.txt", $"a1,Fictus ruber,1998,TQ38,{basis}\n"), ("media.txt", "a1,StillImage,,https://example.org/1.jpg,\na1,StillImage,,https://example.org/2.jpg,\n"));
        var record = Assert.Single(reading.Records);

        Assert.Equal((evidence, "https://example.org/1.jpg | https://example.org/2.jpg"), (record.Evidence, record.EvidenceLink));
        Assert.Equal(2, Assert.Single(reading.Reader.Kept).Used);
    }

    [Fact]
    public void EvidenceThatTheRecordStatesStays()
    {
        var core = SomeArchive.Core("", SomeArchive.UsualFields + $"<field index='4' term='http://example.org/evidence'/><field index='5' term='{Dwc}associatedMedia'/>");
        var reading = SomeArchive.Read(
            SomeArchive.Meta(core, Media), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38,sighting,https://example.org/own\n"), ("media.txt", "a1,StillImage,,https://example.org/1.jpg,\n"));
        var record = Assert.Single(reading.Records);

        Assert.Equal(("sighting", "https://example.org/own"), (record.Evidence, record.EvidenceLink));
        Assert.Equal((0, 1), (Assert.Single(reading.Reader.Kept).Used, reading.Reader.Kept[0].Left));
    }

    [Fact]
    public void WhatAnExtensionTellsIsContentAndStandsInTheKeptRow()
    {
        Reading With(string length) => SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(), Measurements), ("occurrence.txt", Row + "a2,Fictus niger,1998,TQ38\n"), ("measurement.txt", $"a1,length,{length},mm\na2,length,{length},mm\n"));
        var (one, other) = (With("12"), With("13"));

        Assert.Equal(one.Records[0].Key, other.Records[0].Key);
        Assert.NotEqual(one.Records[0].Content, other.Records[0].Content);
        Assert.Equal("12 mm", RowText.Split(Assert.Single(one.Refusals).RawText, ',')![^1]);
    }

    [Fact]
    public void AnIdentificationHistoryChangesNoName()
    {
        var history = SomeArchive.Extension("", $"<coreid index='0'/><field index='1' term='{Dwc}scientificName'/>", Dwc + "Identification", "identification.txt");
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(), history), ("occurrence.txt", Row), ("identification.txt", "a1,Fictus albus\na1,Fictus ruber agg.\n"));

        Assert.Equal("Fictus ruber", Assert.Single(reading.Records).Taxon.ScientificName);
        Assert.Contains(reading.Reader.Notes, n => n.StartsWith("identification.txt: 2 rows of Identification, kept with the archive; it changes no name", StringComparison.Ordinal));
    }

    [Fact]
    public void OfAnEventOnlyRowsThatNameTheirOccurrenceFillIt()
    {
        var meta = SomeArchive.Meta(
            SomeArchive.Core("", $"<id index='0'/><field index='1' term='{Dwc}eventDate'/><field index='2' term='http://example.org/gridReference'/>", SomeArchive.Event, "event.txt"),
            SomeArchive.Extension("", $"<coreid index='0'/><field index='1' term='{Dwc}occurrenceID'/><field index='2' term='{Dwc}scientificName'/>", SomeArchive.Occurrence, "occurrence.txt"),
            SomeArchive.Extension("", $"<coreid index='0'/><field index='1' term='{Dwc}occurrenceID'/><field index='2' term='{Dwc}measurementType'/><field index='3' term='{Dwc}measurementValue'/><field index='4' term='{Dwc}measurementUnit'/>", "http://rs.iobis.org/obis/terms/ExtendedMeasurementOrFact", "measurement.txt"));
        var reading = SomeArchive.Read(
            meta, ("event.txt", "e1,1998,TQ38\n"), ("occurrence.txt", "e1,o1,Fictus ruber\ne1,o2,Fictus albus\n"), ("measurement.txt", "e1,o2,length,12,mm\ne1,,length,100,m\n"));

        Assert.Equal([null, 12.0], reading.Records.Select(r => r.LengthMm));
        Assert.Equal((1, 1), (Assert.Single(reading.Reader.Kept).Used, reading.Reader.Kept[0].Left));
    }

    [Fact]
    public void AnEventThatIsFullyReportedMakesACompleteListOfItsOccurrences()
    {
        var meta = SomeArchive.Meta(
            SomeArchive.Core("", $"<id index='0'/><field index='1' term='{Dwc}eventDate'/><field index='2' term='http://example.org/gridReference'/>", SomeArchive.Event, "event.txt"),
            SomeArchive.Extension("", $"<coreid index='0'/><field index='1' term='{Dwc}scientificName'/>", SomeArchive.Occurrence, "occurrence.txt"),
            SomeArchive.Extension("", "<coreid index='0'/><field index='1' term='http://rs.tdwg.org/eco/terms/isTaxonomicScopeFullyReported'/>", "http://rs.tdwg.org/eco/terms/Event", "lists.txt"));
        var reading = SomeArchive.Read(
            meta, ("event.txt", "e1,1998,TQ38\ne2,1999,TQ38\n"), ("occurrence.txt", "e1,Fictus ruber\ne1,Fictus albus\ne2,Fictus albus\n"), ("lists.txt", "e1,true\ne2,false\n"));

        Assert.Equal([true, true, false], reading.Records.Select(r => r.OnCompleteList));
        Assert.Equal((2, 0), (Assert.Single(reading.Reader.Kept).Used, reading.Reader.Kept[0].Left));
    }

    [Fact]
    public void MoreThanCanBeHeldIsLeftAndSaid()
    {
        var zip = SomeZip.Of(
            ("meta.xml", SomeArchive.Meta(SomeArchive.Core(), Measurements)), ("occurrence.txt", Row + Row.Replace("a1", "a2", StringComparison.Ordinal)), ("measurement.txt", "a1,length,12,mm\na2,length,13,mm\na1,weight,3,g\n"));
        var reading = Reading.Of(zip, Reading.Options with { Limits = new() { ExtensionOccurrences = 1 } });

        Assert.Equal([12.0, null], reading.Records.Select(r => r.LengthMm));
        Assert.Contains(reading.Reader.Notes, n => n.Contains("1 filled a record, 2 left in the archive; of those left, 1 row went beyond what can be held", StringComparison.Ordinal));
    }

    [Fact]
    public void ManyLinksOfManyRecordsAreToldApart()
    {
        var media = Enumerable.Range(0, 30_000).Select(i => $"a{i % 10_000},StillImage,,https://example.org/{i}/{new string('\u00E4', 20)}.jpg,\n");
        var reading = SomeArchive.Read(
            SomeArchive.Meta(SomeArchive.Core(), Media), ("occurrence.txt", string.Concat(Enumerable.Range(0, 10_000).Select(i => $"a{i},Fictus ruber,1998,TQ38\n"))), ("media.txt", string.Concat(media)));

        Assert.Equal(30_000, Assert.Single(reading.Reader.Kept).Used);
        Assert.All(reading.Records, (record, i) => Assert.StartsWith($"https://example.org/{i}/\u00E4", record.EvidenceLink, StringComparison.Ordinal));
        Assert.All(reading.Records, (record, i) => Assert.Contains($" | https://example.org/{i + 20_000}/\u00E4", record.EvidenceLink, StringComparison.Ordinal));
    }

    [Fact]
    public void NoMoreThanFiveLinksOfARecordAreUsed()
    {
        var media = string.Concat(Enumerable.Range(1, 7).Select(i => $"a1,StillImage,,https://example.org/{i}.jpg,\n"));
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(), Media), ("occurrence.txt", Row), ("media.txt", media));

        Assert.EndsWith("https://example.org/5.jpg", Assert.Single(reading.Records).EvidenceLink, StringComparison.Ordinal);
        Assert.Equal((5, 2), (Assert.Single(reading.Reader.Kept).Used, reading.Reader.Kept[0].Left));
    }

    [Fact]
    public void AFileReadTwiceForItsDatesCountsItsRowsOnce()
    {
        var reading = SomeArchive.Read(
            SomeArchive.Meta(SomeArchive.Core(), Measurements), ("occurrence.txt", "a1,Fictus ruber,3/6/1998,TQ38\na2,Fictus ruber,13/6/1998,TQ38\n"), ("measurement.txt", "a1,length,12,mm\na2,length,13,mm\n"));

        Assert.Equal([12.0, 13.0], reading.Records.Select(r => r.LengthMm));
        Assert.Equal(2, Assert.Single(reading.Reader.Kept).Used);
    }
}
