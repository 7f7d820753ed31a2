namespace RangeMap.Grids.Tests;

public sealed class BritishGridBatchTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(1_003)]
    public void ManyPlacesComeOutAsSingleOnesDo(int count)
    {
        var random = new Random(20_250_109);
        var grid = NationalGrid.Get(GridId.British);
        LatLon[] places = [.. Enumerable.Range(0, count).Select(_ => grid.ToLatLon(new(random.NextDouble() * 700_000, random.NextDouble() * 1_300_000)))];
        double[] eastings = new double[count], northings = new double[count], latitudes = new double[count], longitudes = new double[count];
        BritishGridBatch.FromLatLon(Array.ConvertAll(places, p => p.Latitude), Array.ConvertAll(places, p => p.Longitude), eastings, northings);
        BritishGridBatch.ToLatLon(eastings, northings, latitudes, longitudes);
        for (var k = 0; k < count; k++)
        {
            var point = grid.FromLatLon(places[k]);
            Assert.Equal(point.Easting, eastings[k], 1e-6);
            Assert.Equal(point.Northing, northings[k], 1e-6);
            var place = grid.ToLatLon(new(eastings[k], northings[k]));
            Assert.Equal(place.Latitude, latitudes[k], 1e-11);
            Assert.Equal(place.Longitude, longitudes[k], 1e-11);
        }
    }

    [Fact]
    public void ThePublishedPointsComeOutBothWays()
    {
        // Ordnance Survey, OSTN15 developer pack: 1 mm, the rounding of the table.
        var rows = PublishedTable.Read("ostn15-points.csv");
        double[] Column(string name) => [.. rows.Select(row => row.Number(name))];
        double[] first = new double[rows.Count], second = new double[rows.Count];
        BritishGridBatch.FromLatLon(Column("etrs89_lat"), Column("etrs89_lon"), first, second);
        for (var k = 0; k < rows.Count; k++)
        {
            Assert.Equal(rows[k].Number("osgb36_e"), first[k], 0.001);
            Assert.Equal(rows[k].Number("osgb36_n"), second[k], 0.001);
        }

        BritishGridBatch.ToLatLon(Column("inverse_input_e"), Column("inverse_input_n"), first, second);
        for (var k = 0; k < rows.Count; k++)
        {
            Assert.Equal(rows[k].Number("etrs89_lat"), first[k], 1e-8);
            Assert.Equal(rows[k].Number("etrs89_lon"), second[k], 2e-8);
        }
    }

    [Fact]
    public void ColumnsOfDifferentLengthsAreRefused()
    {
        Assert.Throws<ArgumentException>(() => BritishGridBatch.FromLatLon(new double[3], new double[3], new double[3], new double[2]));
        Assert.Throws<ArgumentException>(() => BritishGridBatch.ToLatLon(new double[3], new double[2], new double[3], new double[3]));
    }
}
