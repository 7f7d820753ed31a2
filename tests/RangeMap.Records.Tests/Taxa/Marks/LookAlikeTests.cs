namespace RangeMap.Records.Tests;

public sealed class LookAlikeTests
{
    private static readonly TaxonList List = new(
        [
            Of("1", "2", "large; queen: tail white; worker: tail buff", "worker: specimen"),
            Of("2", "", "worker: tail white", "a photograph"),
            Of("3", "1", "small", ""),
            Of("4", "", "", ""),
        ]);

    [Fact]
    public void BothSidesOfAPairAreShownWithTheMarksOfTheStage()
    {
        var shown = LookAlike.Of(List, List.FindById("1")!, "worker", null);

        Assert.Equal(["1", "2", "3"], shown.Select(l => l.Taxon.Id));
        Assert.Equal([(null, "large"), ("worker", "tail buff")], shown[0].Marks.Select(m => (m.Stage, m.Value)));
        Assert.Equal([("worker", "tail white")], shown[1].Marks.Select(m => (m.Stage, m.Value)));
        Assert.Equal(["a photograph"], shown[1].Evidence.Select(e => e.Value));
        Assert.Equal(["1", "2"], LookAlike.Of(List, List.FindById("2")!, "queen", null).Select(l => l.Taxon.Id).Order());
    }

    [Fact]
    public void ATaxonThatNothingResemblesStandsAlone() => Assert.Equal("4", Assert.Single(LookAlike.Of(List, List.FindById("4")!, null, null)).Taxon.Id);

    private static Taxon Of(string id, string confusedWith, string marks, string evidence) => new(id, $"Fictus {id}")
    {
        Notes = new Dictionary<string, string> { ["confusedWith"] = confusedWith, ["marks"] = marks, ["evidence"] = evidence },
    };
}
