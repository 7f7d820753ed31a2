namespace RangeMap.Grids.Tests;

/// <summary>Printed or computed examples, each with its source.</summary>
public sealed class WorkedExampleTests
{
    private const double Degree = Math.PI / 180;
    private static readonly RedfearnTransverseMercator AiryProjection = new(Ellipsoid.Airy, 49, -2, 0.9996012717, 400_000, -100_000);

    [Fact]
    public void TheGuidesProjectionExampleComesOutBothWays()
    {
        // Ordnance Survey, "A guide to coordinate systems in Great Britain", annexe C: 52 39 27.2531 N, 1 43 04.5177 E on Airy.
        var found = AiryProjection.Forward(new(52.657570305556, 1.717921583333));
        Assert.Equal(651_409.903, found.Easting, 0.001);
        Assert.Equal(313_177.270, found.Northing, 0.001);
        var back = AiryProjection.Inverse(new(651_409.903, 313_177.270));
        Assert.Equal(52.65757030, back.Latitude, 1e-8);
        Assert.Equal(1.71792158, back.Longitude, 1e-8);
    }

    [Fact]
    public void TheGeodesyGuidanceNotesProjectionExampleComesOut()
    {
        // EPSG guidance note 7-2: OSGB36 50 30 N, 0 30 E, printed 577274.99 69740.50.
        var found = AiryProjection.Forward(new(50.5, 0.5));
        Assert.Equal(577_274.99, found.Easting, 0.02);
        Assert.Equal(69_740.50, found.Northing, 0.02);
    }

    [Fact]
    public void TheGuidesGeocentricExampleComesOut()
    {
        // Ordnance Survey guide: 53 36 43.1653 N, 1 39 51.9920 W, height 299.800 m on GRS80.
        var found = Ellipsoid.Grs80.ToGeocentric(53.611990361 * Degree, -1.664442222 * Degree, 299.8);
        Assert.Equal(3_790_644.900, found.X, 0.001);
        Assert.Equal(-110_149.210, found.Y, 0.001);
        Assert.Equal(5_111_482.970, found.Z, 0.001);
        var (latitude, longitude) = Ellipsoid.Grs80.ToGeodetic(found);
        Assert.Equal(53.611990361, latitude / Degree, 1e-10);
        Assert.Equal(-1.664442222, longitude / Degree, 1e-10);
        Assert.Equal(299.8, Ellipsoid.Grs80.Height(found, latitude), 1e-6);
    }

    [Fact]
    public void TheSevenParameterShiftExampleComesOutAndGoesBackExactly()
    {
        // EPSG:1314 on an Airy point at 24.7 m: X 3875311.473 Y 116103.233 Z 5047602.300, computed with an independent script.
        var osgb36ToWgs84 = new HelmertShift(446.448, -125.157, 542.06, 0.150, 0.247, 0.842, -20.489);
        var airy = Ellipsoid.Airy.ToGeocentric(52.657570305556 * Degree, 1.717921583333 * Degree, 24.7);
        var found = osgb36ToWgs84.Forward(airy);
        Assert.Equal(3_875_311.473, found.X, 0.002);
        Assert.Equal(116_103.233, found.Y, 0.002);
        Assert.Equal(5_047_602.300, found.Z, 0.002);
        var back = osgb36ToWgs84.Inverse(found);
        Assert.Equal(airy.X, back.X, 1e-7);
        Assert.Equal(airy.Y, back.Y, 1e-7);
        Assert.Equal(airy.Z, back.Z, 1e-7);
    }

    [Theory]
    // Ordnance Survey guide, Caister water tower: ETRS89 to OSGB36 through the grid of shifts.
    [InlineData(GridId.British, 52.658007833, 1.716073973, 651_409.804, 313_177.450, 0.001)]
    // Spire of Dublin: ETRS89 computed with PROJ 9.1.1 from its published ITM place 715830 734697.
    [InlineData(GridId.Irish, 53.34979391, -6.26024777, 315_904.06, 234_670.77, 0.01)]
    // Belfast City Hall, published at J 33831 74015; ETRS89 computed with PROJ 9.1.1.
    [InlineData(GridId.Irish, 54.59664838, -5.93009182, 333_831, 374_015, 0.01)]
    // St Helier, computed with PROJ 9.1.1.
    [InlineData(GridId.ChannelIslandsWgs84, 49.186, -2.106, 565_145.20, 5_448_517.52, 0.01)]
    [InlineData(GridId.ChannelIslands, 49.186, -2.106, 565_248.1, 5_448_733.5, 0.1)]
    // Spire of Dublin, published at ITM 715830 734697; ETRS89 computed from it with PROJ 9.1.1.
    [InlineData(GridId.IrishTransverseMercator, 53.34979391, -6.26024777, 715_830, 734_697, 0.01)]
    // Belfast City Hall, computed with PROJ 9.1.1.
    [InlineData(GridId.IrishTransverseMercator, 54.59664838, -5.93009182, 733_753.82, 874_011.12, 0.01)]
    // True origin of ITM (EPSG:2157).
    [InlineData(GridId.IrishTransverseMercator, 53.5, -8, 600_000, 750_000, 1e-6)]
    // IOGP guidance note 7-2, example of method 9820 (the note prints 3962799.45 2999718.85; from memory, computed alike with PROJ 9.1.1).
    [InlineData(GridId.European, 50, 5, 3_962_799.45, 2_999_718.85, 0.01)]
    // True origin of ETRS89-LAEA (EPSG:3035).
    [InlineData(GridId.European, 52, 10, 4_321_000, 3_210_000, 1e-6)]
    // Places of F. H. Schreutelkamp and G. L. Strang van Hees, "Benaderingsformules voor de transformatie tussen RD- en WGS84-kaartcoordinaten", Geodesia 43, 2001: the tower of
    // Amersfoort, the Westertoren in Amsterdam, the Martinitoren in Groningen. Their WGS84 is of 2001 and their formulas are good to some decimetres: 0.5 m.
    [InlineData(GridId.Dutch, 52.15517440, 5.38720621, 155_000, 463_000, 0.5)]
    [InlineData(GridId.Dutch, 52.37453253, 4.88352559, 120_700.723, 487_525.501, 0.5)]
    [InlineData(GridId.Dutch, 53.21938317, 6.56820053, 233_883.131, 582_065.167, 0.5)]
    // A place of the notice on the EPSG dataset 12.054: ETRS89 53.148288321 7.180899528 is RD 275000 575000, with the official grid of corrections, here without: 0.25 m.
    [InlineData(GridId.Dutch, 53.148288321, 7.180899528, 275_000, 575_000, 0.25)]
    // St Helier in zone 30, computed with PROJ 9.1.1; the zone stands before the easting.
    [InlineData(GridId.UtmNorth, 49.186, -2.106, 30_565_145.20, 5_448_517.52, 0.01)]
    public void PlacesComeOutOnTheirGrids(GridId id, double latitude, double longitude, double easting, double northing, double tolerance)
    {
        var found = NationalGrid.Get(id).FromLatLon(new(latitude, longitude));
        Assert.Equal(easting, found.Easting, tolerance);
        Assert.Equal(northing, found.Northing, tolerance);
    }

    [Fact]
    public void TheGuidanceNotesStereographicExampleComesOutBothWays()
    {
        // IOGP guidance note 7-2, example of method 9809, Amersfoort / RD New: 53 N, 6 E on Bessel is 196105.283 557057.739.
        var rd = new ObliqueStereographic(Ellipsoid.Bessel, 52 + 9 / 60.0 + 22.178 / 3600, 5 + 23 / 60.0 + 15.5 / 3600, 0.9999079, 155_000, 463_000);
        var found = rd.Forward(53 * Degree, 6 * Degree);
        Assert.Equal(196_105.283, found.Easting, 0.001);
        Assert.Equal(557_057.739, found.Northing, 0.001);
        var (latitude, longitude) = rd.Inverse(found);
        Assert.Equal(53, latitude / Degree, 1e-11);
        Assert.Equal(6, longitude / Degree, 1e-11);
        var origin = rd.Forward((52 + 9 / 60.0 + 22.178 / 3600) * Degree, (5 + 23 / 60.0 + 15.5 / 3600) * Degree);
        Assert.Equal(155_000, origin.Easting, 1e-6);
        Assert.Equal(463_000, origin.Northing, 1e-6);
    }

    [Fact]
    public void TheTrueOriginsHaveTheirFalseCoordinates()
    {
        Assert.Equal(new(400_000, -100_000), AiryProjection.Forward(new(49, -2)));
        var irish = new KruegerTransverseMercator(Ellipsoid.AiryModified, 53.5, -8, 1.000035, 200_000, 250_000).Forward(53.5 * Degree, -8 * Degree);
        Assert.Equal(200_000, irish.Easting, 1e-6);
        Assert.Equal(250_000, irish.Northing, 1e-6);
    }
}
