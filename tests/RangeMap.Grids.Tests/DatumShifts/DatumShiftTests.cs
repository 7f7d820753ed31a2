using CsCheck;

namespace RangeMap.Grids.Tests;

public sealed class DatumShiftTests
{
    [Fact]
    public void TheGuidesPlaceOnOsgb36ComesOutOnEtrs89()
    {
        // Ordnance Survey guide, Caister water tower: on the National Grid 651409.804 313177.450, ETRS89 52.658007833 1.716073973.
        // The OSGB36 latitude and longitude of that place follow from the guide's own projection example, whose place lies 0.1 m away.
        var airy = new RedfearnTransverseMercator(Ellipsoid.Airy, 49, -2, 0.9996012717, 400_000, -100_000).Inverse(new(651_409.804, 313_177.450));
        Assert.Equal(52.65757030, airy.Latitude, 2e-6);
        var found = DatumShift.ToWgs84(airy, GeodeticDatum.Osgb36);
        Assert.Equal(52.658007833, found.Latitude, 2e-8);
        Assert.Equal(1.716073973, found.Longitude, 2e-8);
    }

    [Fact]
    public void Osgb36LiesWithinFiveMetresOfTheSevenParameterShift()
    {
        // Over two million places on land the shift EPSG:1314 differs from OSTN15 by at most 5.02 m: computed with an independent script.
        var shift = new HelmertShift(446.448, -125.157, 542.06, 0.150, 0.247, 0.842, -20.489);
        foreach (var row in PublishedTable.Read("ostn15-points.csv"))
        {
            var grid = new EastNorth(row.Number("osgb36_e"), row.Number("osgb36_n"));
            var airy = new RedfearnTransverseMercator(Ellipsoid.Airy, 49, -2, 0.9996012717, 400_000, -100_000).Inverse(grid);
            var place = DatumShift.ToWgs84(airy, GeodeticDatum.Osgb36);
            var (latitude, longitude) = Ellipsoid.Wgs84.ToGeodetic(shift.Forward(Ellipsoid.Airy.ToGeocentric(airy.Latitude * Math.PI / 180, airy.Longitude * Math.PI / 180, 0)));
            Assert.InRange(Math.Abs(latitude * 180 / Math.PI - place.Latitude) * 111_300, 0, 5.1);
            Assert.InRange(Math.Abs(longitude * 180 / Math.PI - place.Longitude) * 111_300 * Math.Cos(latitude), 0, 5.1);
        }
    }

    [Fact]
    public void Ed50MovesAPlaceAsItsGridDoes()
    {
        // St Helier: ED50 minus WGS84 on UTM zone 30 is 103 m east and 216 m north (computed with PROJ 9.1.1: 565248.1 5448733.5 and 565145.2 5448517.5).
        var place = new LatLon(49.186, -2.106);
        var zone30 = new KruegerTransverseMercator(Ellipsoid.International1924, 0, -3, 0.9996, 500_000, 0);
        var older = DatumShift.FromWgs84(place, GeodeticDatum.Ed50);
        var found = zone30.Forward(older.Latitude * Math.PI / 180, older.Longitude * Math.PI / 180);
        Assert.Equal(565_248.1, found.Easting, 0.1);
        Assert.Equal(5_448_733.5, found.Northing, 0.1);
    }

    [Fact]
    public void EveryDatumGoesThereAndBack() =>
        (from datum in SomeGrids.OneOf(Enum.GetValues<GeodeticDatum>())
         from latitude in Gen.Double[49.5, 60.5]
         from longitude in Gen.Double[-6.5, 1.8]
         select (datum, place: new LatLon(latitude, longitude))).Sample(t =>
    {
        var back = DatumShift.ToWgs84(DatumShift.FromWgs84(t.place, t.datum), t.datum);
        Assert.Equal(t.place.Latitude, back.Latitude, 2e-8); // 2 mm, the cut of the British series
        Assert.Equal(t.place.Longitude, back.Longitude, 3e-8);
    }, iter: 20_000);

    [Theory]
    [InlineData(GeodeticDatum.Wgs84, 0)]
    [InlineData(GeodeticDatum.Osgb36, 0.001)]
    [InlineData(GeodeticDatum.Ed50, 10)]
    [InlineData(GeodeticDatum.Tm75, 1)]
    [InlineData(GeodeticDatum.Amersfoort, 0.25)]
    public void EveryShiftStatesItsPublishedAccuracy(GeodeticDatum datum, double metres) => Assert.Equal(metres, DatumShift.AccuracyMetres(datum));

    [Fact]
    public void AnUnknownDatumIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DatumShift.ToWgs84(default, (GeodeticDatum)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => DatumShift.FromWgs84(default, (GeodeticDatum)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => DatumShift.AccuracyMetres((GeodeticDatum)99));
    }
}
