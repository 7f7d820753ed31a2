using CsCheck;

namespace RangeMap.Grids.Tests;

public sealed class SquareTests
{
    [Fact]
    public void APointOnTheEasternOrNorthernEdgeBelongsToTheNextSquare()
    {
        Assert.Equal("TQ48", Square.At(GridId.British, SquareSize.Km10, new(540_000, 180_000)).ToString());
        Assert.Equal("TQ39", Square.At(GridId.British, SquareSize.Km10, new(530_000, 190_000)).ToString());
        Assert.Equal("TQ38", Square.At(GridId.British, SquareSize.Km10, new(Math.BitDecrement(540_000.0), 180_000)).ToString());
        Assert.False(GridReference.Parse("TQ38").Contains(new(540_000, 185_000)));
        Assert.True(GridReference.Parse("TQ38").Contains(new(530_000, 180_000)));
    }

    [Fact]
    public void TheLetteredAreaIsHalfOpen()
    {
        var british = NationalGrid.Get(GridId.British);
        Assert.True(british.Contains(new(0, 0)));
        Assert.False(british.Contains(new(700_000, 0)));
        Assert.False(british.Contains(new(0, 1_300_000)));
        Assert.Null(british.Letters(new(-0.001, 0)));
        Assert.Null(NationalGrid.Get(GridId.Irish).Letters(new(500_000, 0)));
        Assert.Null(NationalGrid.Get(GridId.ChannelIslands).Letters(new(550_000, 5_600_000)));
    }

    [Fact]
    public void ACodeGivesItsSquareBack() => SomeGrids.Square.Sample(square => Square.FromCode(square.Code) == square);

    [Fact]
    public void TheSquareOfAPointHoldsIt() =>
        (from grid in SomeGrids.Grid from size in SomeGrids.Size from point in SomeGrids.PointOf(grid) select (grid, size, point))
        .Sample(t => Square.At(t.grid, t.size, t.point).Contains(t.point), iter: 10_000);

    [Fact]
    public void ASquareNestsInEveryCoarserSizeButForTetradsThatStraddleQuadrants() => Gen.Select(SomeGrids.Square, SomeGrids.Size).Sample((square, size) =>
    {
        var nests = square.TryCoarsen(size, out var container);
        var straddles = square.Size == SquareSize.Km2 && size == SquareSize.Km5 && (square.Easting % 10_000 == 4_000 || square.Northing % 10_000 == 4_000);
        Assert.Equal(size >= square.Size && !straddles, nests);
        Assert.True(!nests || container == Square.At(square.Grid, size, square.Centre));
    }, iter: 10_000);
}
