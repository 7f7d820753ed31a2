using CsCheck;

namespace RangeMap.Change.Tests.Arrivals;

public class ArrivalCurveTests
{
    private const double Open = double.PositiveInfinity;

    // Computed with R 4.2.2 by self-consistency.
    [Fact]
    public void NineIntervalsGiveSixMasses()
    {
        var curve = Curve([(2000, 2002), (2001, 2004), (2002, 2003), (2000, 2005), (2004, 2006), (2003, 2005), (2006, 2009), (2005, 2007), (2008, Open)]);
        AssertMasses(curve, 1e-5, (2001, 2002, 0.201277), (2002, 2003, 0.201277), (2003, 2004, 0), (2004, 2005, 0.243615), (2005, 2006, 0.055108), (2006, 2007, 0.121808), (2008, 2009, 0.176915));
        Assert.Equal(-11.845576, curve.LogLikelihood, 1e-5);
    }

    // Computed with R 4.2.2; the masses are sixteenths.
    [Fact]
    public void EightIntervalsGiveSixteenths()
    {
        var curve = Curve([(2000, 2001), (2000, 2003), (2001, 2002), (2002, 2004), (2003, 2004), (2003, 2006), (2005, 2007), (2006, Open)]);
        AssertMasses(curve, 1e-5, (2000, 2001, 3 / 16.0), (2001, 2002, 3 / 16.0), (2002, 2003, 0), (2003, 2004, 3 / 8.0), (2005, 2006, 0), (2006, 2007, 1 / 4.0));
        Assert.Equal(-10.043859, curve.LogLikelihood, 1e-5);
    }

    // Months to a change of appearance after radiotherapy, 46 patients: Finkelstein and Wolfe 1985, Biometrics 41:933-945, as given in a
    // textbook's data file. Masses and likelihood computed with R 4.2.2; published to three figures as .046 .033 .089 .071 .093 .082 .121 .466
    // (from memory, not verified).
    [Fact]
    public void APublishedTableOfIntervalsGivesItsPublishedCurve()
    {
        (double, double)[] seen =
        [
            (0, 5), (0, 7), (0, 8), (4, 11), (5, 11), (5, 12), (6, 10), (7, 14), (7, 16), (11, 15), (11, 18), (17, 25), (17, 25), (18, 26), (19, 35), (25, 37),
            (26, 40), (27, 34), (36, 44), (36, 48), (37, 44),
        ];
        double[] unseen = [15, 17, 18, 22, 24, 24, 32, 33, 34, 36, 36, 37, 37, 37, 38, 40, 45, 46, 46, 46, 46, 46, 46, 46, 46];
        var curve = Curve([.. seen, .. unseen.Select(month => (month, Open))]);
        Assert.Equal(46, curve.N);
        Assert.Equal(-58.0600, curve.LogLikelihood, 1e-4);
        (double, double, double)[] expected =
        [
            (4, 5, .0463), (6, 7, .0334), (7, 8, .0887), (11, 12, .0708), (24, 25, .0926), (33, 34, .0818), (38, 40, .1209), (46, 48, .4656),
        ];
        AssertMasses(new([.. curve.Masses.Where(m => m.Mass > 1e-5)], curve.LogLikelihood, curve.Gap, curve.N), 1e-4, expected);
    }

    // The last mass of that table lies in (46, 48] only because one interval ends at 48; without that interval it is open.
    [Fact]
    public void TheLastMassIsOpenWhereNoIntervalEndsAfterTheLastStart()
    {
        var last = Curve([(0, 5), (36, 44), (37, 44), (45, Open), (46, Open)]).Masses[^1];
        Assert.Equal(new(46, Open), last.Interval);
    }

    [Fact]
    public void TheCurveIsABandWithinAnIntervalAndAPointBetweenThem()
    {
        var curve = Curve([(2000, 2004), (2006, 2008)]);
        Assert.Equal(new(0, 0.5), curve.ReachedBy(2002));
        Assert.Equal(new(0.5, 0.5), curve.ReachedBy(2005));
        Assert.Equal(new(1, 1), curve.ReachedBy(2008));
    }

    [Fact]
    public void AnEmptyIntervalIsRefused() => Assert.Throws<ArgumentException>(() => Curve([(2004, 2004)]));

    [Fact]
    public void NoOtherCurveOnTheSameIntervalsIsLikelier()
    {
        var interval = Gen.Select(Gen.Int[0, 12], Gen.Int[1, 9], (after, length) => ((double)after, length == 9 ? Open : (double)(after + length)));
        Gen.Select(interval.Array[1, 40], Gen.Double[0.01, 1].Array[40]).Sample((observed, weights) =>
        {
            var curve = Curve(observed);
            Assert.InRange(curve.Gap, 0, 1e-3);
            Assert.Equal(1, curve.Masses.Sum(m => m.Mass), 1e-9);
            Assert.Equal(curve.LogLikelihood, LogLikelihood(observed, curve.Masses), 1e-6);
            var total = weights.Take(curve.Masses.Count).Sum();
            var other = curve.Masses.Select((m, i) => m with { Mass = weights[i] / total }).ToList();
            Assert.True(LogLikelihood(observed, other) <= curve.LogLikelihood + curve.Gap + 1e-9);
        }, iter: 300);
    }

    private static double LogLikelihood((double After, double By)[] observed, IReadOnlyList<ArrivalMass> masses) =>
        observed.Sum(o => Math.Log(masses.Where(m => m.Interval.After >= o.After && m.Interval.By <= o.By).Sum(m => m.Mass)));

    private static ArrivalCurve Curve((double After, double By)[] observed) => ArrivalCurve.Of([.. observed.Select(o => new CensoredYear(o.After, o.By))]);

    private static void AssertMasses(ArrivalCurve curve, double tolerance, params (double After, double By, double Mass)[] expected)
    {
        Assert.Equal(expected.Length, curve.Masses.Count);
        foreach (var ((after, by, mass), found) in expected.Zip(curve.Masses))
        {
            Assert.Equal(new(after, by), found.Interval);
            Assert.Equal(mass, found.Mass, tolerance);
        }
    }
}
