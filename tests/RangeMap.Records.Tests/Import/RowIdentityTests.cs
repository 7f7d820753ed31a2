namespace RangeMap.Records.Tests;

public sealed class RowIdentityTests
{
    [Fact]
    public void TheSameRowHasTheSameIdentityWhereverItsColumnsStand()
    {
        var one = Reading.OfRow("species,date,gridref,notes,empty", "Fictus ruber,1998,TQ38,n,").Records[0];
        var other = Reading.Of("notes,gridReference,eventDate,scientificName\nx,TQ38,1997,Fictus ruber\nn,TQ38,1998,Fictus ruber\n").Records[1];

        Assert.Equal((one.Key, one.Content), (other.Key, other.Content));
    }

    [Fact]
    public void RepeatedRowsGetIdentitiesOfTheirOwnThatStayTheSame()
    {
        const string text = "species,date,gridref\nFictus ruber,1998,TQ38\nFictus ruber,1998,TQ38\nFictus ruber,1998,TQ38\nFictus ruber,1999,TQ38\n";
        var once = Reading.Of(text).Records;

        Assert.Equal(4, once.Select(r => r.Key).Distinct().Count());
        Assert.Equal([Doubts.None, Doubts.RepeatedRow, Doubts.RepeatedRow, Doubts.None], once.Select(r => r.Doubts));
        Assert.Equal(once.Select(r => r.Key), Reading.Of(text).Records.Select(r => r.Key));
    }

    [Fact]
    public void AnOccurrenceIdIsTheIdentityAndItsContentMayChange()
    {
        const string header = "occurrenceID,species,date,gridref,site";
        var before = Reading.OfRow(header, "a1,Fictus ruber,1998,TQ38,").Records[0];
        var after = Reading.OfRow(header, "a1,Fictus ruber,1998,TQ38,A wood").Records[0];

        Assert.Equal(before.Key, after.Key);
        Assert.NotEqual(before.Content, after.Content);
    }

    [Fact]
    public void ANewUnderstandingOfTheSameRowIsAChange()
    {
        const string text = "occurrenceID,species,date,gridref\na1,Fictus ruber,3/6/1998,TQ38\n";
        var dayFirst = Reading.Of(text, Reading.Options with { DateOrder = DateOrder.DayFirst }).Records[0];
        var monthFirst = Reading.Of(text, Reading.Options with { DateOrder = DateOrder.MonthFirst }).Records[0];

        Assert.Equal(dayFirst.Key, monthFirst.Key);
        Assert.NotEqual(dayFirst.Content, monthFirst.Content);
    }

    [Fact]
    public void HashesSeenAreRememberedBeyondEveryGrowth()
    {
        var seen = new SeenHashes();
        for (ulong i = 0; i < 100_000; i++)
            Assert.True(seen.Add(i * 0x9E3779B97F4A7C15));
        for (ulong i = 0; i < 100_000; i++)
            Assert.False(seen.Add(i * 0x9E3779B97F4A7C15));
    }
}
