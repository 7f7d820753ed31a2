using System.Text;

namespace RangeMap.Records.Tests;

public sealed class ColumnMappingTests
{
    [Fact]
    public void OfficialNamesBeatPlainOnesAndEveryColumnIsReported()
    {
        var reading = Reading.OfRow("dwc:scientificName,species,EVENTDATE,date,Grid Ref,dcterms:modified", "Fictus ruber,x,1998,y,TQ38,z");

        Assert.Single(reading.Records);
        Assert.Equal(
            ["scientificName", "kept, not used", "eventDate", "kept, not used", "gridReference", "kept, not used"],
            reading.Reader.Mapping.Columns.Select(c => reading.Reader.Mapping.Report[c]));
    }

    [Fact]
    public void EveryTermIsFoundByAllItsNames()
    {
        foreach (var term in Enum.GetValues<Term>())
        {
            Assert.Equal(term, TermNames.FindOfficial(TermNames.Name(term)));
            Assert.Equal(term, TermNames.FindOfficial("dwc:" + TermNames.Name(term).ToUpperInvariant()));
            Assert.All(TermNames.PlainNamesOf(term), name => Assert.Equal(term, TermNames.FindPlain(name)));
        }
    }

    [Fact]
    public void AMappingFileIsFollowedAndWritesItselfBack()
    {
        const string json = """{"columns":{"What":"scientificName","When":"eventDate","date":null},"defaults":{"recordedBy":"A. Nobody","gridReference":"TQ38"},"dateOrder":"mdy"}""";
        var mapping = MappingFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(json)));
        using var written = new MemoryStream();
        mapping.Write(written);
        written.Position = 0;
        var again = MappingFile.Read(written);
        Assert.Equal(mapping.Columns, again.Columns);
        Assert.Equal(mapping.Defaults, again.Defaults);
        Assert.Equal(DateOrder.MonthFirst, again.DateOrder);

        var record = Assert.Single(Reading.OfRow("What,When,date", "Fictus ruber,3/6/1998,1", Reading.Options with { Mapping = again }).Records);
        Assert.Equal(("TQ38", "A. Nobody", new DateOnly(1998, 3, 6)), (record.Square.ToString(), record.Recorder, record.Dates.First));
    }

    [Fact]
    public void AMappingSettlesTwoColumnsForOneTerm()
    {
        var mapping = new MappingFile { Columns = new Dictionary<string, Term?> { ["taxon"] = Term.ScientificName, ["species"] = null } };

        Assert.Single(Reading.OfRow("species,taxon,date,gridref", "x,Fictus ruber,1998,TQ38", Reading.Options with { Mapping = mapping }).Records);
    }

    [Fact]
    public void AMappedColumnThatIsMissingIsAProblem()
    {
        var mapping = new MappingFile { Columns = new Dictionary<string, Term?> { ["Nothing"] = Term.ScientificName } };

        Assert.Contains("Nothing", Reading.ProblemOf("species,date,gridref\na,b,c\n", Reading.Options with { Mapping = mapping }).What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("[]")]
    [InlineData("{\"columns\":{\"a\":\"colour\"}}")]
    [InlineData("{\"columns\":{\"a\":3}}")]
    [InlineData("{\"columns\":{\"a\":null,\"a\":null}}")]
    [InlineData("{\"dateOrder\":\"ymd\"}")]
    [InlineData("{\"surprise\":1}")]
    [InlineData("{\"defaults\":[]}")]
    public void ABadMappingFileIsAProblemWithItsForm(string json)
    {
        var problem = Assert.Throws<ImportProblemException>(() => MappingFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(json)))).Problem;
        Assert.Contains("columns", problem.Mend, StringComparison.Ordinal);
    }
}
