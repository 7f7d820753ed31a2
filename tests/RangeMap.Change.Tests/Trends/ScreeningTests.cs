using CsCheck;

namespace RangeMap.Change.Tests.Trends;

public class ScreeningTests
{
    [Fact]
    public void AdjustedValuesAreThoseOfR()
    {
        // Computed with R 4.2.2: p.adjust(c(0.01, 0.02, 0.03, 0.04, 0.5), "BH").
        var screening = Screening.Of(Estimates(0.04, 0.01, 0.5, 0.03, 0.02), ChangeMethods.ListLength);
        Assert.Equal([1, 4, 3, 0, 2], screening.Taxa.Select(taxon => taxon.Estimate.Taxon));
        Assert.Equal([0.05, 0.05, 0.05, 0.05, 0.5], screening.Taxa.Select(taxon => Math.Round(taxon.Adjusted, 12)));
        Assert.Equal([true, true, true, true, false], screening.Taxa.Select(taxon => taxon.StandsOut));
    }

    [Fact]
    public void NothingStandsOutThatDoesNotStandOutAlone() => Gen.Double[0, 1].Array[1, 40].Sample(p =>
    {
        var screening = Screening.Of(Estimates(p), ChangeMethods.ListLength);
        Assert.All(screening.Taxa, taxon => Assert.True(taxon.Adjusted >= taxon.Estimate.P && taxon.Adjusted <= 1));
        Assert.Equal(screening.Taxa.Select(taxon => taxon.Adjusted).Order(), screening.Taxa.Select(taxon => taxon.Adjusted));
    });

    [Fact]
    public void OtherMethodsAndRefusalsAreLeftOut()
    {
        ChangeEstimate refused = ChangeEstimate.Refuse(9, ChangeMethods.ListLength, "", 0, "No."), other = ChangeEstimate.Of(8, ChangeMethods.Squares, "%", 5, 1, new(0, 2)) with { P = 0.01 };
        var screening = Screening.Of([refused, other, .. Estimates(0.2)], ChangeMethods.ListLength);
        Assert.Equal(0, Assert.Single(screening.Taxa).Estimate.Taxon);
        Assert.StartsWith("1 taxon was compared by list-length. Taken one at a time, 0 of them tell of change", screening.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void TheCautionCountsWhatChanceAloneWouldGive() => Assert.Contains(
        "Taken one at a time, 3 of them tell of change; by chance alone about 5 would. With all of them in view none stands out.",
        Screening.Of(Estimates([0.03, 0.03, 0.04, .. Enumerable.Repeat(0.6, 97)]), ChangeMethods.ListLength).Caution,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void ARateOutsideItsRangeIsRefused(double rate) => Assert.Throws<ArgumentOutOfRangeException>(() => Screening.Of([], ChangeMethods.ListLength, rate));

    private static ChangeEstimate[] Estimates(params double[] p) =>
        [.. p.Select((value, taxon) => ChangeEstimate.Of(taxon, ChangeMethods.ListLength, "logit per decade", 5, 1, new(0, 2)) with { P = value })];
}
