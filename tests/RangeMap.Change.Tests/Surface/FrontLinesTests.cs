namespace RangeMap.Change.Tests.Surface;

public class FrontLinesTests
{
    [Fact]
    public void ARoundFrontIsARingOfItsRadius()
    {
        var lattice = Lattice(12, (x, y) => Math.Sqrt(x * x + y * y) / 5);
        var line = Assert.Single(FrontLines.At(lattice, 10));
        Assert.Equal(line[0], line[^1]);
        Assert.All(line, point => Assert.InRange(Math.Sqrt(point.X * point.X + point.Y * point.Y), 49, 51));
    }

    [Fact]
    public void NoLineCrossesMissingSquares()
    {
        var lattice = Lattice(10, (x, _) => x).Where(pair => pair.Key.Row is < -1 or > 1).ToDictionary();
        var lines = FrontLines.At(lattice, 5);
        Assert.Equal(2, lines.Count);
        Assert.All(lines.SelectMany(line => line), point => Assert.True(Math.Abs(point.Y) >= 20 && Math.Abs(point.X - 5) < 1e-9));
    }

    [Fact]
    public void ALevelThatNothingPassesGivesNoLine()
    {
        Assert.Empty(FrontLines.At(Lattice(5, (_, _) => 1), 2));
        Assert.Empty(FrontLines.At(new Dictionary<(int, int), (PlanePoint, double)>(), 2));
    }

    private static Dictionary<(int Column, int Row), (PlanePoint Place, double Value)> Lattice(int reach, Func<double, double, double> value) =>
        (from c in Enumerable.Range(-reach, 2 * reach + 1) from r in Enumerable.Range(-reach, 2 * reach + 1) select ((c, r), (new PlanePoint(c * 10, r * 10), value(c * 10, r * 10)))).ToDictionary();
}
