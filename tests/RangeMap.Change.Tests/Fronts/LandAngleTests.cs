namespace RangeMap.Change.Tests.Fronts;

public class LandAngleTests
{
    private static readonly SpreadOrigin Origin = new(0, 0);

    [Theory]
    [InlineData(360)]
    [InlineData(180)]
    [InlineData(90)]
    [InlineData(30)]
    public void ADiscCutByStraightCoastsHasTheirAngle(int degrees)
    {
        var options = new SpreadOptions { Origin = Origin, SquareSideKm = 1, Land = Sector(degrees) };
        Assert.Equal(degrees, LandAngle.Of(Finds(reach: 60), options) * 180 / Math.PI, 0.03 * degrees + 1);
    }

    [Fact]
    public void AGivenAngleGoesBeforeTheLandAndNoLandMeansTheWholeCircle()
    {
        Assert.Equal(1, LandAngle.Of(Finds(60), new() { Origin = Origin, OpenAngle = 1, Land = Sector(180) }));
        Assert.Equal(2 * Math.PI, LandAngle.Of(Finds(60), new() { Origin = Origin }));
        Assert.Equal(2 * Math.PI, LandAngle.Of(Finds(60), new() { Origin = Origin, Land = [] }));
        Assert.Equal(2 * Math.PI, LandAngle.Of(Finds(60), new() { Origin = Origin, Land = [new(9000, 9000)] }));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(180)]
    [InlineData(90)]
    public void TheSpeedOfASectorFullyFoundIsThatOfItsFront(int degrees)
    {
        const double speed = 4;
        var finds = Sector(degrees).Select(place => new ArrivalPoint(place.X, place.Y, Math.Ceiling(PlanePoint.Km(place, new(0, 0)) / speed))).Where(find => find.Time <= 18);
        var report = Spread.Measure(finds, new() { Origin = Origin, SquareSideKm = 1, Land = Sector(degrees) });
        var area = report.Estimators.Single(estimate => estimate.Method == SpreadMethods.RootArea);
        Assert.Equal(speed, area.KmPerYear!.Value, 0.05 * speed);
        Assert.Equal(degrees < 360, area.Note!.Contains("degrees", StringComparison.Ordinal));
    }

    private static FirstRecords Finds(int reach) =>
        FirstRecords.FromPoints(Enumerable.Range(0, 100).Select(i => new ArrivalPoint(0, i * reach / 95.0, 2000 + i / 10)), new() { Origin = Origin });

    /// <summary>Centres of squares of 1 km in a sector north of the origin.</summary>
    private static List<PlanePoint> Sector(int degrees) =>
        [.. from x in Enumerable.Range(-80, 160) from y in Enumerable.Range(-80, 160) let place = new PlanePoint(x + 0.5, y + 0.5) where Math.Abs(Math.Atan2(place.X, place.Y)) <= degrees * Math.PI / 360 select place];
}
