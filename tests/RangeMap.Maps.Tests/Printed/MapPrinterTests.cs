using System.Globalization;
using System.Text;
using System.Xml.Linq;
using RangeMap.Grids;
using SkiaSharp;

namespace RangeMap.Maps.Tests.Printed;

public class MapPrinterTests
{
    public static TheoryData<PrintSize, PrintInk> Papers => new() { { PrintSize.Page, PrintInk.Colour }, { PrintSize.Page, PrintInk.Black }, { PrintSize.Column, PrintInk.Colour }, { PrintSize.Column, PrintInk.Black } };

    [Theory]
    [MemberData(nameof(Papers))]
    public void TheSameMapGivesTheSameBytesInEveryFormat(PrintSize size, PrintInk ink)
    {
        foreach (var format in Enum.GetValues<PrintFormat>())
            Assert.Equal(SomePrint.Print(format, size, ink), SomePrint.Print(format, size, ink));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void SvgHasAShapeForEverySquareAndItsNameAsATip(PrintSize size, PrintInk ink)
    {
        var svg = Svg(SomePrint.Print(PrintFormat.Svg, size, ink));
        var squares = Groups(svg, "squares-").SelectMany(group => group.Elements().Where(element => element.Name.LocalName == "path")).ToList();
        Assert.Equal(
            SomePrint.Map().Squares.Select(square => square.Square.ToString()).Order(StringComparer.Ordinal),
            squares.Select(square => square.Elements().Single().Value).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void SvgKeepsTextAsTextWithItsFont()
    {
        var svg = Svg(SomePrint.Print(PrintFormat.Svg));
        var texts = svg.Descendants().Where(element => element.Name.LocalName == "text").ToList();
        Assert.Equal("italic", (string?)texts.Single(text => text.Value == "Inventa nova").Attribute("font-style"));
        Assert.Null(texts.Single(text => text.Value == "agg.").Attribute("font-style"));
        foreach (var words in (string[])["invented <bee> & fly", "Squares of 10 km by year", "1990", "An invented scheme, edition 7 of 3 May 2026.", "Shetland", "Channel Islands", "100 km", "NY", "NZ"])
            Assert.Contains(texts, text => text.Value == words);
        Assert.Equal(3, svg.Descendants().Single(element => element.Name.LocalName == "style").Value.Split("data:font/woff2;base64,").Length - 1);
        Assert.Equal("en-GB", (string?)svg.Attribute(XNamespace.Xml + "lang"));
    }

    [Fact]
    public void SvgNamesNoGroupTwice()
    {
        var names = Svg(SomePrint.Print(PrintFormat.Svg)).Descendants().Select(element => (string?)element.Attribute("id")).OfType<string>().ToList();
        Assert.Equal(names.Distinct(), names);
    }

    [Fact]
    public void InTheLegendStandsWhatIsDrawn()
    {
        var map = SomePrint.Map();
        var texts = Svg(SomePrint.Print(PrintFormat.Svg)).Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value).ToList();
        // The newest first; three classes of three squares, and their sum.
        var years = texts.Where(text => map.Classes.Any(part => part.Label == text)).ToList();
        Assert.Equal(["1992", "1991", "1990"], years.Where((_, i) => i >= years.Count - 3));
        Assert.Equal(3, texts.Count(text => text == "3"));
        Assert.Contains("9", texts);
    }

    [Fact]
    public void APictureHasTheColourOfItsClassWhereASquareIs()
    {
        var map = SomePrint.Map();
        using var picture = SKBitmap.Decode(SomePrint.Print(PrintFormat.Png));
        // A4 at 200 dots to the inch.
        Assert.Equal((1654, 2339), (picture.Width, picture.Height));
        var sheet = new MapSheet(map, PrintSize.Page, PrintInk.Colour);
        foreach (var square in map.Squares.Where(square => square.Square.ToString() != "NZ27"))
        {
            var frame = sheet.Frames.First(frame => frame.Shows(square.Square));
            // A little off the middle, where no letter or line stands.
            var side = square.Square.SideMetres;
            var place = NationalGrid.Get(square.Square.Grid).ToLatLon(new(square.Square.Easting + side * 0.5, square.Square.Northing + side * 0.5));
            var at = frame.On(frame.Plane.FromLatLon(place));
            var pixel = picture.GetPixel((int)(at.X / 25.4 * 200), (int)(at.Y / 25.4 * 200));
            var wanted = SKColor.Parse(map.Classes[square.Class].Mark.Colour);
            Assert.True(pixel == wanted, $"{square.Square}: {pixel}, not {wanted}");
        }
    }

    [Fact]
    public void AColumnIsNinetyMillimetresWide()
    {
        using var picture = SKBitmap.Decode(SomePrint.Print(PrintFormat.Png, PrintSize.Column));
        Assert.Equal((int)Math.Round(90 / 25.4 * 300), picture.Width);
        Assert.Equal("90mm", (string?)Svg(SomePrint.Print(PrintFormat.Svg, PrintSize.Column)).Attribute("width"));
    }

    [Fact]
    public void BlackInkUsesNoColourButThePaper()
    {
        var svg = Svg(SomePrint.Print(PrintFormat.Svg, ink: PrintInk.Black));
        var colours = svg.Descendants().SelectMany(element => (string?[])[(string?)element.Attribute("fill"), (string?)element.Attribute("stroke")]).OfType<string>().Distinct();
        Assert.All(colours.Where(colour => colour != "none"), colour => Assert.Single(colour[1..].Chunk(2).Select(part => new string(part)).Distinct()));
        Assert.All(Groups(svg, "squares-"), group => Assert.Equal("#000000", (string?)group.Attribute("fill")));
    }

    [Fact]
    public void AnotherReaderFindsTheWordsOfThePdf()
    {
        var text = OtherReader.Of("pdftotext", SomePrint.Print(PrintFormat.Pdf));
        foreach (var words in (string[])["Inventa nova agg.", "invented <bee> & fly", "Squares of 10 km by year", "9 records in 9 squares.", "An invented scheme, edition 7 of 3 May 2026.", "Shetland"])
            Assert.Contains(words, text, StringComparison.Ordinal);
        // Halos are outlines: no letter stands twice.
        Assert.Equal(1, text.Split("Shetland").Length - 1);
    }

    [Fact]
    public void AnotherReaderFindsThePropertiesOfThePdf()
    {
        var told = OtherReader.Of("pdfinfo", SomePrint.Print(PrintFormat.Pdf));
        foreach (var words in (string[])["Inventa nova agg. (invented <bee> & fly). Squares of 10 km by year", "An invented scheme", "RangeMap", "2026", "A4"])
            Assert.Contains(words, told, StringComparison.Ordinal);
        Assert.Equal(3, OtherReader.Of("pdffonts", SomePrint.Print(PrintFormat.Pdf)).Split('\n').Count(line => line.Contains("+NotoSans-", StringComparison.Ordinal) && line.Contains("yes yes yes", StringComparison.Ordinal)));
    }

    [Fact]
    public void ThePdfTellsItsLanguageInAnUpdateThatPointsToItself()
    {
        // ISO 32000-1, 7.5.5 and 7.5.6: the last startxref gives the place of the last table, whose entries give the places of objects.
        var text = Encoding.Latin1.GetString(SomePrint.Print(PrintFormat.Pdf));
        var table = int.Parse(text[(text.LastIndexOf("startxref\n", StringComparison.Ordinal) + 10)..].Split('\n')[0], CultureInfo.InvariantCulture);
        var lines = text[table..].Split('\n');
        Assert.Equal("xref", lines[0]);
        var root = int.Parse(lines[3].Split(' ')[0], CultureInfo.InvariantCulture);
        var place = int.Parse(lines[4][..10], CultureInfo.InvariantCulture);
        Assert.StartsWith($"{root} 0 obj\n<</Lang (en-GB)\n/Type /Catalog", text[place..], StringComparison.Ordinal);
        Assert.Equal(20, lines[4].Length + 1);
    }

    [Fact]
    public void NamesOfAnyLengthAndSignsThatXmlCannotHoldArePrinted()
    {
        var map = SomePrint.Map() with { Name = [new(string.Join(' ', Enumerable.Repeat("Inventissimalonga", 20)), true)], VernacularName = "bell \u0007 lone \ud83d end" + new string('w', 400) };
        foreach (var format in Enum.GetValues<PrintFormat>())
            Assert.NotEmpty(SomePrint.Print(format, PrintSize.Column, map: map));
        Assert.Contains("bell  lone", Svg(SomePrint.Print(PrintFormat.Svg, map: map)).Value, StringComparison.Ordinal);
        Assert.All(TextBlock.OfName(map.Name, 12, 86).Lines, line => Assert.True(line.Sum(piece => MapFonts.WidthMm(piece.Text, piece.Face, 12 * 0.75)) <= 86.001));
    }

    [Fact]
    public void AFrontIsALineWithItsYearUponIt()
    {
        var svg = Svg(SomePrint.Print(PrintFormat.Svg));
        Assert.Single(Groups(svg, "front").Single(group => (string?)group.Attribute("id") == "front").Elements());
        var year = svg.Descendants().Single(element => element.Name.LocalName == "text" && element.Value == "1991" && (string?)element.Attribute("text-anchor") == "middle");
        // Halfway along the line lies a point of the sea east of the middle of the paper.
        Assert.InRange(double.Parse((string)year.Attribute("x")!, CultureInfo.InvariantCulture), 100, 180);
    }

    [Fact]
    public void AMapWithoutSquaresIsStillAMap()
    {
        var map = SomePrint.Map() with { Squares = [], Fronts = [], Classes = [] };
        Assert.Empty(Groups(Svg(SomePrint.Print(PrintFormat.Svg, map: map)), "squares-"));
    }

    [Fact]
    public void SmallSquaresAreDrawnLargerAndTheLegendSaysSo()
    {
        var map = SomePrint.Map(side: SquareSize.M100) with { Squares = [new(new(GridId.British, SquareSize.M100, 425_600, 563_400), 0)] };
        Assert.Contains("drawn larger", Svg(SomePrint.Print(PrintFormat.Svg, map: map)).Value, StringComparison.Ordinal);
        Assert.DoesNotContain("drawn larger", Svg(SomePrint.Print(PrintFormat.Svg)).Value, StringComparison.Ordinal);
    }

    private static XElement Svg(byte[] file) => XDocument.Load(new MemoryStream(file)).Root!;

    private static IEnumerable<XElement> Groups(XElement svg, string start) =>
        svg.Descendants().Where(element => element.Name.LocalName == "g" && ((string?)element.Attribute("id"))?.StartsWith(start, StringComparison.Ordinal) == true);
}
