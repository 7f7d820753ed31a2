namespace RangeMap.Records.Tests;

public sealed class SentenceTests
{
    private static readonly TaxonList OnlyAnAggregate = new([new("9", "Fictus ruber agg.") { Rank = "aggregate" }]);

    [Fact]
    public void AReasonThatEndsWithAnAggregateHasOneFullStop()
    {
        var reason = Assert.Single(Reading.Of("species,date,gridref\nFictus rubbor,2005-06-03,SU1234", taxa: OnlyAnAggregate).Refusals).Reason;
        Assert.EndsWith("Nearest: Fictus ruber agg.", reason, StringComparison.Ordinal);
    }
}
