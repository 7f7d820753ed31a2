namespace RangeMap.Records.Tests;

public sealed class ExtensionTests
{
    private const string EventFields = "<id index='0'/><field index='0' term='http://rs.tdwg.org/dwc/terms/eventID'/><field index='1' term='http://rs.tdwg.org/dwc/terms/eventDate'/>"
        + "<field index='2' term='http://example.org/terms/gridReference'/><field index='3' term='http://rs.tdwg.org/dwc/terms/recordedBy'/>";

    private const string OccurrenceFields = "<coreid index='0'/><field index='1' term='http://rs.tdwg.org/dwc/terms/occurrenceID'/><field index='2' term='http://rs.tdwg.org/dwc/terms/scientificName'/>"
        + "<field index='3' term='http://rs.tdwg.org/dwc/terms/recordedBy'/>";

    private static readonly string EventMeta = SomeArchive.Meta(
        SomeArchive.Core("", EventFields, SomeArchive.Event, "event.txt"),
        SomeArchive.Extension("", OccurrenceFields, SomeArchive.Occurrence, "occurrence.txt"),
        SomeArchive.Extension("", "<coreid index='0'/><field index='1' term='http://rs.tdwg.org/dwc/terms/measurementValue'/>", "http://rs.tdwg.org/dwc/terms/MeasurementOrFact", "measurement.txt"));

    [Fact]
    public void OccurrencesTakeDateAndPlaceFromTheirEvent()
    {
        var reading = SomeArchive.Read(
            EventMeta,
            ("event.txt", "e1,1998-06-03,TQ38,A. Nobody\ne2,1999,TQ39,B. Nobody\ne3,2000,TQ37,\ne1,2001,TQ36,\n"),
            ("occurrence.txt", "e2,o1,Fictus ruber,\ne1,o2,Fictus albus,C. Nobody\ne9,o3,Fictus ruber,\n"),
            ("measurement.txt", "e1,17\ne8,18\n"));

        Assert.Equal([DayRange.Year(1999), DayRange.Day(new(1998, 6, 3))], reading.Records.Select(r => r.Dates));
        Assert.Equal(["B. Nobody", "C. Nobody"], reading.Records.Select(r => r.Recorder));
        Assert.Contains("\"e9\"", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
        Assert.Equal(new KeptFile("measurement.txt", "MeasurementOrFact", 2, 1), Assert.Single(reading.Reader.Kept));
        Assert.Contains(reading.Reader.Notes, n => n.Contains("1 rows of the core have no occurrence", StringComparison.Ordinal));
        Assert.Contains(reading.Reader.Notes, n => n.Contains("1 rows of the core are broken", StringComparison.Ordinal));
    }

    [Fact]
    public void ExtensionsOfOccurrencesAreCountedWithTheirOrphans()
    {
        var meta = SomeArchive.Meta(SomeArchive.Core(), SomeArchive.Extension(@"fieldsTerminatedBy='\t'", "<coreid index='0'/><field index='1' term='http://purl.org/dc/terms/identifier'/>", "http://rs.gbif.org/terms/1.0/Multimedia", "media.txt"));
        var reading = SomeArchive.Read(meta, ("occurrence.txt", "a1,Fictus ruber,1998,TQ38\n"), ("media.txt", "a1\tx.jpg\na1\ty.jpg\na7\tz.jpg\n"));

        Assert.Equal(new KeptFile("media.txt", "Multimedia", 3, 1), Assert.Single(reading.Reader.Kept));
    }

    [Fact]
    public void ABrokenExtensionDoesNotTakeTheRecordsAway()
    {
        var meta = SomeArchive.Meta(SomeArchive.Core(), SomeArchive.Extension("", "<coreid index='0'/><field index='1' term='x/y'/>", "x/Multimedia", "media.txt"));
        var reading = SomeArchive.Read(meta, ("occurrence.txt", "a1,Fictus ruber,1998,TQ38\n"));

        Assert.Single(reading.Records);
        Assert.Contains(reading.Reader.Notes, n => n.Contains("media.txt", StringComparison.Ordinal));
    }

    [Fact]
    public void MoreEventsThanTheLimitAreRefused()
    {
        var zip = SomeZip.Of(("meta.xml", EventMeta), ("event.txt", "e1,1998,TQ38,\ne2,1999,TQ39,\n"), ("occurrence.txt", "e2,o1,Fictus ruber,\n"));

        Assert.Equal("event.txt, line 2", Reading.ProblemOf(zip, Reading.Options with { Limits = new() { Events = 1 } }).Where);
    }

    [Fact]
    public void AnArchiveWithoutOccurrencesSaysWhatItHolds()
    {
        var problem = SomeArchive.ProblemOf(SomeArchive.Meta(SomeArchive.Core("", EventFields, SomeArchive.Event, "event.txt")), ("event.txt", "e1,1998,TQ38,\n"));

        Assert.Contains("its core is of Event", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void TheCitationIsReadFromEml()
    {
        const string eml = """
            <eml:eml xmlns:eml="https://eml.ecoinformatics.org/eml-2.2.0" packageId="doc-1"><dataset><title>Invented records</title>
            <creator><individualName><givenName>A.</givenName><surName>Nobody</surName></individualName><organizationName>Nowhere Club</organizationName></creator>
            <creator><organizationName>Nowhere Club</organizationName></creator><pubDate>2020-01-02</pubDate>
            <intellectualRights><para>Licensed under <ulink url="https://creativecommons.org/licenses/by/4.0/"><citetitle>CC BY 4.0</citetitle></ulink>.</para></intellectualRights></dataset>
            <additionalMetadata><metadata><citation>Nobody A. (2020): Invented records.</citation></metadata></additionalMetadata></eml:eml>
            """;
        var citation = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core()), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38\n"), ("eml.xml", eml)).Reader.File.Citation!;

        Assert.Equal(("Invented records", "2020-01-02", "doc-1"), (citation.Title, citation.Published, citation.Identifier));
        Assert.Equal(["A. Nobody", "Nowhere Club"], citation.Creators);
        Assert.Equal(("Licensed under CC BY 4.0.", "https://creativecommons.org/licenses/by/4.0/"), (citation.Licence, citation.LicenceUrl));
        Assert.Equal("Nobody A. (2020): Invented records.", citation.Citation);
    }

    [Fact]
    public void AMissingOrBrokenEmlIsNoted()
    {
        foreach (var eml in new[] { "<eml><title>", "<!DOCTYPE eml [<!ENTITY x SYSTEM 'file:///etc/passwd'>]><eml><title>&x;</title></eml>" })
        {
            var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core()), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38\n"), ("eml.xml", eml));
            Assert.Contains(reading.Reader.Notes, n => n.Contains("eml.xml", StringComparison.Ordinal));
            Assert.Null(reading.Reader.File.Citation);
        }

        Assert.Contains(SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core()), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38\n")).Reader.Notes, n => n.Contains("eml.xml", StringComparison.Ordinal));
    }
}
