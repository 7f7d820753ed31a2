using CsCheck;

namespace RangeMap.Change.Tests.Size;

public class ExtentTests
{
    private static readonly SurveySquare[] _six =
        [.. new[] { (400, 200), (410, 200), (430, 210), (420, 240), (450, 230), (400, 250) }.Select(c => SurveySquare.Upright(c.Item1, c.Item2, 10))];

    private static readonly Gen<SurveySquare[]> _squares =
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20]).Array[1, 40].Select(places => places.Distinct().Select(p => SurveySquare.Upright(p.Item1 * 10, p.Item2 * 10, 10)).ToArray());

    // Computed by hand: hull of the corners of six squares, and of their middles.
    [Fact]
    public void TheHullOfCornersIsLargerThanThatOfCentres()
    {
        Assert.Equal(2600, ExtentOfOccurrence.Km2(_six), 9);
        Assert.Equal(1500, ConvexHull.Of(_six.Select(square => square.Centre)).Area, 9);
        Assert.Equal(600, _six.Sum(square => square.AreaKm2), 9);
    }

    [Fact]
    public void OneSquareHasItsOwnAreaAndNoneHasNothing()
    {
        Assert.Equal(100, ExtentOfOccurrence.Km2(_six[..1]), 9);
        Assert.Equal(0, ExtentOfOccurrence.Km2([]));
        Assert.Empty(ExtentOfOccurrence.Outline([]));
        Assert.Equal(4, ExtentOfOccurrence.Outline(_six[..1]).Count);
    }

    [Fact]
    public void TheOutlineHoldsEveryCornerAndIsConvex() => _squares.Sample(squares =>
    {
        var outline = ExtentOfOccurrence.Outline(squares);
        for (var i = 0; i < outline.Count; i++)
        {
            PlanePoint a = outline[i], b = outline[(i + 1) % outline.Count];
            Assert.All(squares.SelectMany(ExtentOfOccurrence.CornersOf), c => Assert.True((b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X) >= 0));
        }
    });

    [Fact]
    public void TheExtentIsNoLessThanTheSquaresAndNoMoreThanTheBoxRoundThem() => _squares.Sample(squares =>
    {
        var (km2, corners) = (ExtentOfOccurrence.Km2(squares), squares.SelectMany(ExtentOfOccurrence.CornersOf).ToList());
        Assert.True(km2 >= squares.Sum(square => square.AreaKm2) - 1e-9);
        Assert.True(km2 <= (corners.Max(c => c.X) - corners.Min(c => c.X)) * (corners.Max(c => c.Y) - corners.Min(c => c.Y)) + 1e-9);
    });

    [Fact]
    public void ShiftingMirroringAndTurningKeepTheExtent() => _squares.Sample(squares =>
    {
        var km2 = ExtentOfOccurrence.Km2(squares);
        Assert.Equal(km2, ExtentOfOccurrence.Km2([.. squares.Select(s => SurveySquare.Upright(s.SouthWest.X + 470, s.SouthWest.Y - 330, 10))]), 6);
        Assert.Equal(km2, ExtentOfOccurrence.Km2([.. squares.Select(s => SurveySquare.Upright(-s.SouthEast.X, s.SouthWest.Y, 10))]), 6);
        Assert.Equal(km2, ExtentOfOccurrence.Km2([.. squares.Select(s => SurveySquare.Upright(-s.NorthWest.Y, s.SouthWest.X, 10))]), 6);
    });

    [Fact]
    public void MoreSquaresNeverMakeTheExtentSmaller() => Gen.Select(_squares, _squares).Sample((some, more) =>
        Assert.True(ExtentOfOccurrence.Km2([.. some.Union(more)]) >= ExtentOfOccurrence.Km2(some) - 1e-9));

    [Fact]
    public void PlacesInALineHaveNoArea() => Assert.Equal(0, ConvexHull.Of([new(0, 0), new(5, 5), new(9, 9), new(5, 5)]).Area);

    [Fact]
    public void TheAlphaHullLeavesEmptyLandOutAndHoldsEverySquare() => _squares.Sample(squares =>
    {
        var cut = 2 * Triangulation.Of(squares).MeanEdgeKm;
        Assert.True(AlphaHull.Km2(squares, cut) <= ExtentOfOccurrence.Km2(squares) + 1e-6);
        Assert.True(AlphaHull.Km2(squares, Math.Max(cut, 15)) >= squares.Sum(square => square.AreaKm2) - 1e-6);
        Assert.Equal(ConvexHull.Of(squares.SelectMany(ExtentOfOccurrence.CornersOf)).Area, AlphaHull.Km2(squares, 1e6), 6);
    });

    [Fact]
    public void TwoClustersFarApartHaveTheirOwnAreasOnly()
    {
        var squares = Surveys.Board(3, 3).Concat(Surveys.Board(3, 3, west: 500)).ToArray();
        Assert.Equal(1800, AlphaHull.Km2(squares, 25), 6);
        Assert.Equal(33 * 300, ExtentOfOccurrence.Km2(squares), 6);
    }
}
