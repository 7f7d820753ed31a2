namespace RangeMap.Grids.Tests;

/// <summary>Which grid a place is recorded in. Positions of towns and capes: from memory to about 0.02 degree, not verified; none lies nearer to a dividing line than 0.1 degree.</summary>
public sealed class ForPlaceTests
{
    [Theory]
    [InlineData("Belfast", 54.60, -5.93)]
    [InlineData("Larne", 54.85, -5.81)]
    [InlineData("Portavogie", 54.46, -5.44)]
    [InlineData("Donaghadee", 54.64, -5.53)]
    [InlineData("Kilkeel", 54.06, -6.01)]
    [InlineData("Rathlin", 55.30, -6.19)]
    [InlineData("Ballycastle", 55.20, -6.25)]
    [InlineData("Torr Head", 55.20, -6.06)]
    [InlineData("Derry", 55.00, -7.31)]
    [InlineData("Malin Head", 55.38, -7.37)]
    [InlineData("Inishtrahull", 55.43, -7.24)]
    [InlineData("Tory Island", 55.26, -8.21)]
    [InlineData("Dublin", 53.35, -6.26)]
    [InlineData("Rosslare", 52.25, -6.34)]
    [InlineData("Mizen Head", 51.45, -9.82)]
    [InlineData("Great Blasket", 52.09, -10.54)]
    public void TheIslandOfIrelandIsIrish(string name, double latitude, double longitude) => Check(GridId.Irish, name, latitude, longitude);

    [Theory]
    [InlineData("Stranraer", 54.90, -5.03)]
    [InlineData("Portpatrick", 54.84, -5.12)]
    [InlineData("Mull of Galloway", 54.64, -4.86)]
    [InlineData("Campbeltown", 55.42, -5.61)]
    [InlineData("Mull of Kintyre", 55.30, -5.80)]
    [InlineData("Port Ellen", 55.63, -6.19)]
    [InlineData("Portnahaven", 55.68, -6.51)]
    [InlineData("Mull of Oa", 55.59, -6.32)]
    [InlineData("Colonsay", 56.07, -6.21)]
    [InlineData("Tiree", 56.50, -6.88)]
    [InlineData("Barra Head", 56.78, -7.65)]
    [InlineData("St Kilda", 57.81, -8.57)]
    [InlineData("Douglas", 54.15, -4.48)]
    [InlineData("Calf of Man", 54.05, -4.82)]
    [InlineData("Holyhead", 53.31, -4.63)]
    [InlineData("St David's", 51.88, -5.27)]
    [InlineData("Grassholm", 51.73, -5.48)]
    [InlineData("St Mary's", 49.91, -6.31)]
    [InlineData("Land's End", 50.07, -5.71)]
    [InlineData("The Lizard", 49.96, -5.20)]
    [InlineData("St Catherine's Point", 50.58, -1.30)]
    [InlineData("Beachy Head", 50.74, 0.25)]
    [InlineData("Dungeness", 50.91, 0.97)]
    [InlineData("Dover", 51.13, 1.31)]
    [InlineData("Lowestoft", 52.48, 1.75)]
    [InlineData("Muckle Flugga", 60.86, -0.89)]
    public void GreatBritainAndManAreBritish(string name, double latitude, double longitude) => Check(GridId.British, name, latitude, longitude);

    [Theory]
    [InlineData("St Helier", 49.19, -2.11)]
    [InlineData("Gorey", 49.20, -2.02)]
    [InlineData("St Peter Port", 49.46, -2.54)]
    [InlineData("Sark", 49.43, -2.36)]
    [InlineData("St Anne", 49.71, -2.20)]
    [InlineData("Casquets", 49.72, -2.38)]
    [InlineData("Minquiers", 48.97, -2.07)]
    [InlineData("Ecrehous", 49.29, -1.93)]
    public void TheChannelIslandsAreOnTheEd50Grid(string name, double latitude, double longitude) => Check(GridId.ChannelIslands, name, latitude, longitude);

    [Theory]
    [InlineData("Cherbourg", 49.64, -1.62)]
    [InlineData("Cap de la Hague", 49.73, -1.94)]
    [InlineData("Carteret", 49.37, -1.80)]
    [InlineData("Granville", 48.84, -1.60)]
    [InlineData("Chausey", 48.87, -1.82)]
    [InlineData("Roches Douvres", 49.11, -2.81)]
    [InlineData("Dieppe", 49.92, 1.08)]
    [InlineData("Boulogne", 50.73, 1.60)]
    [InlineData("Cap Gris-Nez", 50.87, 1.58)]
    [InlineData("Calais", 50.96, 1.85)]
    [InlineData("Dunkirk", 51.04, 2.38)]
    [InlineData("Sumba", 61.40, -6.70)]
    [InlineData("Bergen", 60.39, 5.32)]
    [InlineData("Rockall", 57.60, -13.69)]
    [InlineData("the equator", 0, 0)]
    [InlineData("nowhere", double.NaN, double.NaN)]
    public void OtherLandHasNoGrid(string name, double latitude, double longitude) => Check(null, name, latitude, longitude);

    [Fact]
    public void GridsAreFoundByNumberAndByCode()
    {
        Assert.All(NationalGrid.All, grid => Assert.Same(grid, NationalGrid.Get(grid.Id)));
        Assert.All(NationalGrid.All, grid => Assert.Same(grid, NationalGrid.Find(grid.Code.ToLowerInvariant())));
        Assert.Null(NationalGrid.Find("XX"));
        Assert.Throws<ArgumentOutOfRangeException>(() => NationalGrid.Get(0));
    }

    private static void Check(GridId? expected, string name, double latitude, double longitude) =>
        Assert.True(NationalGrid.ForPlace(new(latitude, longitude))?.Id == expected, name);
}
