using CsCheck;

namespace RangeMap.Grids.Tests;

public sealed class ForPlaceAnywhereTests
{
    [Theory]
    [InlineData("London", 51.50, -0.12, GridId.British)]
    [InlineData("Dublin", 53.35, -6.26, GridId.Irish)]
    [InlineData("St Helier", 49.19, -2.11, GridId.ChannelIslands)]
    [InlineData("Cherbourg", 49.64, -1.62, GridId.UtmNorth)]
    [InlineData("Rockall", 57.60, -13.69, GridId.UtmNorth)]
    [InlineData("Sumba", 61.40, -6.70, GridId.UtmNorth)]
    [InlineData("the equator", 0, 0, GridId.UtmNorth)]
    [InlineData("Sydney", -33.87, 151.21, GridId.UtmSouth)]
    [InlineData("the South Pole", -90, 0, null)]
    [InlineData("84 north", 84, 0, null)]
    [InlineData("nowhere", double.NaN, double.NaN, null)]
    [InlineData("no longitude", 10, 181, null)]
    public void EveryPlaceButThePolesHasAGrid(string name, double latitude, double longitude, GridId? grid) =>
        Assert.True(NationalGrid.ForPlaceAnywhere(new(latitude, longitude))?.Id == grid, name);

    [Fact]
    public void TheGridOfAPlaceContainsItAndNamesItsSquares() => SomeGrids.Place(-80, 84).Sample(place =>
    {
        var grid = NationalGrid.ForPlaceAnywhere(place);
        Assert.NotNull(grid);
        var square = SquareFinder.SquareAt(grid, place, SquareSize.Km10);
        Assert.NotNull(square);
        Assert.Equal(square.Value, GridReference.Parse(square.Value.ToString()));
    }, iter: 20_000);
}
