namespace RangeMap.Grids.Tests;

/// <summary>Against the published test points and nodes of OSTN15 (Published/SOURCE.md).</summary>
public sealed class Ostn15Tests
{
    private static readonly INationalGrid British = NationalGrid.Get(GridId.British);

    [Fact]
    public void EveryPublishedPointComesOutWithinAMillimetre()
    {
        foreach (var row in PublishedTable.Read("ostn15-points.csv"))
        {
            var found = British.FromLatLon(new(row.Number("etrs89_lat"), row.Number("etrs89_lon")));
            Assert.Equal(row.Number("osgb36_e"), found.Easting, 0.001);
            Assert.Equal(row.Number("osgb36_n"), found.Northing, 0.001);
        }
    }

    [Fact]
    public void EveryPublishedPointGoesBackWithinAMillimetre()
    {
        foreach (var row in PublishedTable.Read("ostn15-points.csv"))
        {
            var found = British.ToLatLon(new(row.Number("inverse_input_e"), row.Number("inverse_input_n")));
            var metresPerDegree = 111_320 * Math.Cos(row.Number("etrs89_lat") * Math.PI / 180);
            Assert.Equal(0, (found.Latitude - row.Number("etrs89_lat")) * 111_320, 0.001);
            Assert.Equal(0, (found.Longitude - row.Number("etrs89_lon")) * metresPerDegree, 0.001);
        }
    }

    [Fact]
    public void EveryPublishedNodeHasItsShiftToTheMillimetreOfTheData()
    {
        // The data file is 1 mm too far north at 0.8 % of its nodes (gis-data/ostn15/SOURCE.md), hence the tolerance north.
        foreach (var row in PublishedTable.Read("ostn15-nodes.csv"))
        {
            var node = new EastNorth(row.Number("east_km") * 1000, row.Number("north_km") * 1000);
            var shifted = Ostn15.ToOsgb36(node);
            Assert.Equal(row.Number("east_shift_m"), shifted.Easting - node.Easting, 1e-6);
            Assert.Equal(row.Number("north_shift_m"), shifted.Northing - node.Northing, 0.001 + 1e-6);
        }
    }

    [Fact]
    public void ThereAndBackAgainClosesToATenthOfAMillimetreOverTheWholeGrid()
    {
        for (var e = 500.0; e < 700_000; e += 7_321)
        {
            for (var n = 500.0; n < 1_249_000; n += 7_129)
            {
                var back = Ostn15.ToOsgb36(Ostn15.ToEtrs89(new(e, n)));
                Assert.Equal(e, back.Easting, 1e-6);
                Assert.Equal(n, back.Northing, 1e-6);
            }
        }
    }

    [Fact]
    public void TheLastRowAndColumnOfNodesAreReachedExactly()
    {
        // Node (700, 1250), the last of the grid: 109.209 east, -53.064 north (published record 876951).
        var corner = Ostn15.ToOsgb36(new(700_000, 1_250_000));
        Assert.Equal(700_109.209, corner.Easting, 1e-6);
        Assert.Equal(1_249_946.936, corner.Northing, 1e-6);
    }

    [Fact]
    public void OutsideTheGridTheRimIsContinuedWithoutATear()
    {
        var inside = Ostn15.ToOsgb36(new(0.001, 500_000));
        var outside = Ostn15.ToOsgb36(new(-0.001, 500_000));
        Assert.Equal(0.002, inside.Easting - outside.Easting, 1e-6);
        Assert.True(Ostn15.Defines(new(0, 0)));
        Assert.False(Ostn15.Defines(new(-0.001, 500_000)));
        Assert.False(Ostn15.Defines(new(300_000, 1_250_000.001)));
    }

    [Fact]
    public void PlacesFarOutSayThatTheyAreApproximate()
    {
        Assert.False(British.IsApproximate(new(52.65, 1.71)));
        Assert.True(British.IsApproximate(new(53.35, -10.2)));
        Assert.False(NationalGrid.Get(GridId.Irish).IsApproximate(new(53.35, -10.2)));
    }
}
