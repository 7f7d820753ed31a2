using RangeMap.TestKit;

namespace RangeMap.Records.Tests;

/// <summary>The rules of the Darwin Core text guide, https://dwc.tdwg.org/text/ (2023-09-13), one by one.</summary>
public sealed class ArchiveTests
{
    private const string Row = "a1,Fictus ruber,1998-06-03,TQ308801\n";

    [Fact]
    public void TheDefaultsOfTheGuideAreCommasLineFeedsAndQuotationMarks()
    {
        var record = Assert.Single(SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core()), ("occurrence.txt", "a1,\"Fictus ruber\",1998-06-03,\"TQ308801\"\n")).Records);

        Assert.Equal(DayRange.Day(new(1998, 6, 3)), record.Dates);
    }

    [Theory]
    [InlineData(@"fieldsTerminatedBy='\t' linesTerminatedBy='\n' fieldsEnclosedBy='' ignoreHeaderLines='1'", "id\tname\tdate\tplace\na1\tFictus ruber\t1998\tTQ38\n")]
    [InlineData(@"fieldsTerminatedBy='\t' linesTerminatedBy='\r\n' ignoreHeaderLines='2'", "any line\r\nid\tname\tdate\tplace\r\na1\tFictus ruber\t1998\tTQ38\r\n")]
    [InlineData(@"fieldsTerminatedBy='&#9;' linesTerminatedBy='&#10;'", "a1\tFictus ruber\t1998\tTQ38\r\n")]
    [InlineData("fieldsTerminatedBy=';' fieldsEnclosedBy='&apos;'", "'a1';'Fictus ruber';'1998';'TQ38'\n")]
    [InlineData("fieldsTerminatedBy='|' linesTerminatedBy='#'", "a1|Fictus ruber|1998|TQ38#")]
    [InlineData("encoding='UTF-16LE'", null)]
    public void LayoutsAreFollowed(string layout, string? content)
    {
        var bytes = content is null ? System.Text.Encoding.Unicode.GetBytes("a1,Fictus ruber,1998,TQ38\n") : System.Text.Encoding.UTF8.GetBytes(content);
        var zip = SomeZip.OfBytes(("meta.xml", System.Text.Encoding.UTF8.GetBytes(SomeArchive.Meta(SomeArchive.Core(layout)))), ("occurrence.txt", bytes));

        Assert.Equal(DayRange.Year(1998), Assert.Single(Reading.Of(zip).Records).Dates);
    }

    [Fact]
    public void WithoutEnclosureQuotationMarksAreText()
    {
        var fields = SomeArchive.UsualFields + "<field index='4' term='http://rs.tdwg.org/dwc/terms/locality'/>";
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(@"fieldsTerminatedBy='\t' fieldsEnclosedBy=''", fields)), ("occurrence.txt", "a1\tFictus ruber\t1998\tTQ38\t\"The mill\na2\tFictus ruber\t1998\tTQ38\t5\" pot\n"));

        Assert.Equal(["\"The mill", "5\" pot"], reading.Records.Select(r => r.Site));
        Assert.Equal(2, reading.Records.Count);
    }

    [Fact]
    public void OtherLineEndsInsideAFieldAreText()
    {
        var fields = SomeArchive.UsualFields + "<field index='4' term='http://rs.tdwg.org/dwc/terms/locality'/>";
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core("", fields)), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38,one\rtwo\u0085three\u2028four\r\n\r\na2,Fictus ruber,1998,TQ38,\"a,\nb\"\r\n"));

        Assert.Equal(["one\rtwo\u0085three\u2028four", "a,\nb"], reading.Records.Select(r => r.Site));
    }

    [Fact]
    public void DefaultsFillEmptyCellsAndMissingColumns()
    {
        var fields = SomeArchive.UsualFields
            + "<field index='4' term='http://rs.tdwg.org/dwc/terms/recordedBy' default='Nobody'/><field term='http://rs.tdwg.org/dwc/terms/locality' default='Everywhere'/><field term='http://rs.tdwg.org/dwc/terms/sex'/>";
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core("", fields)), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38,\na2,Fictus ruber,1998,TQ38,Somebody\n"));

        Assert.Equal(["Nobody", "Somebody"], reading.Records.Select(r => r.Recorder));
        Assert.All(reading.Records, r => Assert.Equal("Everywhere", r.Site));
        Assert.DoesNotContain("sex", reading.Reader.Mapping.Columns);
    }

    [Fact]
    public void SeveralFilesAreReadInOrderEachWithItsHeader()
    {
        var meta = SomeArchive.Meta(SomeArchive.Core("ignoreHeaderLines='1'", files: ["b.txt", "a.txt"]));
        var reading = SomeArchive.Read(meta, ("a.txt", "h,h,h,h\n" + Row.Replace("a1", "a3", StringComparison.Ordinal) + "broken\n"), ("b.txt", "h,h,h,h\n" + Row));

        Assert.Equal(2, reading.Records.Count);
        var refusal = Assert.Single(reading.Refusals);
        Assert.Equal((3, 3), (refusal.Row, refusal.Line));
        Assert.EndsWith("(In a.txt.)", refusal.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void ColumnsThatAreNotDescribedAreKept()
    {
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core("ignoreHeaderLines='1'")), ("occurrence.txt", "id,n,d,p,sex\na1,Fictus ruber,1998,TQ38,male\n"));

        Assert.Equal("kept, not used", reading.Reader.Mapping.Report["(sex)"]);
        Assert.Null(Assert.Single(reading.Records).Sex);
        Assert.Equal(["occurrenceID", "scientificName", "eventDate", "gridReference", "(sex)"], reading.Reader.Mapping.Columns);
    }

    [Fact]
    public void UnknownTermsAreKeptByTheirShortName()
    {
        var fields = SomeArchive.UsualFields + "<field index='4' term='http://example.org/own#weather'/><field index='5' term='http://purl.org/dc/terms/type'/><field index='6' term='http://rs.tdwg.org/dwc/terms/type'/>";
        var columns = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core("", fields)), ("occurrence.txt", "a1,Fictus ruber,1998,TQ38,dry,x,y\n")).Reader.Mapping.Columns;

        Assert.Equal(["weather", "type", "http://rs.tdwg.org/dwc/terms/type"], columns.Skip(4));
    }

    [Fact]
    public void AnIdentifierThatIsNoTermIsTheOccurrenceId()
    {
        var fields = "<id index='0'/><field index='1' term='scientificName'/><field index='2' term='eventDate'/><field index='3' term='gridReference'/>";
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core("", fields)), ("occurrence.txt", Row));

        Assert.True(reading.Reader.Mapping.Has(Term.OccurrenceId));
        Assert.Single(reading.Records);
    }

    [Theory]
    [InlineData("DD-MM-YYYY", 6, 3)]
    [InlineData("MM/DD/YYYY", 3, 6)]
    public void TheDateFormatTellsTheOrderOfDayAndMonth(string format, int month, int day)
    {
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core($"dateFormat='{format}'")), ("occurrence.txt", "a1,Fictus ruber,3/6/1998,TQ38\n"));

        Assert.Equal(new DateOnly(1998, month, day), Assert.Single(reading.Records).Dates.First);
    }

    [Fact]
    public void RefusalsOfAnArchiveCanBeMendedAsCsv()
    {
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core(@"fieldsTerminatedBy='\t' fieldsEnclosedBy=''")), ("occurrence.txt", "a1\tFictus \"ruber\", old\t1998\tTQ38\n"));
        var refusal = Assert.Single(reading.Refusals);

        Assert.Equal(["a1", "Fictus \"ruber\", old", "1998", "TQ38"], RowText.Split(refusal.RawText, reading.Reader.Separator));
    }

    [Fact]
    public void AFolderOrACommonFolderInTheZipHoldsAnArchiveToo()
    {
        (string Name, string Content)[] files = [("meta.xml", SomeArchive.Meta(SomeArchive.Core())), ("occurrence.txt", Row)];
        Assert.Single(Reading.Of(SomeZip.Of([.. files.Select(f => ($"archive/{f.Name}", f.Content))])).Records);
        using var folder = new TemporaryFolder();
        foreach (var (name, content) in files)
            File.WriteAllText(Path.Combine(folder.Path, name), content);
        using var reader = RecordReader.OpenFolder(folder.Path, Reading.Taxa, Reading.Options);
        Assert.True(reader.Read());
        Assert.Equal(FileKind.Archive, reader.File.Kind);
    }
}
