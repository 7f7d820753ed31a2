namespace RangeMap.Change.Tests.Surface;

public class LocalPlaneTests
{
    [Fact]
    public void NineSquaresGiveTheSpeedComputedWithR()
    {
        // Computed with R 4.2.2 (lm, vcov): a 3 by 3 lattice of 10 km.
        double[] years = [2000, 2002, 2004, 2001.5, 2003, 2006, 2003, 2005, 2007];
        var plane = LocalPlane.Fit([.. years.Select((year, i) => (new PlanePoint(i % 3 * 10, i / 3 * 10), year))])!.Value;
        Assert.Equal(0.2083333, plane.East, 1e-6);
        Assert.Equal(0.15, plane.North, 1e-6);
        Assert.Equal(0.01128339, plane.Error, 1e-6);
        Assert.Equal(3.895365, plane.KmPerYear, 1e-5);
        Assert.Equal(54.24611, plane.Bearing, 1e-4);
        Assert.Equal(3.517104, plane.SpeedInterval!.Value.Low, 1e-4);
        Assert.Equal(4.364794, plane.SpeedInterval!.Value.High, 1e-4);
    }

    [Fact]
    public void ThreeArrivalsDetermineThePlane()
    {
        // By hand: 2 years over 10 km east and 1 over 10 km north make 10 / sqrt(5) km a year.
        var plane = LocalPlane.Fit([(new(0, 0), 2000), (new(10, 0), 2002), (new(0, 10), 2001)])!.Value;
        Assert.Equal(4.472136, plane.KmPerYear, 1e-6);
        Assert.Equal(63.43495, plane.Bearing, 1e-5);
    }

    [Fact]
    public void AFrontThatIsRoundReadsALittleFastFromAPlane()
    {
        // Computed: an exact front of 5 km a year from the origin, seen 50 km away over 40 by 40 km.
        var points = from x in new[] { -20, -10, 0, 10, 20 } from y in new[] { 30, 40, 50, 60, 70 } select (new PlanePoint(x, y), 2000 + Math.Sqrt(x * x + y * y) / 5.0);
        Assert.Equal(5.212944, LocalPlane.Fit([.. points])!.Value.KmPerYear, 1e-5);
    }

    [Fact]
    public void PointsOnALineOrTooFewGiveNoPlane()
    {
        Assert.Null(LocalPlane.Fit([(new(0, 0), 1), (new(1, 1), 2)]));
        Assert.Null(LocalPlane.Fit([(new(0, 0), 1), (new(1, 1), 2), (new(2, 2), 3), (new(3, 3), 1)]));
        Assert.Null(LocalPlane.Fit([(new(0, 0), 2000), (new(10, 0), 2004), (new(0, 10), 2001), (new(10, 10), 1997), (new(5, 5), 2009)])!.Value.SpeedInterval);
    }
}
