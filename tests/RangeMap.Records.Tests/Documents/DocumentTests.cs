using System.Globalization;

namespace RangeMap.Records.Tests;

/// <summary>What the documents say is what the program does.</summary>
public sealed class DocumentTests
{
    [Fact]
    public void TheTableOfChecksIsTheCatalogue()
    {
        var rows = Lines("checks.md").Select(line => line.Split('|', StringSplitOptions.TrimEntries)).Where(cells => cells.Length > 3 && DoubtCatalogue.Find(cells[1]) is not null);

        Assert.Equal(
            DoubtCatalogue.All.Select(e => (e.Code, e.Weight.ToString(CultureInfo.InvariantCulture))).Order(),
            rows.Select(cells => (cells[1], cells[2])).Order());
    }

    [Fact]
    public void EveryColumnOfMarksIsDescribed() =>
        Assert.Empty(TaxonMarksText.Columns.Except(Lines("taxon-list.md").Select(line => line.Split('|', StringSplitOptions.TrimEntries)).Where(c => c.Length > 1).Select(c => c[1])));

    [Theory]
    [InlineData(TaxonMarksText.Season)]
    [InlineData(TaxonMarksText.LengthMm)]
    [InlineData(TaxonMarksText.Stages)]
    [InlineData(TaxonMarksText.KnownArea)]
    [InlineData(TaxonMarksText.Evidence)]
    [InlineData(TaxonMarksText.AreaMarginKm)]
    public void TheExamplesOfTheTaxonListAreUnderstood(string column)
    {
        var example = Lines("taxon-list.md").Select(line => line.Split('|', StringSplitOptions.TrimEntries)).First(cells => cells.Length > 3 && cells[1] == column)[3].Trim('`');
        var marks = TaxonMarksText.Read(new Dictionary<string, string> { [column] = example }, out var fault);

        Assert.Null(fault);
        Assert.Equal(example, TaxonMarksText.Write(marks)[column]);
    }

    private static string[] Lines(string document) => File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Documents", document));
}
