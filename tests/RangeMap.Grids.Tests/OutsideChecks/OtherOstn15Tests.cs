using System.Globalization;

namespace RangeMap.Grids.Tests;

/// <summary>Ten thousand random places against another implementation of OSTN15, the Perl module of the Debian package libgeo-coordinates-osgb-perl, run as a program.</summary>
public sealed class OtherOstn15Tests
{
    private const int Places = 10_000;
    private const string Package = "libgeo-coordinates-osgb-perl";
    private const string ToGrid = "use Geo::Coordinates::OSGB qw(ll_to_grid); while (<>) { my ($lat, $lon) = split; printf qq(%.3f %.3f\\n), ll_to_grid($lat, $lon); }";
    private const string ToDegrees = "use Geo::Coordinates::OSGB qw(grid_to_ll); while (<>) { my ($e, $n) = split; printf qq(%.10f %.10f\\n), grid_to_ll($e, $n); }";

    [Fact]
    public void PlacesComeOutAsFromTheOtherImplementation()
    {
        // The other program takes OSTN15 within 0 to 700 km by 0 to 1250 km, as here, and prints millimetres.
        var random = new Random(20_250_102);
        var grid = NationalGrid.Get(GridId.British);
        LatLon[] places = [.. Enumerable.Range(0, Places).Select(_ => grid.ToLatLon(new(90_000 + random.NextDouble() * 570_000, 6_000 + random.NextDouble() * 1_220_000)))];
        var answers = OtherProgram.Convert("perl", Package, ["-e", ToGrid], [.. places.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.Latitude:R} {place.Longitude:R}"))]);
        for (var k = 0; k < Places; k++)
        {
            var expected = OtherProgram.Numbers(answers[k]);
            var found = grid.FromLatLon(places[k]);
            Assert.Equal(expected[0], found.Easting, 0.001);
            Assert.Equal(expected[1], found.Northing, 0.001);
        }
    }

    [Fact]
    public void PointsGoBackAsInTheOtherImplementation()
    {
        var random = new Random(20_250_103);
        var grid = NationalGrid.Get(GridId.British);
        EastNorth[] points = [.. Enumerable.Range(0, Places).Select(_ => new EastNorth(Math.Round(90_000 + random.NextDouble() * 570_000, 3), Math.Round(6_000 + random.NextDouble() * 1_220_000, 3)))];
        var answers = OtherProgram.Convert("perl", Package, ["-e", ToDegrees], [.. points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.Easting:F3} {point.Northing:F3}"))]);
        for (var k = 0; k < Places; k++)
        {
            var expected = OtherProgram.Numbers(answers[k]);
            var found = grid.ToLatLon(points[k]);
            Assert.Equal(expected[0], found.Latitude, 1e-8); // 1.1 mm
            Assert.Equal(expected[1], found.Longitude, 2e-8);
        }
    }
}
