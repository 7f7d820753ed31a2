using System.Text;

namespace RangeMap.Records.Tests;

/// <summary>One bad file for each way in which a file can be bad.</summary>
public sealed class BadFileTests
{
    private const string Header = "species,date,gridref";

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    [InlineData("\r\n\n")]
    public void AnEmptyFileIsRefusedWithAReason(string text) => Assert.Contains("empty", Reading.ProblemOf(text).What, StringComparison.Ordinal);

    [Fact]
    public void AHeaderWithoutRowsIsRefusedWithAReason() => Assert.Contains("no rows", Reading.ProblemOf(Header + "\n\n").What, StringComparison.Ordinal);

    [Fact]
    public void AFileWithoutUsableColumnsIsRefusedAndItsColumnsAreListed()
    {
        var problem = Reading.ProblemOf("colour,weight\nred,3\n");

        Assert.Contains("a taxon", problem.What, StringComparison.Ordinal);
        Assert.Contains("a date", problem.What, StringComparison.Ordinal);
        Assert.Contains("a place", problem.What, StringComparison.Ordinal);
        Assert.Contains("colour, weight", problem.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void RepeatedHeadersAreRefused() => Assert.Contains("\"Date\"", Reading.ProblemOf("species,Date,date,gridref\nFictus ruber,1998,1998,TQ38\n").What, StringComparison.Ordinal);

    [Fact]
    public void AFieldOfAGigabyteIsRefusedAndReadingGoesOn()
    {
        using var stream = new GeneratedStream($"{Header}\nFictus ruber,1998,TQ38\n", 'x', 1_000_000_000, "\nFictus albus,1999,TQ39\n");
        var before = GC.GetAllocatedBytesForCurrentThread();
        var reading = Reading.Of(stream);

        Assert.Equal([1L, 3L], reading.Records.Select(r => r.Row));
        var refusal = Assert.Single(reading.Refusals);
        Assert.Equal((2, 3), (refusal.Row, refusal.Line));
        Assert.Contains("longer than", refusal.Reason, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 50_000_000);
    }

    [Fact]
    public void AHundredMegabytesInAnUnclosedQuoteAreRefused()
    {
        using var stream = new GeneratedStream($"{Header}\nFictus ruber,1998,TQ38\n\"", 'x', 100_000_000, "");
        var reading = Reading.Of(stream);

        Assert.Single(reading.Records);
        Assert.Equal(3, Assert.Single(reading.Refusals).Line);
    }

    [Fact]
    public void AHeaderOfAHundredMegabytesIsAProblem()
    {
        using var stream = new GeneratedStream("species,", 'x', 100_000_000, "\na,b\n");

        Assert.Contains("longer than", Reading.ProblemOf(stream).What, StringComparison.Ordinal);
    }

    [Fact]
    public void ARowOfTooManyFieldsIsRefusedAndReadingGoesOn()
    {
        var reading = Reading.Of($"{Header}\n{new string(',', 20_000)}x\nFictus ruber,1998,TQ38\n");

        Assert.Single(reading.Records);
        Assert.Contains("more than 10000 fields", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void AHeaderOfTenThousandColumnsIsReadAndOneMoreIsAProblem()
    {
        static string Columns(int count) => string.Concat(Enumerable.Range(4, count - 3).Select(i => $",c{i}"));

        Assert.Single(Reading.Of($"{Header}{Columns(10_000)}\nFictus ruber,1998,TQ38{new string(',', 9_997)}\n").Records);
        var problem = Reading.ProblemOf($"{Header}{Columns(10_001)}\nFictus ruber,1998,TQ38{new string(',', 9_998)}\n");
        Assert.Contains("more than 10000 fields", problem.What, StringComparison.Ordinal);
        Assert.Equal("header", problem.Where);
    }

    [Fact]
    public void ARowWithNulCharactersIsRefused()
    {
        var reading = Reading.Of($"{Header}\nFictus ruber,1998,TQ38\nFictus\0ruber,1998,TQ38\nFictus ruber,1998,TQ38\n");

        Assert.Equal(2, reading.Records.Count);
        Assert.Contains("NUL", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void AnUnclosedQuoteCostsOneLineAndNamesIt()
    {
        var reading = Reading.Of($"{Header},site\nFictus ruber,1998,TQ38,\"a\nb\"\nFictus ruber,1998,TQ38,\"open\nFictus ruber,1999,TQ39,\nFictus ruber,2000,TQ39,\n");

        Assert.Equal([1L, 3L, 4L], reading.Records.Select(r => r.Row));
        var refusal = Assert.Single(reading.Refusals);
        Assert.Equal(4, refusal.Line);
        Assert.Contains("line 4", refusal.Reason, StringComparison.Ordinal);
        Assert.Equal("Fictus ruber,1998,TQ38,\"open", refusal.RawText);
    }

    [Fact]
    public void AnUnclosedQuoteIsGivenUpAfterAThousandLines()
    {
        var good = string.Concat(Enumerable.Repeat("Fictus ruber,1999,TQ39\n", 3000));
        var reading = Reading.Of($"{Header}\n\"Fictus ruber,1998,TQ38\n{good}");

        Assert.Equal(3000, reading.Records.Count);
        Assert.Contains("within 1000 lines", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void TextAfterAClosingQuoteCostsOneLine()
    {
        var reading = Reading.Of($"{Header},site\nFictus ruber,1998,TQ38,\"a\" b\nFictus ruber,1999,TQ39,5\" pot\n");

        Assert.Equal("5\" pot", Assert.Single(reading.Records).Site);
        Assert.Contains("closing quotation mark", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void RaggedRowsAreRefusedWithBothCounts()
    {
        var reading = Reading.Of($"{Header}\nFictus ruber,1998\nFictus ruber,1998,TQ38,more\n");

        Assert.Empty(reading.Records);
        Assert.Contains("2 fields and the header 3", reading.Refusals[0].Reason, StringComparison.Ordinal);
        Assert.Contains("4 fields and the header 3", reading.Refusals[1].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownSpeciesAreRefusedWithTheNearestNames()
    {
        var refusal = Assert.Single(Reading.OfRow(Header, "Fictus rubr,1998,TQ38").Refusals);

        Assert.Equal("species", refusal.Field);
        Assert.Equal("Fictus rubr", refusal.Value);
        Assert.Contains("Fictus ruber", refusal.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("XX38")]
    [InlineData("TQ3")]
    [InlineData("nowhere")]
    public void GridReferencesOutsideTheGridAreRefused(string reference)
    {
        var refusal = Assert.Single(Reading.OfRow(Header, $"Fictus ruber,1998,{reference}").Refusals);

        Assert.Equal(("gridref", reference), (refusal.Field, refusal.Value));
        Assert.NotEmpty(refusal.Reason);
    }

    [Fact]
    public void AStreamThatIsNoTextIsRefused() =>
        Assert.Contains("not a text file", Reading.ProblemOf(new MemoryStream([0x7F, 0x45, 0x4C, 0x46, 2, 1, 7, 0, 0, 9, 200, 1])).What, StringComparison.Ordinal);

    [Fact]
    public void TwoPlainColumnsForOneTermAreRefusedWithTheMend()
    {
        var problem = Reading.ProblemOf("species,taxon,date,gridref\na,b,1998,TQ38\n");

        Assert.Contains("species", problem.What, StringComparison.Ordinal);
        Assert.Contains("mapping file", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AMissingTaxonListIsSaid() =>
        Assert.Contains("No taxon list", Assert.Single(Reading.Of($"{Header}\nFictus ruber,1998,TQ38\n", taxa: TaxonList.Empty).Refusals).Reason, StringComparison.Ordinal);

    [Fact]
    public void EveryRefusalOfAMixedFileNamesLineFieldAndReason()
    {
        var text = new StringBuilder(Header).Append('\n');
        string[] rows = ["Fictus ruber,2050-01-01,TQ38", "Fictus ruber,1998-02-31,TQ38", "Nemo ignotus,1998,TQ38", "Fictus ruber,1998,ZZ99"];
        text.AppendJoin('\n', rows);
        var refusals = Reading.Of(text.ToString()).Refusals;

        Assert.Equal([2L, 3L, 4L, 5L], refusals.Select(r => r.Line));
        Assert.Equal(["date", "date", "species", "gridref"], refusals.Select(r => r.Field));
        Assert.Equal(rows, refusals.Select(r => r.RawText));
        Assert.All(refusals, r => Assert.NotEmpty(r.Reason));
    }
}
