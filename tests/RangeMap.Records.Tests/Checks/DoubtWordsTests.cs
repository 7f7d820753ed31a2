namespace RangeMap.Records.Tests;

public sealed class DoubtWordsTests
{
    [Fact]
    public void EveryDoubtHasWhatWhyAndWhatWouldHelp()
    {
        var all = DoubtCatalogue.All.Aggregate(Doubts.None, (sum, e) => sum | e.Doubt);
        var words = new DoubtExplanations(new CheckContext()).Of(Checking.Record("C") with { Doubts = all });

        Assert.Equal(DoubtCatalogue.All.Select(e => e.Doubt), words.Select(w => w.Doubt));
        Assert.All(words, w => Assert.All([w.What, w.Why, w.Help], sentence => Assert.EndsWith(".", sentence, StringComparison.Ordinal)));
        Assert.All(words, w => Assert.DoesNotContain("  ", w.Paragraph, StringComparison.Ordinal));
    }

    [Fact]
    public void ARecordWithoutDoubtsHasNoWords() => Assert.Empty(new DoubtExplanations(Checking.Context).Of(Checking.Record("C")));
}
