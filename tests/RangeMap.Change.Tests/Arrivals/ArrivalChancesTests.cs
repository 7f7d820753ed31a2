namespace RangeMap.Change.Tests.Arrivals;

public class ArrivalChancesTests
{
    private static readonly (int, double)[] Even = [.. Enumerable.Range(2000, 9).Select(year => (year, 0.1))];

    // Computed with R 4.2.2: one chance in ten for each year 2000 to 2008 and for never, visits in 2001, 2003, 2005 and 2007, chance of a find 0.6.
    [Fact]
    public void TwoMissesAndTwoFindsPutTheArrivalBeforeTheFirstFind()
    {
        var square = ArrivalChances.Of(Even, 0.1, Visits(false, false, true, true), 0.6)!;
        Assert.Equal(0.11232, square.Likelihood, 1e-9);
        double[] expected = [.051282, .051282, .128205, .128205, .320513, .320513, 0, 0, 0];
        for (var i = 0; i < expected.Length; i++)
            Assert.Equal(expected[i], square.Years[i].Chance, 1e-6);
        Assert.Equal(0, square.Never);
    }

    // As above.
    [Fact]
    public void FourMissesLeaveItOpenWhetherTheSpeciesIsThere()
    {
        var square = ArrivalChances.Of(Even, 0.1, Visits(false, false, false, false), 0.6)!;
        Assert.Equal(0.32992, square.Likelihood, 1e-9);
        Assert.Equal(0.303104, square.Never, 1e-6);
        Assert.Equal(0.393792, square.PresentBy(2007), 1e-6);
        Assert.Equal(1, square.PresentBy(2008) + square.Never, 1e-12);
    }

    [Fact]
    public void AFindBeforeAnyPossibleArrivalHasNoAnswer() => Assert.Null(ArrivalChances.Of(Even, 0.1, [(1990, true)], 0.6));

    [Fact]
    public void WithoutVisitsThePriorStands() => Assert.Equal(0.1, ArrivalChances.Of(Even, 0.1, [], 0.6)!.Years[3].Chance, 1e-12);

    // ln 0.05 / ln 0.6: six visits for a species that two visits in five find.
    [Fact]
    public void SixVisitsWithoutAFindMakeAbsenceLikelyWhereTwoInFiveFind()
    {
        Assert.Equal(5.86, ArrivalChances.VisitsForAbsence(0.4), 0.005);
        Assert.Throws<ArgumentOutOfRangeException>(() => ArrivalChances.VisitsForAbsence(1));
    }

    private static (int, bool)[] Visits(params bool[] found) => [.. found.Select((f, i) => (2001 + 2 * i, f))];
}
