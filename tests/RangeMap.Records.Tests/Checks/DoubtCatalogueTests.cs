namespace RangeMap.Records.Tests;

public sealed class DoubtCatalogueTests
{
    [Fact]
    public void EveryDoubtHasOneEntry()
    {
        var doubts = Enum.GetValues<Doubts>().Where(d => d != Doubts.None);

        Assert.Equal(doubts.Order(), DoubtCatalogue.All.Select(e => e.Doubt).Order());
        Assert.Equal(DoubtCatalogue.All.Count, DoubtCatalogue.All.DistinctBy(e => e.Title).Count());
    }

    [Fact]
    public void TheBitsThatStoresHoldNeverChange() => Assert.Equal(
        [
            "PlacesDisagree", "CoordinatesSwapped", "UncertaintyAssumed", "NameUncertain", "BeforeFirstYear", "CountZero", "RepeatedRow", "AtSea",
            "OutOfSeason", "DatumAssumed", "DatesDisagree", "LengthOutOfRange", "StageImpossible", "OutsideKnownArea", "DuplicateRecord", "TwoFarPlaces",
            "EvidenceMissing", "AheadOfFront", "DateDefault", "PlaceDefault", "RecorderImplausible", "StageAgainstDate",
        ],
        Enumerable.Range(0, 22).Select(bit => ((Doubts)(1 << bit)).ToString()));

    [Fact]
    public void ASeriousDoubtOutweighsEveryOther() =>
        Assert.True(DoubtCatalogue.All.Where(e => e.Serious).Min(e => e.Weight) > DoubtCatalogue.All.Where(e => !e.Serious).Max(e => e.Weight));

    [Fact]
    public void AllIsSortedByWeight() => Assert.Equal(DoubtCatalogue.All.OrderByDescending(e => e.Weight), DoubtCatalogue.All);

    [Fact]
    public void TheWeightOfARecordIsTheSumOfItsDoubts()
    {
        Assert.Equal(0, DoubtCatalogue.WeightOf(Doubts.None));
        Assert.Equal(6 + 4 + 0, DoubtCatalogue.WeightOf(Doubts.OutOfSeason | Doubts.AtSea | Doubts.DatumAssumed));
        Assert.Equal([Doubts.OutOfSeason, Doubts.AtSea], DoubtCatalogue.In(Doubts.AtSea | Doubts.OutOfSeason).Select(e => e.Doubt));
    }

    [Fact]
    public void ACodeFindsItsDoubtAndTheOtherWayRound()
    {
        Assert.Equal("outOfSeason", DoubtCatalogue.Of(Doubts.OutOfSeason).Code);
        Assert.Equal(Doubts.OutOfSeason, DoubtCatalogue.Find("OUTOFSEASON"));
        Assert.Null(DoubtCatalogue.Find("unheardOf"));
        Assert.Throws<ArgumentException>(() => DoubtCatalogue.Of(Doubts.AtSea | Doubts.OutOfSeason));
    }
}
