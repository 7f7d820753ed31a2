using System.Globalization;
using System.Text;

namespace RangeMap.Records.Tests;

public sealed class RefusalWriterTests
{
    private const string Text = "species,date,gridref,site\nFictus rubr,1998,TQ38,=1+1\nFictus ruber,1998,TQ38,fine\nFictus rubr,1999,TQ39,\"a \"\"b\"\", c\nd\"\nFictus ruber,1998\nFictus ruber,1998,TQ38,\"open\nFictus ruber,1998,TQ38,fine,extra\n";

    [Fact]
    public void RefusalsCanBeMendedAndReadAgain()
    {
        var first = Reading.Of(Text);
        Assert.Equal(5, first.Refusals.Count);
        var written = Write(first);

        var mended = Reading.Of(written.Replace("Fictus rubr,", "Fictus ruber,", StringComparison.Ordinal));

        Assert.Equal(2, mended.Records.Count);
        Assert.Equal(["=1+1", "a \"b\", c\nd"], mended.Records.Select(r => r.Site));
        Assert.Equal(3, mended.Refusals.Count);
    }

    [Fact]
    public void AMendedRowIsTheSameRecordAsIfItHadBeenRightAtOnce()
    {
        var mended = Reading.Of(Write(Reading.Of(Text)).Replace("Fictus rubr,", "Fictus ruber,", StringComparison.Ordinal));
        var right = Reading.Of("species,date,gridref,site\nFictus ruber,1998,TQ38,=1+1\n");

        Assert.Equal((right.Records[0].Key, right.Records[0].Content), (mended.Records[0].Key, mended.Records[0].Content));
    }

    [Fact]
    public void RefusingTwiceLosesNothing()
    {
        var once = Write(Reading.Of(Text));
        var twice = Reading.Of(Write(Reading.Of(once)));

        Assert.Equal(5, twice.Refusals.Count);
        Assert.Equal(once.Split("\r\n")[0], Write(twice).Split("\r\n")[0]);
    }

    [Fact]
    public void CellsThatASpreadsheetWouldRunAreGuarded()
    {
        var lines = Write(Reading.Of("species,date,gridref,site\n=cmd(),1998,TQ38,-2.5\n")).Split("\r\n");

        Assert.Equal("species,date,gridref,site,refusedLine,refusedField,refusedReason,refusedText", lines[0]);
        Assert.StartsWith("'=cmd(),1998,TQ38,-2.5,2,species,", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void HeadersAreGuardedTooAndKeepTheirNames()
    {
        var first = Reading.Of("species,date,gridref,=x\nNemo,1998,TQ38,1\n");

        Assert.StartsWith("species,date,gridref,'=x,", Write(first), StringComparison.Ordinal);
        Assert.Equal(first.Reader.Mapping.Columns, Reading.Of(Write(first)).Reader.Mapping.Columns.Take(4));
    }

    [Theory]
    [InlineData("=1", "'=1")]
    [InlineData("'=1", "''=1")]
    [InlineData("+44 1", "'+44 1")]
    [InlineData("-2.5", "-2.5")]
    [InlineData("@x", "'@x")]
    [InlineData("'t Hooft", "'t Hooft")]
    [InlineData("", "")]
    public void AGuardComesOffAgain(string cell, string guarded)
    {
        Assert.Equal(guarded, FormulaGuard.Guard(cell));
        Assert.Equal(cell, FormulaGuard.Unguard(guarded).ToString());
    }

    private static string Write(Reading reading)
    {
        var text = new StringBuilder();
        using var writer = new StringWriter(text, CultureInfo.InvariantCulture);
        var refusals = new RefusalWriter(writer, reading.Reader.Mapping.Columns, reading.Reader.Separator);
        foreach (var refusal in reading.Refusals)
            refusals.Write(refusal);
        return text.ToString();
    }
}
