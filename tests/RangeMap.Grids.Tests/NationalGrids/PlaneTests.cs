namespace RangeMap.Grids.Tests;

/// <summary>Against places computed with PROJ 9.1.1 (Published/SOURCE.md): 2 mm, as the table is printed to 1 mm.</summary>
public sealed class PlaneTests
{
    [Theory]
    [InlineData(GridId.British, "bng", 0.002)]
    [InlineData(GridId.Irish, "irish", 0.002)]
    [InlineData(GridId.ChannelIslandsWgs84, "utm30", 0.002)]
    [InlineData(GridId.ChannelIslands, "utm30ed50", 0.002)]
    [InlineData(GridId.IrishTransverseMercator, "itm", 0.002)]
    [InlineData(GridId.European, "laea", 0.002)]
    public void ComputedPlacesComeOutOnEveryPlaneAndGoBack(GridId id, string column, double tolerance)
    {
        var grid = NationalGrid.Get(id);
        var rows = PublishedTable.Read("crs-points.csv").Where(row => row.Has(column + "_e")).ToList();
        Assert.True(rows.Count >= 5);
        foreach (var row in rows)
        {
            var place = new LatLon(row.Number("lat"), row.Number("lon"));
            var found = grid.FromLatLon(place);
            Assert.Equal(row.Number(column + "_e"), found.Easting, tolerance);
            Assert.Equal(row.Number(column + "_n"), found.Northing, tolerance);
            var back = grid.ToLatLon(found);
            Assert.Equal(place.Latitude, back.Latitude, 1e-8);
            Assert.Equal(place.Longitude, back.Longitude, 1e-8);
        }
    }
}
