using System.Text;
using ExcelDataReader;

namespace RangeMap.Records.Tests;

public sealed class WorkbookTests
{
    // What make.py beside the workbooks put into the cells; the formula has no stored result where openpyxl wrote it.
    [Theory]
    [InlineData("openpyxl.xlsx", "")]
    [InlineData("gnumeric.xlsx", "2")]
    [InlineData("xlsxwriter-1904.xlsx", "2")]
    public void WorkbooksOfThreeWritersSayTheSame(string name, string formulaResult)
    {
        var (texts, reading) = ReadFixture(name);

        Assert.Equal(
            [
                "Fictus ruber,1998-06-03,TQ308801,3,0.3,TRUE",
                $"Fictus albus,2001-12-25T08:40,TQ38,100000,0.00001,{formulaResult}",
                $"Fictus ruber,{(name.Contains("1904", StringComparison.Ordinal) ? 36526 - 1462 : 36526)},SP10,0,123456.789,",
                "Fictus albus,June 1998,SP11,12,1000000000000000,\"A \"\"quoted\"\", text\"",
            ],
            texts);
        Assert.Equal(
            [DayRange.Day(new(1998, 6, 3)), DayRange.Day(new(2001, 12, 25)), DayRange.Day(new(2000, 1, 1)), DayRange.Month(1998, 6)],
            reading.Records.Select(r => r.Dates));
        Assert.Contains(reading.Reader.Notes, n => n.Contains("\"Records\"", StringComparison.Ordinal));
        Assert.Contains(reading.Reader.Notes, n => n.Contains("#N/A", StringComparison.Ordinal));
        Assert.Contains(reading.Reader.Notes, n => n.StartsWith("1 dates were plain numbers", StringComparison.Ordinal));
        Assert.Equal((FileKind.Worksheet, "Records"), (reading.Reader.File.Kind, reading.Reader.File.Sheet));
    }

    // ExcelDataReader is an independent reader of workbooks; it gives numbers, days and texts as objects.
    [Theory]
    [InlineData("openpyxl.xlsx", 1, 2)]
    [InlineData("gnumeric.xlsx", 1, 2)]
    [InlineData("xlsxwriter-1904.xlsx", 0, 0)]
    public void CellsAreReadAsAnIndependentReaderReadsThem(string name, int sheet, int rowsBefore)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var file = File.OpenRead(Fixture(name));
        using var peer = ExcelReaderFactory.CreateReader(file);
        for (var i = 0; i < sheet; i++)
            peer.NextResult();
        for (var i = 0; i < rowsBefore + 1; i++)
            peer.Read();
        var rows = new List<string>();
        while (peer.Read())
            rows.Add(string.Join(',', Enumerable.Range(0, 6).Select(c => Text(peer.GetValue(c)))));

        Assert.Equal(rows, ReadFixture(name).Texts);
    }

    [Fact]
    public void LinesAreTheRowsOfTheSheet() => Assert.Equal([4L, 5L, 6L, 7L], ReadLines("openpyxl.xlsx"));

    [Fact]
    public void TheFirstVisibleSheetWithAHeaderIsReadUnlessAnotherIsNamed()
    {
        var header = SomeWorkbook.Row(1, "species", "date", "gridref");
        var book = new SomeWorkbook
        {
            Sheets =
            [
                ("Old", "hidden", header + SomeWorkbook.Row(2, "Fictus ruber", "1990", "TQ38")),
                ("About", "visible", SomeWorkbook.Row(1, "An invented list")),
                ("Data", "visible", header + SomeWorkbook.Row(2, "Fictus ruber", "1998", "TQ38")),
            ],
        };

        Assert.Equal(1998, Assert.Single(Reading.Of(book.ToStream()).Records).Dates.First.Year);
        Assert.Equal(1990, Assert.Single(Reading.Of(book.ToStream(), Reading.Options with { Sheet = "old" }).Records).Dates.First.Year);
        var problem = Reading.ProblemOf(book.ToStream(), Reading.Options with { Sheet = "New" });
        Assert.Contains("Old (hidden), About, Data", problem.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void RowsRefusedFromASheetCanBeMendedAsCsv()
    {
        var rows = SomeWorkbook.Row(3, "species", "date", "gridref") + SomeWorkbook.Row(7, "Fictus ruber", "12, May", "TQ38") + SomeWorkbook.Row(9, "Fictus ruber", "1998", "TQ38", "", "more");
        var reading = Reading.Of(SomeWorkbook.Of(rows).ToStream());

        Assert.Equal([7L, 9L], reading.Refusals.Select(r => r.Line));
        Assert.Equal("Fictus ruber,\"12, May\",TQ38", reading.Refusals[0].RawText);
        Assert.Contains("5 fields and the header 3", reading.Refusals[1].Reason, StringComparison.Ordinal);
        var writer = new StringWriter();
        new RefusalWriter(writer, reading.Reader.Mapping.Columns, reading.Reader.Separator).Write(reading.Refusals[0]);
        Assert.Equal(["species", "date", "gridref"], Reading.Of(writer.ToString().Replace("12, May", "May 1998", StringComparison.Ordinal)).Reader.Mapping.Columns.Take(3));
    }

    [Fact]
    public void RichTextPhoneticGuidesAndEscapesAreRead()
    {
        var book = SomeWorkbook.Of(
            SomeWorkbook.Row(1, "species", "date", "gridref", "site")
            + SomeWorkbook.Row(2, "Fictus ruber", "1998", "TQ38", "<c t='s'><v>0</v></c>") + SomeWorkbook.Row(3, "Fictus ruber", "1998", "TQ38", "<c t='s'><v>1</v></c>")) with
        {
            SharedTexts = "<si><r><t>The </t></r><r><rPr><b/></rPr><t xml:space='preserve'>old mill</t></r><rPh sb='0' eb='1'><t>no</t></rPh></si><si><t>a_x000A_b_x005F_c</t></si>",
        };

        Assert.Equal(["The old mill", "a\nb_c"], Reading.Of(book.ToStream()).Records.Select(r => r.Site));
    }

    // The day counts are those of ECMA-376 part 1, 18.17.4.1: serial 60 is 29 February 1900, which never was.
    [Theory]
    [InlineData(false, "59", "1900-02-28")]
    [InlineData(false, "60", "60")]
    [InlineData(false, "61", "1900-03-01")]
    [InlineData(false, "36526.99999999", "2000-01-02")]
    [InlineData(false, "36526.25", "2000-01-01T06:00")]
    [InlineData(true, "0", "1904-01-01")]
    [InlineData(true, "35064", "2000-01-01")]
    public void NumbersInDateFormatAreDays(bool since1904, string number, string text) =>
        Assert.Equal(text, CellNumber.Day(double.Parse(number, System.Globalization.CultureInfo.InvariantCulture), since1904 ? DayCount.Since1904 : DayCount.Since1900));

    // Format codes after ECMA-376 part 1, 18.8.31.
    [Theory]
    [InlineData("dd/mm/yyyy", CellFormat.Day)]
    [InlineData("[$-809]dd mmmm yyyy;@", CellFormat.Day)]
    [InlineData("mmm-yy", CellFormat.Day)]
    [InlineData("h:mm", CellFormat.Time)]
    [InlineData("mm:ss.0", CellFormat.Time)]
    [InlineData("[h]:mm:ss", CellFormat.Time)]
    [InlineData("yyyy-mm-dd hh:mm", CellFormat.Day)]
    [InlineData("General", CellFormat.Number)]
    [InlineData("#,##0.00", CellFormat.Number)]
    [InlineData("0.00E+00", CellFormat.Number)]
    [InlineData("[Red]0", CellFormat.Number)]
    [InlineData("0 \"days\"", CellFormat.Number)]
    [InlineData(@"0\d", CellFormat.Number)]
    internal void FormatCodesTellDaysFromNumbers(string code, CellFormat format) => Assert.Equal(format, CellFormatTable.OfCode(code));

    private static string Text(object? value) => value switch
    {
        null => "",
        double number => CellNumber.Plain(number),
        DateTime moment => moment.ToString(moment.TimeOfDay == default ? "yyyy-MM-dd" : "yyyy-MM-ddTHH:mm", null),
        bool truth => truth ? "TRUE" : "FALSE",
        string text when text.AsSpan().IndexOfAny(",\"") >= 0 => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"",
        _ => value.ToString()!,
    };

    private static string Fixture(string name) => Path.Combine(AppContext.BaseDirectory, "workbooks", name);

    private static (List<string> Texts, Reading Reading) ReadFixture(string name)
    {
        var texts = new List<string>();
        using var file = File.OpenRead(Fixture(name));
        using var reader = RecordReader.Open(file, Reading.Taxa, Reading.Options);
        while (reader.Read())
            texts.Add(reader.RawText.ToString());
        file.Position = 0;
        return (texts, Reading.Of(file));
    }

    private static List<long> ReadLines(string name)
    {
        var lines = new List<long>();
        using var file = File.OpenRead(Fixture(name));
        using var reader = RecordReader.Open(file, Reading.Taxa, Reading.Options);
        while (reader.Read())
            lines.Add(reader.Line);
        return lines;
    }
}
