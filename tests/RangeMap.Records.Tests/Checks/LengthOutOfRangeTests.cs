namespace RangeMap.Records.Tests;

/// <summary>Lengths of seven common species under letters: common practice, no source.</summary>
public sealed class LengthOutOfRangeTests
{
    [Theory]
    [InlineData("A", "worker", 11, false)]
    [InlineData("A", "worker", 17, false)]
    [InlineData("A", "worker", 17.5, false)]
    [InlineData("A", "worker", 18, true)]
    [InlineData("A", "worker", 10, true)]
    [InlineData("A", "male", 16, false)]
    [InlineData("A", "male", 17, true)]
    [InlineData("B", "queen", 20, false)]
    [InlineData("B", "queen", 22, true)]
    [InlineData("C", "queen", 22, false)]
    [InlineData("C", "worker", 17, true)]
    [InlineData("D", "worker", 10, false)]
    [InlineData("D", "worker", 16, true)]
    [InlineData("E", "queen", 18, false)]
    [InlineData("E", "queen", 19, true)]
    [InlineData("E", "male", 17, true)]
    [InlineData("F", "worker", 18, false)]
    [InlineData("F", "male", 14, true)]
    [InlineData("G", "queen", 15, false)]
    [InlineData("G", "worker", 15, true)]
    [InlineData("G", "male", 14, true)]
    public void ALengthIsComparedWithTheRangeOfItsCaste(string letter, string stage, double mm, bool found) =>
        Assert.Equal(found, (Checking.Find(Checking.Record(letter, stage, mm: mm)) & Doubts.LengthOutOfRange) != 0);

    [Theory]
    [InlineData(null, null, 18, false)]
    [InlineData(null, "female", 19, false)]
    [InlineData(null, "male", 19, true)]
    [InlineData("adult", "male", 19, true)]
    [InlineData("adult", null, 23, true)]
    [InlineData("larva", null, 30, false)]
    public void WithoutACasteTheRangesThatMayBeMeantCountTogether(string? stage, string? sex, double mm, bool found) =>
        Assert.Equal(found, (Checking.Find(Checking.Record("C", stage, sex, mm)) & Doubts.LengthOutOfRange) != 0);

    [Fact]
    public void TheWordsTellByHowMuch()
    {
        Assert.Equal(
            "25 mm is 8 mm longer than any worker of Species A in the list (11-17 mm).",
            Checking.Words(Checking.Record("A", "worker", mm: 25), Doubts.LengthOutOfRange));
        Assert.Equal(
            "9.5 mm is 1.5 mm shorter than any worker of Species A in the list (11-17 mm).",
            Checking.Words(Checking.Record("A", "worker", mm: 9.5), Doubts.LengthOutOfRange));
    }

    [Fact]
    public void ATaxonMayHaveAMarginOfItsOwn()
    {
        var wide = new Taxon("1", "Fictus ruber") { Notes = new Dictionary<string, string> { ["lengthMm"] = "11-17", ["lengthMarginMm"] = "3" } };

        Assert.Equal(Doubts.None, Checking.Find(Checking.Record("A", mm: 20) with { Taxon = wide }));
        Assert.Equal(Doubts.LengthOutOfRange, Checking.Find(Checking.Record("A", mm: 20.5) with { Taxon = wide }));
    }

    [Fact]
    public void AnAbsenceHasNoLengthAndNoSeason() =>
        Assert.Equal(Doubts.None, Checking.Find(Checking.Record("A", "worker", mm: 40, day: "2010-02-03") with { Present = false }));
}
