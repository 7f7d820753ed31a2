namespace RangeMap.Records.Tests;

/// <summary>One bad archive for each way in which an archive can be bad.</summary>
public sealed class BadArchiveTests
{
    private const string Row = "a1,Fictus ruber,1998,TQ38\n";

    [Theory]
    [InlineData("<!DOCTYPE archive [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>")]
    [InlineData("<!DOCTYPE archive [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'>]>")]
    [InlineData("<!DOCTYPE archive SYSTEM 'http://example.org/archive.dtd'>")]
    public void DocumentTypesAndEntitiesAreRefused(string begin)
    {
        var problem = SomeArchive.ProblemOf(begin + SomeArchive.Meta(SomeArchive.Core()), ("occurrence.txt", Row));

        Assert.StartsWith("meta.xml, line 1", problem.Where, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../occurrence.txt", "points outside")]
    [InlineData("/etc/passwd", "points outside")]
    [InlineData("C:\\occurrence.txt", "points outside")]
    [InlineData("http://example.org/occurrence.txt", "nothing is fetched")]
    [InlineData("missing.txt", "does not hold")]
    [InlineData("", "no name")]
    public void FilesOutsideTheArchiveAreRefused(string location, string reason) =>
        Assert.Contains(reason, SomeArchive.ProblemOf(SomeArchive.Meta(SomeArchive.Core(files: [location])), ("occurrence.txt", Row)).What, StringComparison.Ordinal);

    [Theory]
    [InlineData("fieldsTerminatedBy='||'", "||")]
    [InlineData("encoding='EBCDIC'", "EBCDIC")]
    [InlineData("ignoreHeaderLines='-1'", "-1")]
    [InlineData("linesTerminatedBy='END'", "several characters")]
    public void LayoutsThatCannotBeFollowedAreRefused(string layout, string reason) =>
        Assert.Contains(reason, SomeArchive.ProblemOf(SomeArchive.Meta(SomeArchive.Core(layout)), ("occurrence.txt", Row)).What, StringComparison.Ordinal);

    [Fact]
    public void AnIndexBeyondTheFileIsRefusedAndNeverShifted()
    {
        var fields = SomeArchive.UsualFields + "<field index='12' term='http://rs.tdwg.org/dwc/terms/sex'/>";
        var problem = SomeArchive.ProblemOf(SomeArchive.Meta(SomeArchive.Core("", fields)), ("occurrence.txt", Row));

        Assert.Contains("column 12", problem.What, StringComparison.Ordinal);
        Assert.Contains("which has 4 columns", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void AShortRowIsRefusedAlone()
    {
        var reading = SomeArchive.Read(SomeArchive.Meta(SomeArchive.Core()), ("occurrence.txt", Row + "a2,Fictus ruber,1998\n" + Row.Replace("a1", "a3", StringComparison.Ordinal)));

        Assert.Equal(2, reading.Records.Count);
        Assert.Contains("3 fields and the file 4", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<archive xmlns='http://rs.tdwg.org/dwc/text/'/>", "no core")]
    [InlineData("<archive><core rowType='x/Occurrence'><files/></core></archive>", "names no file")]
    [InlineData("<archive><core rowType='x/Occurrence'><files><location>occurrence.txt</location></files><field index='x' term='a'/></core></archive>", "index")]
    [InlineData("<archive><core rowType='x/Occurrence'><files><location>occurrence.txt</location></files><field index='0'/></core></archive>", "no term")]
    [InlineData("<archive><core", "no XML")]
    [InlineData("", "no XML")]
    public void ADescriptionThatCannotBeFollowedIsRefused(string meta, string reason) =>
        Assert.Contains(reason, SomeArchive.ProblemOf(meta, ("occurrence.txt", Row)).What, StringComparison.Ordinal);

    [Fact]
    public void DeepNestingIsRefused() =>
        Assert.Contains("too deeply", SomeArchive.ProblemOf(string.Concat(Enumerable.Repeat("<archive>", 1000)), ("occurrence.txt", Row)).What, StringComparison.Ordinal);

    [Fact]
    public void ALongDescriptionIsStopped() =>
        Assert.Contains("32,000,000", SomeArchive.ProblemOf("<archive>" + string.Concat(Enumerable.Repeat("<!-- a comment that says nothing at all -->", 800_000)), ("occurrence.txt", Row)).What, StringComparison.Ordinal);

    [Fact]
    public void AnArchiveWithoutRowsIsSaid() =>
        Assert.Contains("no rows", SomeArchive.ProblemOf(SomeArchive.Meta(SomeArchive.Core("ignoreHeaderLines='1'")), ("occurrence.txt", "a,b,c,d\n")).What, StringComparison.Ordinal);
}
