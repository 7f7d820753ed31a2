namespace RangeMap.Grids.Tests;

public sealed class LandSquaresTests
{
    private static readonly SquareSize[] Listed = [SquareSize.Km1, SquareSize.Km2, SquareSize.Km5, SquareSize.Km10];

    [Theory]
    // Computed from another coast (GSHHG 2.3.7, full) with a script of its own: every square that land touches. No published counts of 2 or 1 km squares were found.
    [InlineData(GridId.British, SquareSize.Km10, 2863)]
    [InlineData(GridId.British, SquareSize.Km5, 10_544)]
    [InlineData(GridId.British, SquareSize.Km2, 62_006)]
    [InlineData(GridId.British, SquareSize.Km1, 241_321)]
    [InlineData(GridId.Irish, SquareSize.Km10, 1018)]
    [InlineData(GridId.Irish, SquareSize.Km5, 3816)]
    [InlineData(GridId.Irish, SquareSize.Km2, 22_510)]
    [InlineData(GridId.Irish, SquareSize.Km1, 87_770)]
    public void CountsAgreeWithAnotherCoastToOneInTwoHundred(GridId grid, SquareSize size, int other) =>
        Assert.Equal(other, RealLand.Squares.Of(grid, size).Count, other / 200.0);

    [Fact]
    public void TheTenKilometreSquaresAreThoseOfAPublishedSurvey()
    {
        // A national survey of birds counts 3,894 squares of 10 km with any land in Britain, Ireland and the islands; code published with it has 1,018 for Ireland.
        Assert.Equal(3894, new[] { GridId.British, GridId.Irish, GridId.ChannelIslands }.Sum(grid => RealLand.Squares.Of(grid, SquareSize.Km10).Count));
        Assert.InRange(RealLand.Squares.Of(GridId.Irish, SquareSize.Km10).Count, 1013, 1023);
    }

    [Fact]
    public void EverySquareWithLandLiesInCoarserOnesWithLand()
    {
        foreach (var size in Listed)
        {
            Assert.All(RealLand.Squares.Of(GridId.Irish, size), square => Assert.True(RealLand.Squares.Has(square)));
            var hectads = RealLand.Squares.Of(GridId.Irish, size).Select(square => square.TryCoarsen(SquareSize.Km10, out var hectad) ? hectad : default).Distinct().Order();
            Assert.Equal(RealLand.Squares.Of(GridId.Irish, SquareSize.Km10), hectads);
        }
    }

    [Fact]
    public void OrderIsThatOfTheCodesAndNoSquareComesTwice() => Assert.All(Listed, size =>
    {
        var squares = RealLand.Squares.Of(GridId.British, size);
        Assert.Equal(squares.Distinct().Order(), squares);
    });

    [Theory]
    [InlineData("SK18", true, 1.0)] // the Peak
    [InlineData("TQ38", true, 1.0)]
    [InlineData("SV80", true, null)] // Scilly, mostly sea
    [InlineData("SS00", false, 0.0)] // the sea off Bude
    [InlineData("J36", true, 1.0)]
    [InlineData("WV65", true, null)]
    public void AKnownSquareHasItsLand(string reference, bool has, double? share)
    {
        var square = GridReference.Parse(reference);
        Assert.Equal(has, RealLand.Squares.Has(square));
        if (share is { } known)
            Assert.Equal(known, RealLand.Squares.ShareOf(square), 0.001);
    }

    [Fact]
    public void OtherSizesAreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RealLand.Squares.Of(GridId.British, SquareSize.Km100));
        Assert.Throws<ArgumentOutOfRangeException>(() => RealLand.Squares.Has(GridReference.Parse("TQ308801")));
        Assert.Empty(RealLand.Squares.Of(GridId.European, SquareSize.Km10));
    }

    [Fact]
    public void MonadsGiveTheSquaresThatHoldThem()
    {
        // Bit 0 is the south-western monad, bit 99 the north-eastern.
        var squares = LandSquares.Read(new StringReader("grid,square,easting,northing,land,source,monads\nGB,SU12,410000,120000,1.5,coast,8000000000000000000000001\n"));
        Assert.Equal(["SU1020", "SU1929"], squares.Of(GridId.British, SquareSize.Km1).Select(square => square.ToString()));
        Assert.Equal(["SU12A", "SU12Z"], squares.Of(GridId.British, SquareSize.Km2).Select(square => square.ToString()));
        Assert.Equal(["SU12SW", "SU12NE"], squares.Of(GridId.British, SquareSize.Km5).Select(square => square.ToString()));
        Assert.False(squares.Has(GridReference.Parse("SU12NW")));
        Assert.Equal(0.015, squares.ShareOf(GridReference.Parse("SU12")));
    }

    [Theory]
    [InlineData("GB,SU12,410000,120000,1.5,coast")]
    [InlineData("XX,SU12,410000,120000,1.5,coast,all")]
    [InlineData("GB,SU12,410000,120001,1.5,coast,all")]
    [InlineData("GB,SU12,410000,120000,much,coast,all")]
    [InlineData("GB,SU12,410000,120000,1.5,coast,some")]
    [InlineData("GB,SU12,410000,120000,1.5,coast,10000000000000000000000000")]
    [InlineData("GB,SU12,410000,120000,1.5,coast,100000000000000000000000000000000000")]
    public void ABadRowIsRefusedAndQuoted(string row) =>
        Assert.Contains(row, Assert.Throws<FormatException>(() => LandSquares.Read(new StringReader($"header\n{row}\n"))).Message, StringComparison.Ordinal);
}
