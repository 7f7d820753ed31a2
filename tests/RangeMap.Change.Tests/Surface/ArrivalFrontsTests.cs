namespace RangeMap.Change.Tests.Surface;

public class ArrivalFrontsTests
{
    [Fact]
    public void TheLineOfAYearRunsWhereAnInventedFrontRanAndTheBandHoldsIt()
    {
        var world = new SimulatedArrivals { CountryKm = 220, Years = 35 };
        var (near, all, held, onFront) = (0, 0, 0, 0);
        for (var seed = 1UL; seed <= 4; seed++)
        {
            var sites = world.Make(seed).Sites;
            var fit = ArrivalModel.Fit(sites, world.Origin).Fit!;
            var fronts = ArrivalFronts.Of(fit, [Lattice(sites, world.SideKm)], world.SideKm);
            foreach (var year in (int[])[15, 22, 29])
            {
                // A visit of a year finds what came before that year: an arrival within it counts for the next.
                var radius = world.SpeedKmPerYear * year;
                var front = fronts.At(year);
                var band = front.Band.ToHashSet();
                foreach (var point in front.Lines.SelectMany(line => line))
                    (all, near) = (all + 1, near + (Math.Abs(PlanePoint.Km(point, world.Origin) - radius) < 8 ? 1 : 0));
                for (var i = 0; i < sites.Count; i++)
                {
                    if (Math.Abs(PlanePoint.Km(new(sites[i].X, sites[i].Y), world.Origin) - radius) < 2)
                        (onFront, held) = (onFront + 1, held + (band.Contains(i) ? 1 : 0));
                }
            }
        }

        Assert.True(near >= 0.9 * all, $"{near} of {all} points of lines lie within 8 km of the true front");
        Assert.True(held >= 0.9 * onFront, $"{held} of {onFront} squares of the true front lie in the band");
    }

    [Fact]
    public void APlaceLiesBeyondTheNinetyNinePercentLineByAboutItsDistanceFromTheFrontLessTheScatter()
    {
        var world = new SimulatedArrivals { CountryKm = 220, Years = 35 };
        var fit = ArrivalModel.Fit(world.Make(2).Sites, world.Origin).Fit!;
        var place = new PlanePoint(world.Origin.X, 180);
        // Reached after 180 km / 5 km a year; in year 12 the front stood at 60 km, and 99 in 100 squares come less than 2.3 times 1.5 years before it.
        Assert.InRange(fit.KmBeyond(place, 12)!.Value, 80, 120);
        Assert.Null(fit.KmBeyond(place, 36));
        Assert.Null(fit.KmBeyond(new(world.Origin.X, 10), 20));
    }

    [Fact]
    public void WhereTheSurfaceDoesNotPassThroughAYearThereIsNoFront()
    {
        var world = new SimulatedArrivals { CountryKm = 160, Years = 28 };
        var sites = world.Make(1).Sites;
        var front = ArrivalFronts.Of(ArrivalModel.Fit(sites, world.Origin).Fit!, [Lattice(sites, world.SideKm)], world.SideKm).At(-500);
        Assert.Empty(front.Lines);
        Assert.Empty(front.Band);
    }

    private static Dictionary<(int, int), int> Lattice(IReadOnlyList<ArrivalSite> sites, double side) =>
        Enumerable.Range(0, sites.Count).ToDictionary(i => ((int)Math.Floor(sites[i].X / side), (int)Math.Floor(sites[i].Y / side)), i => i);
}
