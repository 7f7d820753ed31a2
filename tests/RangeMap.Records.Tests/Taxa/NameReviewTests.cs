namespace RangeMap.Records.Tests;

public sealed class NameReviewTests
{
    private const string Header = "species,date,gridref";

    private static readonly TaxonList List = new(
        [
            new("1", "Fictus ruber") { AggregateId = "9" },
            new("2", "Fictus albus") { AggregateId = "9", VernacularName = "White Fictus" },
            new("3", "Confictus agrestis"),
            new("9", "Fictus ruber agg.") { Rank = "aggregate", AggregateId = "10" },
            new("10", "Fictus") { Rank = "aggregate" },
            new("11", "Fictus tertius") { AggregateId = "10" },
        ],
        [new("4", "Fictus sanguineus", "1")]);

    [Theory]
    [InlineData("Fictus rubber", "Fictus ruber")]
    [InlineData("Fitcus ruber", "Fictus ruber")]
    [InlineData("F. ruber", "Fictus ruber")]
    [InlineData("F ruber", "Fictus ruber")]
    [InlineData("Fict. rubre", "Fictus ruber")]
    [InlineData("Fictus rubra", "Fictus ruber")]
    [InlineData("Fictus album", "Fictus albus")]
    [InlineData("Confictus agreste", "Confictus agrestis")]
    [InlineData("Fictus sanguinea", "Fictus sanguineus")]
    [InlineData("Whyte Fictus", "White Fictus")]
    [InlineData("C. agrestis cf.", "Confictus agrestis")]
    public void TheClosestNameIsSuggestedFirst(string written, string suggested) => Assert.Equal(suggested, List.Suggest(written)[0].Name);

    [Theory]
    [InlineData("Something else altogether")]
    [InlineData("X. ruber")]
    [InlineData("")]
    public void WhatIsFarFromEveryNameHasNoSuggestion(string written) => Assert.Empty(List.Suggest(written));

    [Fact]
    public void AtMostThreeTaxaAreSuggestedEachOnce()
    {
        var many = new TaxonList(Enumerable.Range(0, 9).Select(i => new Taxon($"{i}", $"Fictus primu{(char)('a' + i)}")), [new("s", "Fictus primua", "0")]);

        var suggestions = many.Suggest("Fictus primus");
        Assert.Equal(3, suggestions.Count);
        Assert.Equal(3, suggestions.DistinctBy(s => s.Taxon.Id).Count());
    }

    [Fact]
    public void ASuggestionIsNeverTakenWithoutConsent() => Assert.Contains("Nearest: Fictus ruber", Assert.Single(Read("F. ruber").Refusals).Reason, StringComparison.Ordinal);

    [Fact]
    public void ANameThatAPersonAcceptedIsMatchedFromThenOn()
    {
        var options = Reading.Options with { AcceptedNames = new(new Dictionary<string, string> { ["f.  RUBER"] = "1", ["Lost"] = "77" }) };

        Assert.Equal("1", Assert.Single(Read("F. ruber", options).Records).Taxon.Id);
        Assert.Equal(Doubts.NameUncertain, Assert.Single(Read("F. ruber?", options).Records).Doubts);
        Assert.Single(Read("Lost", options).Refusals);
    }

    [Fact]
    public void TheUnknownNamesOfAnImportAreListedOnceWithTheirRows()
    {
        var unknown = Reading.Of($"{Header}\nF. ruber,1998,TQ38\nNobody knows,1998,TQ38\nf. RUBER,1999,TQ38\nFictus albus,1999,TQ38\n", taxa: List).Reader.UnknownNames;

        Assert.Equal([("F. ruber", 2L), ("Nobody knows", 1L)], unknown.All.Select(n => (n.Name, n.Rows)));
        Assert.Equal("1", unknown.All[0].Suggestions[0].Taxon.Id);
        Assert.Equal(0, unknown.RowsOfOthers);
    }

    [Fact]
    public void TheMemoryOfUnknownNamesIsBounded()
    {
        var unknown = new UnknownNames();
        for (var i = 0; i < 10_010; i++)
            unknown.Add($"Nomen {i}", []);
        unknown.Add(new string('x', 201), []);

        Assert.Equal((10_000, 11L), (unknown.All.Count, unknown.RowsOfOthers));
    }

    [Theory]
    [InlineData("Fictus ruber/albus", "9")]
    [InlineData("Fictus ruber / Fictus albus", "9")]
    [InlineData("Fictus albus or Fictus ruber", "9")]
    [InlineData("Fictus albus or sanguineus", "9")]
    [InlineData("Fictus ruber/albus agg.", "9")]
    [InlineData("Fictus ruber/tertius", "10")]
    [InlineData("Fictus ruber/sanguineus", "1")]
    [InlineData("Fictus ruber/ruber agg.", "9")]
    public void ARowThatNamesSeveralTaxaBelongsToTheirAggregate(string written, string id) => Assert.Equal(id, Assert.Single(Read(written).Records).Taxon.Id);

    [Theory]
    [InlineData("Fictus ruber/Confictus agrestis", "not members of one aggregate")]
    [InlineData("Fictus ruber/albos", "Nearest: Fictus albus")]
    public void SeveralTaxaWithoutAnAggregateAreRefusedWithTheReason(string written, string reason) =>
        Assert.Contains(reason, Assert.Single(Read(written).Refusals).Reason, StringComparison.Ordinal);

    private static Reading Read(string name, ImportOptions? options = null) => Reading.Of($"{Header}\n{name},1998,TQ38\n", options, List);
}
