using CsCheck;

namespace RangeMap.Maps.Tests.Printed;

public class LineThinningTests
{
    private static readonly Gen<PaperPoint[]> Lines = Gen.Select(Gen.Double[0, 10], Gen.Double[0, 10], (x, y) => new PaperPoint(x, y)).Array[2, 60];

    [Fact]
    public void NoPointLeftOutLiesFartherThanTheTolerance() =>
        Lines.Select(Gen.Double[0, 3]).Sample((line, tolerance) =>
        {
            var thin = LineThinning.Thin(line, tolerance);
            Assert.Equal((line[0], line[^1]), (thin[0], thin[^1]));
            Assert.All(line, point => Assert.True(thin.Zip(thin.Skip(1), (a, b) => Distance(point, a, b)).Min() <= tolerance + 1e-9));
        }, seed: "0000KoZKc5N3");

    [Fact]
    public void ALineDrawnBackwardsKeepsTheSamePoints() =>
        Lines.Where(line => line[0] != line[^1]).Select(Gen.Double[0, 3]).Sample((line, tolerance) =>
        {
            var back = LineThinning.Thin(line.AsEnumerable().Reverse().ToArray(), tolerance);
            back.Reverse();
            Assert.Equal(LineThinning.Thin(line, tolerance), back);
        }, seed: "0000KoZKc5N3");

    [Fact]
    public void ARingCutByABoxLiesWithinIt()
    {
        var box = new PaperBox(2, 3, 4, 5);
        Lines.Where(line => line.Length > 2).Sample(
            line => Assert.All(BoxClip.Ring(line, box), point => Assert.True(point.X >= 2 - 1e-9 && point.X <= 6 + 1e-9 && point.Y >= 3 - 1e-9 && point.Y <= 8 + 1e-9)), seed: "0000KoZKc5N3");
    }

    [Fact]
    public void ASquareCutByABoxIsTheirCommonPart()
    {
        var cut = BoxClip.Ring([new(0, 0), new(4, 0), new(4, 4), new(0, 4)], new(2, 3, 10, 10));
        Assert.Equal([new(2, 3), new(4, 3), new(4, 4), new(2, 4)], cut.OrderBy(point => (point.Y, point.Y > 3 ? -point.X : point.X)));
    }

    private static double Distance(PaperPoint p, PaperPoint a, PaperPoint b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, length = dx * dx + dy * dy;
        var t = length == 0 ? 0 : Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / length, 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - t * dx, 2) + Math.Pow(p.Y - a.Y - t * dy, 2));
    }
}
