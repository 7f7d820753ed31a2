using CsCheck;

namespace RangeMap.Change.Tests.Effort;

public class RichnessTests
{
    // 26 spiders of 168 on girdled plots, 12 met once and 4 twice: Chao1 43.893 and coverage 0.929 as published by Chao et al. 2014, Ecological
    // Monographs 84:45-67 (from memory, not verified); more decimals computed by hand from eq. 1 and 3.
    [Fact]
    public void PublishedSpidersHaveTheirRichnessAndCoverage()
    {
        var richness = Richness.FromRecords(Counts(12, 4, 10, 168));
        Assert.Equal(26, richness.Observed);
        Assert.Equal(43.892857, richness.Expected, 1e-6);
        Assert.Equal(0.928855, richness.Coverage, 2e-6);
        Assert.Equal(26 / 43.892857, richness.Completeness, 1e-6);
    }

    // Computed by hand from eq. 1 to 3.
    [Fact]
    public void TenTaxaOfSixtyRecordsWithAndWithoutTaxaMetTwice()
    {
        var richness = Richness.FromRecords(Counts(3, 2, 5, 60));
        Assert.Equal(12.2125, richness.Expected, 1e-9);
        Assert.Equal(0.951105, richness.Coverage, 1e-6);
        Assert.Equal(12.95, Richness.FromRecords(Counts(3, 0, 7, 60)).Expected, 1e-9);
    }

    // Computed by hand from eq. 2 and 4: 12 lists of 42 taxa, 10 on one list and 6 on two, 180 mentions in all.
    [Fact]
    public void TwelveListsHaveTheirRichnessAndCoverage()
    {
        var richness = Richness.FromLists(Counts(10, 6, 26, 180), 12);
        Assert.Equal(49.638889, richness.Expected, 1e-6);
        Assert.Equal(0.949909, richness.Coverage, 1e-6);
    }

    [Fact]
    public void ASingleRecordCoversNothingAndAnEmptySampleHasNothing()
    {
        Assert.Equal(new(1, 1, 0), Richness.FromRecords([1]));
        Assert.Equal(new(0, 0, 0), Richness.FromRecords([]));
        Assert.Equal(new(0, 0, 0), Richness.FromLists([], 7));
        Assert.Equal(0, Richness.FromLists([], 0).Completeness);
    }

    [Fact]
    public void RichnessIsNeverBelowWhatWasSeenAndCoverageIsAShare() => Gen.Int[1, 30].Array[1, 40].Sample(counts =>
    {
        foreach (var richness in new[] { Richness.FromRecords(counts), Richness.FromLists(counts, 30) })
        {
            Assert.Equal(counts.Length, richness.Observed);
            Assert.True(richness.Expected >= richness.Observed);
            Assert.InRange(richness.Coverage, 0, 1);
            Assert.InRange(richness.Completeness, 0, 1);
        }
    });

    [Fact]
    public void TheOrderOfTaxaIsOfNoAccount() => Gen.Int[1, 9].Array[1, 20].Sample(counts =>
        Assert.Equal(Richness.FromRecords(counts), Richness.FromRecords([.. counts.Reverse()])));

    // Once, twice, and others of three and more that bring the sum to a total.
    private static int[] Counts(int once, int twice, int others, int total)
    {
        var rest = total - once - 2 * twice;
        return
        [
            .. Enumerable.Repeat(1, once), .. Enumerable.Repeat(2, twice),
            .. Enumerable.Range(0, others).Select(i => rest / others + (i < rest % others ? 1 : 0)),
        ];
    }
}
