using CsCheck;

namespace RangeMap.Change.Tests.Effort;

public class LocalChanceTests
{
    // Computed by hand from eq. 1 to 4: d = (9 - 4 + 0.5) / (20 - 4 + 2) = 0.30556; the two others count for 1 - 0.69444 = 0.30556 and 1 - 0.69444² = 0.51775;
    // 6 / (5 + 0.82330 + 2) = 0.76694; 0.76694 · 0.69444³ / (0.76694 · 0.69444³ + 0.23306).
    [Fact]
    public void AChanceWorkedOutByHand()
    {
        var chance = new LocalChance(5, [1, 2], 4, 20, 9, 3);
        Assert.Equal(7, chance.Searched);
        Assert.Equal(5.5 / 18, chance.Detection, 1e-12);
        Assert.Equal(0.766940, chance.Before, 1e-6);
        Assert.Equal(0.524276, chance.Probability, 1e-6);
    }

    [Fact]
    public void WithoutAVisitHereTheNeighboursAloneSpeak() => Assert.Equal(0.9, new LocalChance(8, [], 0, 0, 0, 0).Probability, 1e-12);

    [Fact]
    public void ANeighbourThatNobodyVisitedSaysNothing() =>
        Assert.Equal(new LocalChance(4, [], 4, 20, 9, 3).Probability, new LocalChance(4, [0, 0], 4, 20, 9, 3).Probability, 1e-12);

    [Fact]
    public void AChanceLiesBetweenNoneAndOneAndFallsWithEveryVisitThatMissedTheSpecies() =>
        Gen.Select(Gen.Int[0, 8], Gen.Int[0, 40].Array[0, 8], Gen.Int[0, 8], Gen.Int[0, 200], Gen.Int[0, 200], Gen.Int[0, 300]).Sample((with, without, squares, visits, noted, here) =>
        {
            squares = Math.Min(squares, with);
            var chance = new LocalChance(with, without, squares, squares + Math.Max(visits, noted), squares + Math.Min(visits, noted), here);
            Assert.InRange(chance.Detection, 0, 1);
            Assert.InRange(chance.Probability, 0, 1);
            Assert.True((chance with { VisitsHere = here + 1 }).Probability <= chance.Probability);
            Assert.True((chance with { VisitsWithout = [.. without, 5] }).Probability <= chance.Probability);
            Assert.True((chance with { With = with + 1 }).Probability >= chance.Probability);
        });
}
