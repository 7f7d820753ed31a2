using CsCheck;

namespace RangeMap.Change.Tests.Trends;

public class FrequencyScalingTests
{
    // Eight invented frequencies; alpha and what follows computed with R 4.2.2.
    private static readonly double[] _frequencies = [.95, .85, .70, .50, .35, .20, .10, .05];

    [Fact]
    public void AlphaAndTheScaledFrequenciesAreThoseOfR()
    {
        var alpha = FrequencyScaling.Alpha(_frequencies, 0.74)!.Value;
        Assert.Equal(1.3603669, alpha, 1e-6);
        double[] expected = [.983013, .924285, .805601, .610517, .443464, .261812, .133531, .067399];
        for (var i = 0; i < expected.Length; i++)
            Assert.Equal(expected[i], FrequencyScaling.Scaled(_frequencies[i], alpha), 1e-6);
        Assert.Equal(4.229622, _frequencies.Sum(f => FrequencyScaling.Scaled(f, alpha)), 1e-5);
    }

    [Fact]
    public void OnlyTheCommonestOfTheEightIsABenchmark()
    {
        var scaled = Array.ConvertAll(_frequencies, f => (float)FrequencyScaling.Scaled(f, 1.3603669));
        // Ranks over the expected number of taxa: 0.23643, 0.47286 and so on, computed with R 4.2.2.
        Assert.Equal(scaled[0], FrequencyScaling.BenchmarkFrom(scaled, 0.27));
        Assert.Equal(scaled[0], FrequencyScaling.BenchmarkFrom(scaled, 0.4728));
        Assert.Equal(scaled[1], FrequencyScaling.BenchmarkFrom(scaled, 0.4729));
        Assert.Equal(float.PositiveInfinity, FrequencyScaling.BenchmarkFrom(scaled, 0.23));
    }

    [Fact]
    public void TaxaOfOneFrequencyShareTheirMiddleRank()
    {
        // Middle rank 2 of three, expected number of taxa 2.4.
        Assert.Equal(0.8f, FrequencyScaling.BenchmarkFrom([0.8f, 0.8f, 0.8f], 0.84));
        Assert.Equal(float.PositiveInfinity, FrequencyScaling.BenchmarkFrom([0.8f, 0.8f, 0.8f], 0.83));
    }

    [Fact]
    public void AlphaBringsAnyFrequenciesToTheStandard() => Gen.Select(Gen.Double[0.001, 1].Array[2, 60], Gen.Double[0.5, 0.9]).Sample((frequencies, standard) =>
    {
        if (FrequencyScaling.Alpha(frequencies, standard) is not { } alpha)
            return;
        var discoveries = frequencies.Select(f => 1 - Math.Exp(alpha * Math.Log(1 - Math.Min(f, FrequencyScaling.MostFrequent)))).ToArray();
        Assert.Equal(standard, discoveries.Sum(f => f * f) / discoveries.Sum(), 1e-8);
    });

    // Weights by rank of distance and of likeness, computed with R 4.2.2.
    [Theory]
    [InlineData(1, 1, 1)]
    [InlineData(50, 25, 0.615753)]
    [InlineData(101, 51, 0.100113)]
    public void WeightsFallWithBothRanks(int nearness, int likeness, double weight) => Assert.Equal(weight, Neighbourhoods.Weight(nearness, likeness), 1e-6);

    // s = .8 .5 .25 and f' = .6 .4 .3, computed with R 4.2.2.
    [Theory]
    [InlineData(1, 1.458523)]
    [InlineData(2, 5.294607)]
    public void TheTimeFactorExplainsTheNumberOfFinds(int found, double factor)
    {
        double[] foreseen = [TimeFactor.Foreseen(.8, .6), TimeFactor.Foreseen(.5, .4), TimeFactor.Foreseen(.25, .3)];
        Assert.Equal([.6539265, .2231436, .0779615], foreseen.Select(q => Math.Round(q, 7)));
        Assert.Equal(factor, TimeFactor.Solve(foreseen, found)!.Value, 1e-5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void ATaxonFoundNowhereOrEverywhereHasNoTimeFactor(int found) => Assert.Null(TimeFactor.Solve([0.5, 0.4, 0.3], found));

    [Fact]
    public void TheTimeFactorSolvesItsEquation() => Gen.Select(Gen.Double[1e-6, 11].Array[3, 200], Gen.Double[0.01, 0.99]).Sample((foreseen, part) =>
    {
        var found = Math.Clamp((int)(part * foreseen.Length), 1, foreseen.Length - 1);
        var factor = TimeFactor.Solve(foreseen, found)!.Value;
        Assert.Equal(found, foreseen.Sum(q => 1 - Math.Exp(-q * factor)), 1e-6);
    });
}
