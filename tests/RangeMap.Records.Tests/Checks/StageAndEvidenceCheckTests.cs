namespace RangeMap.Records.Tests;

public sealed class StageAndEvidenceCheckTests
{
    [Theory]
    [InlineData("worker", "male", true)]
    [InlineData("male", "female", true)]
    [InlineData("queen", "female", false)]
    [InlineData("worker", "female and male", false)]
    [InlineData("nymph", null, true)]
    [InlineData("adult", null, false)]
    [InlineData("adult", "female", false)]
    [InlineData("juvenile", null, false)]
    [InlineData("nest", null, false)]
    [InlineData("third instar", null, false)]
    [InlineData(null, null, false)]
    public void AStageThatCannotBeIsInDoubt(string? stage, string? sex, bool found) =>
        Assert.Equal(found, (Checking.Find(Checking.Record("C", stage, sex)) & Doubts.StageImpossible) != 0);

    [Fact]
    public void TheWordsTellWhatTheListHas()
    {
        Assert.Equal("A worker is female, and the record says male.", Checking.Words(Checking.Record("C", "worker", "male"), Doubts.StageImpossible));
        Assert.Equal(
            "The list has no nymph of Species C; it has queen, worker, male, egg, larva and pupa.",
            Checking.Words(Checking.Record("C", "nymph"), Doubts.StageImpossible));
    }

    [Theory]
    [InlineData("A", "worker", "sighting", true)]
    [InlineData("A", "worker", null, true)]
    [InlineData("A", "worker", "photograph", false)]
    [InlineData("A", "queen", "sighting", false)]
    [InlineData("A", "queen", null, true)]
    [InlineData("A", "male", "photograph", true)]
    [InlineData("A", "male", "specimen", false)]
    [InlineData("A", null, "photograph", true)]
    [InlineData("A", null, "specimen", false)]
    [InlineData("C", "worker", null, false)]
    [InlineData("AB", "worker", null, false)]
    public void AConfusableSpeciesNeedsTheEvidenceThatItsCasteAsksFor(string letter, string? stage, string? evidence, bool found) =>
        Assert.Equal(found, (Checking.Find(Checking.Record(letter, stage) with { Evidence = evidence }) & Doubts.EvidenceMissing) != 0);

    [Fact]
    public void TheWordsTellWhatSufficesAndWhereTheRecordBelongsWithoutIt() => Assert.Equal(
        "Species A is easily taken for Species B. The list asks for evidence: for workers a specimen or a photograph of the hairs at the tail. The record states \"sighting\". Without it the record belongs to Species A or B.",
        Checking.Words(Checking.Record("A", "worker") with { Evidence = "sighting" }, Doubts.EvidenceMissing));
}
