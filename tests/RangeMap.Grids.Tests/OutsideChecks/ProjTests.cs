using System.Globalization;

namespace RangeMap.Grids.Tests;

/// <summary>Ten thousand random places against PROJ (cct of the Debian package proj-bin) with explicit pipelines: its defaults may leave a datum shift out.</summary>
/// <remarks>Airy Modified is given by its flattening, as EPSG has it: PROJ's own entry rounds the minor axis, which moves Ireland by 2 mm.</remarks>
public sealed class ProjTests
{
    private const int Places = 10_000;
    private const string FromDegrees = "+proj=pipeline +step +proj=axisswap +order=2,1 +step +proj=unitconvert +xy_in=deg +xy_out=rad ";

    [Theory]
    [InlineData(GridId.Irish, 51.3, 55.5, -10.7, -5.3, 0.001, "+step +proj=cart +ellps=WGS84 +step +inv +proj=helmert +x=482.5 +y=-130.6 +z=564.6 +rx=-1.042 +ry=-0.214 +rz=-0.631 +s=8.15 +convention=position_vector +exact +step +inv +proj=cart +a=6377340.189 +rf=299.3249646 +step +proj=tmerc +lat_0=53.5 +lon_0=-8 +k=1.000035 +x_0=200000 +y_0=250000 +a=6377340.189 +rf=299.3249646")]
    [InlineData(GridId.IrishTransverseMercator, 51.3, 55.5, -10.7, -5.3, 0.00001, "+step +proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000 +ellps=GRS80")]
    [InlineData(GridId.ChannelIslands, 48.8, 50.2, -3, -1.7, 0.001, "+step +proj=cart +ellps=WGS84 +step +inv +proj=helmert +x=-87 +y=-98 +z=-121 +step +inv +proj=cart +ellps=intl +step +proj=utm +zone=30 +ellps=intl")]
    [InlineData(GridId.European, 35, 71, -20, 40, 0.00001, "+step +proj=laea +lat_0=52 +lon_0=10 +x_0=4321000 +y_0=3210000 +ellps=GRS80")]
    [InlineData(GridId.Dutch, 50.7, 53.6, 3.2, 7.3, 0.001, "+step +proj=cart +ellps=WGS84 +step +inv +proj=helmert +x=565.7381 +y=50.4018 +z=465.2904 +rx=0.395026 +ry=-0.330772 +rz=1.876073 +s=4.07244 +convention=coordinate_frame +exact +step +inv +proj=cart +ellps=bessel +step +proj=sterea +lat_0=52.1561605555555556 +lon_0=5.3876388888888889 +k=0.9999079 +x_0=155000 +y_0=463000 +ellps=bessel")]
    public void PlacesComeOutAsFromProj(GridId id, double south, double north, double west, double east, double tolerance, string steps)
    {
        var random = new Random(20_250_101);
        LatLon[] places = [.. Enumerable.Range(0, Places).Select(_ => new LatLon(south + random.NextDouble() * (north - south), west + random.NextDouble() * (east - west)))];
        Check(NationalGrid.Get(id), places, FromDegrees + steps, tolerance, 0);
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(29, true)]
    [InlineData(30, true)]
    [InlineData(33, true)]
    [InlineData(60, true)]
    [InlineData(19, false)]
    [InlineData(56, false)]
    public void UtmComesOutAsFromProj(int zone, bool north)
    {
        var random = new Random(zone);
        var grid = NationalGrid.Get(north ? GridId.UtmNorth : GridId.UtmSouth);
        LatLon[] places =
        [
            .. Enumerable.Range(0, Places / 5).Select(_ => new LatLon(
                north ? random.NextDouble() * 84 : random.NextDouble() * -80,
                UtmZone.CentralMeridian(zone) - 3 + random.NextDouble() * 6)).Where(place => UtmZone.Of(place) == zone),
        ];
        Check(grid, places, $"{FromDegrees}+step +proj=utm +zone={zone} {(north ? "" : "+south ")}+ellps=WGS84", 0.00001, zone * 1e6);
    }

    private static void Check(INationalGrid grid, LatLon[] places, string pipeline, double tolerance, double eastingInFront)
    {
        string[] lines = [.. places.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.Latitude:R} {place.Longitude:R} 0 0"))];
        var answers = OtherProgram.Convert("cct", "proj-bin", ["-d", "6", .. pipeline.Split(' ', StringSplitOptions.RemoveEmptyEntries)], lines);
        for (var k = 0; k < places.Length; k++)
        {
            var expected = OtherProgram.Numbers(answers[k]);
            var found = grid.FromLatLon(places[k]);
            Assert.Equal(expected[0], found.Easting - eastingInFront, tolerance);
            Assert.Equal(expected[1], found.Northing, tolerance);
        }
    }
}
