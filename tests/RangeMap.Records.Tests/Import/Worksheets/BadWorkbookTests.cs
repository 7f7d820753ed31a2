namespace RangeMap.Records.Tests;

/// <summary>One bad workbook for each way in which a workbook can be bad.</summary>
public sealed class BadWorkbookTests
{
    private static readonly string Header = SomeWorkbook.Row(1, "species", "date", "gridref");

    // 1 KB that makes a reader which believes it allocate gigabytes.
    [Theory]
    [InlineData("<row r='999999999'><c r='A999999999'><v>1</v></c></row>", "rows 1 to 1,048,576")]
    [InlineData("<row r='2'><c r='ZZZZZ2'><v>1</v></c></row>", "columns A to XFD")]
    [InlineData("<row r='2'><c r='2'><v>1</v></c></row>", "columns A to XFD")]
    [InlineData("<row r='2'><c t='s'><v>7</v></c></row>", "A2 refers to a text")]
    [InlineData("<row r='2'><c t='s'><v>7</c></row>", "no XML")]
    public void ASheetThatLiesIsDamaged(string rows, string reason)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var problem = Reading.ProblemOf(SomeWorkbook.Of(Header + SomeWorkbook.Row(2, "Fictus ruber", "1998", "TQ38") + rows).ToStream());

        Assert.Contains(reason, problem.What, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Fact]
    public void DocumentTypesAreRefused()
    {
        var parts = SomeWorkbook.Of(Header).Parts().Select(p => p.Name == "xl/workbook.xml" ? (p.Name, "<!DOCTYPE workbook [<!ENTITY a 'aaaa'>]>" + p.Content) : p);
        var problem = Reading.ProblemOf(SomeZip.Of([.. parts]));

        Assert.Contains("xl/workbook.xml", problem.Where, StringComparison.Ordinal);
        Assert.Contains("DTD", problem.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("xl/vbaProject.bin", "macros")]
    [InlineData("xl/workbook.bin", "binary")]
    public void OtherKindsOfWorkbookAreRefused(string part, string reason)
    {
        var problem = Reading.ProblemOf(SomeZip.Of([.. SomeWorkbook.Of(Header).Parts(), (part, "x")]));

        Assert.Contains(reason, problem.What, StringComparison.Ordinal);
        Assert.Contains("CSV", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void AnOldOrProtectedWorkbookIsRefused() =>
        Assert.Contains("password", Reading.ProblemOf(new MemoryStream([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, 0, 0])).What, StringComparison.Ordinal);

    [Fact]
    public void AnOpenDocumentIsRefused() =>
        Assert.Contains("OpenDocument", Reading.ProblemOf(SomeZip.Of(("mimetype", "x"), ("content.xml", "<a/>"))).What, StringComparison.Ordinal);

    [Fact]
    public void AMissingSheetIsSaid()
    {
        var parts = SomeWorkbook.Of(Header).Parts().Where(p => !p.Name.Contains("sheet1", StringComparison.Ordinal));

        Assert.Contains("No sheet", Reading.ProblemOf(SomeZip.Of([.. parts])).What, StringComparison.Ordinal);
    }

    [Fact]
    public void SharedTextsBeyondTheLimitAreRefused()
    {
        var book = SomeWorkbook.Of(Header) with { SharedTexts = "<si><t>0123456789</t></si><si><t>0123456789</t></si>" };
        var problem = Reading.ProblemOf(book.ToStream(), Reading.Options with { Limits = FileLimits.Default with { SharedCharacters = 15 } });

        Assert.Contains("text 2", problem.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void ASheetOfMoreThanTenThousandColumnsIsRefused()
    {
        var header = $"<row r='1'><c t='inlineStr'><is><t>species</t></is></c><c t='inlineStr'><is><t>date</t></is></c><c r='XFD1' t='inlineStr'><is><t>gridref</t></is></c></row>";

        Assert.Contains("16,384 columns", Reading.ProblemOf(SomeWorkbook.Of(header + header).ToStream()).What, StringComparison.Ordinal);
    }

    [Fact]
    public void ACellOfTwentyMegabytesIsRefused()
    {
        var book = SomeWorkbook.Of(Header + SomeWorkbook.Row(2, "Fictus ruber", "1998", new string('x', 20_000_000)));

        Assert.Contains("16,000,000", Reading.ProblemOf(book.ToStream()).What, StringComparison.Ordinal);
    }

    [Fact]
    public void ARowThatIsTooLongIsRefusedAndReadingGoesOn()
    {
        var book = SomeWorkbook.Of(Header + SomeWorkbook.Row(2, "Fictus ruber", "1998", new string('x', 2_000_000)) + SomeWorkbook.Row(3, "Fictus ruber", "1998", "TQ38"));
        var reading = Reading.Of(book.ToStream());

        Assert.Contains("longer than", Assert.Single(reading.Refusals).Reason, StringComparison.Ordinal);
        Assert.Single(reading.Records);
    }

    [Fact]
    public void ATextDayAndAnErrorAreSaidWithTheirCells()
    {
        var reading = Reading.Of(SomeWorkbook.Of(Header + SomeWorkbook.Row(2, "Fictus ruber", "<c r='B2' t='e'><v>#REF!</v></c>", "<c><f>A1</f></c>")).ToStream());

        Assert.Equal("date", Assert.Single(reading.Refusals).Field);
        Assert.Contains(reading.Reader.Notes, n => n.Contains("B2", StringComparison.Ordinal));
        Assert.Contains(reading.Reader.Notes, n => n.Contains("C2", StringComparison.Ordinal));
    }

    // A merged heading stands in its first cell alone.
    [Fact]
    public void MergedAndEmptyHeadingsAreNumbered()
    {
        var rows = SomeWorkbook.Row(5, "species", "date", "", "gridref", "", "") + SomeWorkbook.Row(6, "Fictus ruber", "1998", "about noon", "TQ38");
        var reading = Reading.Of(SomeWorkbook.Of(rows).ToStream());

        Assert.Equal(["species", "date", "(column 3)", "gridref"], reading.Reader.Mapping.Columns);
        Assert.Single(reading.Records);
    }

    [Fact]
    public void NumericDatesInTextCellsNeedAProofOfTheirOrderToo()
    {
        var rows = Header + SomeWorkbook.Row(2, "Fictus ruber", "3/6/1998", "TQ38");

        Assert.Contains("3/6/1998", Reading.ProblemOf(SomeWorkbook.Of(rows).ToStream()).What, StringComparison.Ordinal);
        var proved = Reading.Of(SomeWorkbook.Of(rows + SomeWorkbook.Row(3, "Fictus ruber", "25/6/1998", "TQ38")).ToStream());
        Assert.Equal(new DateOnly(1998, 6, 3), proved.Records[0].Dates.First);
    }
}
