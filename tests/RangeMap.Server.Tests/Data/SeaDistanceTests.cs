using RangeMap.Grids;

namespace RangeMap.Server.Tests;

public sealed class SeaDistanceTests
{
    [Theory]
    [InlineData("J83", 15, 25)] // between Ireland and Man
    [InlineData("SS00", 3, 20)] // off Bude
    [InlineData("NZ2999", 1, 3)] // a 1 km square off Blyth
    [InlineData("OM", 100, 230)] // the middle of the North Sea
    public void ASquareInTheSeaIsSoFarOut(string square, double leastKm, double mostKm)
    {
        var km = SeaDistance.Km(GridReference.Parse(square));
        Assert.NotNull(km);
        Assert.InRange(km.Value, leastKm, mostKm);
    }

    [Theory]
    [InlineData("TQ38")]
    [InlineData("TQ308801")]
    [InlineData("SV80")] // Scilly: 3 % land
    [InlineData("NN166712")] // Ben Nevis
    [InlineData("J0575")] // Lough Neagh
    [InlineData("NW35")] // a British square in Northern Ireland
    [InlineData("ITM715734")]
    [InlineData("WV64")]
    [InlineData("NZ")] // its middle is at sea
    [InlineData("31UDQ51")] // Paris
    [InlineData("56HLH34")] // Sydney
    public void ASquareWithLandOrFarAwayIsNot(string square) => Assert.Null(SeaDistance.Km(GridReference.Parse(square)));

    [Fact]
    public void NobodyIsAtSeaOnTheShore()
    {
        // Squares of 10 m every 100 m along a shore of sand: those seaward count only from 200 m on.
        var distances = Enumerable.Range(0, 40).Select(k => SeaDistance.Km(new Square(GridId.British, SquareSize.M10, 650_000 + 100 * k, 313_000))).OfType<double>().ToList();
        Assert.NotEmpty(distances);
        Assert.All(distances, km => Assert.True(km >= 0.2));
        Assert.Equal(distances.Order(), distances);
    }
}
