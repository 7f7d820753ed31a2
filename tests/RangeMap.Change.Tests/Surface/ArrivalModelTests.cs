namespace RangeMap.Change.Tests.Surface;

public class ArrivalModelTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.9)]
    public void TheSpeedOfInventedFrontsIsFoundAtHighAndLowDetection(double detection)
    {
        var world = new SimulatedArrivals { Detection = detection, CountryKm = 220, Years = 35 };
        var (speeds, covered, squares, held) = Run(world, seeds: 6);
        // Six countries: the mean may be 5 % off, and one interval of six may miss.
        Assert.InRange(speeds.Average(), 0.95 * world.SpeedKmPerYear, 1.05 * world.SpeedKmPerYear);
        Assert.True(covered >= 5, $"{covered} of {speeds.Count}");
        Assert.InRange((double)held / squares, 0.93, 1);
    }

    [Fact(Explicit = true)]
    public void PrintsBiasAndCoverageOverTwoHundredCountries()
    {
        foreach (var detection in (double[])[0.3, 0.5, 0.9])
        {
            var world = new SimulatedArrivals { Detection = detection };
            var (speeds, covered, squares, held) = Run(world, seeds: 200);
            output.WriteLine(FormattableString.Invariant(
                $"detection {detection}: mean {speeds.Average():0.000}, bias {100 * (speeds.Average() / world.SpeedKmPerYear - 1):0.0} %, interval holds the truth in {100.0 * covered / speeds.Count:0} %, squares' intervals in {100.0 * held / squares:0} %, {speeds.Count} fits"));
        }
    }

    [Fact]
    public void MovingTurningAndMirroringTheMapChangesNoSpeed()
    {
        var world = new SimulatedArrivals { CountryKm = 160, Years = 28, Detection = 0.6 };
        var (sites, _) = world.Make(3);
        var plain = SpeedOf(sites, world.Origin);
        var moved = SpeedOf([.. sites.Select(s => s with { X = s.X + 300, Y = s.Y - 120 })], new(world.Origin.X + 300, world.Origin.Y - 120));
        var turned = SpeedOf([.. sites.Select(s => s with { X = -s.Y, Y = s.X })], new(-world.Origin.Y, world.Origin.X));
        var mirrored = SpeedOf([.. sites.Select(s => s with { X = -s.X })], new(-world.Origin.X, world.Origin.Y));
        Assert.Equal(plain, moved, 0.02);
        Assert.Equal(plain, turned, 0.02);
        Assert.Equal(plain, mirrored, 0.02);
    }

    [Fact]
    public void TooLittleIsRefusedWithASentence()
    {
        ArrivalSite Site(double x, double y, params ArrivalVisit[] visits) => new(x, y, visits);
        Assert.Contains("0 of at least 30", ArrivalModel.Fit([]).Refused, StringComparison.Ordinal);
        Assert.Contains("1 of at least 30", ArrivalModel.Fit([Site(0, 0, new ArrivalVisit(2000, 3, true))]).Refused, StringComparison.Ordinal);
        var oneYear = Enumerable.Range(0, 40).Select(i => Site(i, i * i % 7, new ArrivalVisit(2000, 3, true), new ArrivalVisit(1999, 3, false))).ToList();
        Assert.Contains("different years", ArrivalModel.Fit(oneYear).Refused, StringComparison.Ordinal);
        var alwaysFound = Enumerable.Range(0, 40).Select(i => Site(i, i * i % 7, new ArrivalVisit(2000 + i % 10, 3, true))).ToList();
        Assert.Contains("without the species", ArrivalModel.Fit(alwaysFound).Refused, StringComparison.Ordinal);
        var onALine = Enumerable.Range(0, 40).Select(i => Site(i, 2 * i, new ArrivalVisit(2000 + i % 10, 3, true), new ArrivalVisit(1999, 3, false))).ToList();
        Assert.Contains("on one line", ArrivalModel.Fit(onALine).Refused, StringComparison.Ordinal);
        Assert.Contains("no place", ArrivalModel.Fit([Site(double.NaN, 0)]).Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void TheDerivativesOfTheLikelihoodAreThoseOfItsDifferences()
    {
        var years = YearLadder.Of(2000, 2020);
        var likelihood = new double[years.Count];
        ArrivalPosterior.Likelihood([new(2004, 3, false), new(2009, 6, false), new(2011, 4, true), new(2015, 2, false)], years, new(-1, 0.8), 0.001, likelihood);
        foreach (var surface in (double[])[1995, 2003, 2008, 2012, 2025])
        {
            const double step = 1e-3;
            var here = ArrivalPosterior.Slopes(likelihood, years, surface, 2, 0.2);
            var (ahead, behind) = (ArrivalPosterior.Slopes(likelihood, years, surface + step, 2, 0.2), ArrivalPosterior.Slopes(likelihood, years, surface - step, 2, 0.2));
            Assert.Equal((ahead.Log - behind.Log) / (2 * step), here.First, 0.01);
            Assert.Equal((ahead.First - behind.First) / (2 * step), here.Second, 0.01);
        }
    }

    [Fact]
    public void TheDerivativesHoldWhereTheSurfaceLiesFarFromWhatTheVisitsSay()
    {
        var years = YearLadder.Of(2000, 2020);
        var likelihood = new double[years.Count];
        // Two hundred finds in 2010 and as many visits in vain before: nothing but 2010 is likely, and never being there least of all.
        ArrivalPosterior.Likelihood([.. Enumerable.Repeat(new ArrivalVisit(2010, 3, true), 200), .. Enumerable.Repeat(new ArrivalVisit(2009, 3, false), 200)], years, new(-1, 0.8), 0.001, likelihood);
        foreach (var surface in (double[])[1950, 1985, 1995, 2025, 2040, 2070])
        {
            const double step = 1e-3;
            var here = ArrivalPosterior.Slopes(likelihood, years, surface, 2, 1e-4);
            var (ahead, behind) = (ArrivalPosterior.Slopes(likelihood, years, surface + step, 2, 1e-4), ArrivalPosterior.Slopes(likelihood, years, surface - step, 2, 1e-4));
            Assert.Equal((ahead.Log - behind.Log) / (2 * step), here.First, 1e-6 + 0.05 * Math.Abs(here.First));
            Assert.True(double.IsFinite(here.Second));
        }

        Assert.True(ArrivalPosterior.Slopes(likelihood, years, 2030, 2, 1e-4).First < -1);
        // A thousand years away nothing is told apart: flat, but a number.
        foreach (var surface in (double[])[1000, 3000, 1e12])
        {
            var (log, first, second) = ArrivalPosterior.Slopes(likelihood, years, surface, 2, 1e-4);
            Assert.InRange(log, Math.Log(1e-300), 0);
            Assert.Equal((0, 0), (first, second));
        }
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.3)]
    [InlineData(0.8)]
    public void ASpeciesThatWasThereAllAlongHasNoFront(double detection)
    {
        for (ulong seed = 1; seed <= 6; seed++)
        {
            var random = new Pcg(seed);
            var sites = new List<ArrivalSite>();
            for (var square = 0; square < 400; square++)
            {
                // Recording grows, and some squares are rich in the species, others poor: first finds trickle in over the decades as in a spread.
                var chance = random.NextUnit() < 0.6 ? detection * 2 * random.NextUnit() : 0;
                sites.Add(new(10 * (square % 20), 10 * (square / 20), [.. Enumerable.Range(0, 80).Select(visit => new ArrivalVisit(1985 + (int)(40 * Math.Sqrt(random.NextUnit())), 1 + visit % 12, random.NextUnit() < chance))]));
            }

            var answer = ArrivalModel.Fit(sites);
            Assert.NotNull(answer.Refused);
            Assert.Matches("No front can be seen|was reached before the records begin", answer.Refused);
        }
    }

    private static (List<double> Speeds, int Covered, int Squares, int Held) Run(SimulatedArrivals world, int seeds)
    {
        var speeds = new List<double>();
        var (covered, squares, held) = (0, 0, 0);
        for (var seed = 1; seed <= seeds; seed++)
        {
            var (sites, truth) = world.Make((ulong)seed);
            var answer = ArrivalModel.Fit(sites, world.Origin);
            Assert.Null(answer.Refused);
            var speed = ArrivalSpeed.Of(answer.Fit!)!.Value;
            speeds.Add(speed.KmPerYear);
            covered += speed.Interval.Contains(world.SpeedKmPerYear) ? 1 : 0;
            for (var i = 0; i < sites.Count; i++)
            {
                // A square whose interval is open at one end is not counted.
                if (answer.Fit!.Squares[i] is not { Low: { } low, High: { } high })
                    continue;
                squares++;
                held += truth[i] > low - 1 && truth[i] <= high ? 1 : 0;
            }
        }

        return (speeds, covered, squares, held);
    }

    private static double SpeedOf(IReadOnlyList<ArrivalSite> sites, PlanePoint origin) => ArrivalSpeed.Of(ArrivalModel.Fit(sites, origin).Fit!)!.Value.KmPerYear;
}
