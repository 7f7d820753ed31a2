using System.Globalization;

namespace RangeMap.Grids.Tests;

/// <summary>Ten thousand random places all over the world against GeoConvert of the Debian package geographiclib-tools, an independent implementation of the military grid.</summary>
public sealed class OtherMgrsTests
{
    [Fact]
    public void SquaresOfOneMetreHaveTheSameNames()
    {
        var random = new Random(20_250_104);
        LatLon[] places = [.. Enumerable.Range(0, 10_000).Select(_ => new LatLon(-79.999 + random.NextDouble() * 163.99, -180 + random.NextDouble() * 360))];
        var answers = OtherProgram.Convert("GeoConvert", "geographiclib-tools", ["-m", "-p", "0"], [.. places.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.Latitude:F12} {place.Longitude:F12}"))]);
        var otherBand = 0;
        for (var k = 0; k < places.Length; k++)
        {
            var grid = NationalGrid.Get(places[k].Latitude < 0 ? GridId.UtmSouth : GridId.UtmNorth);
            var square = Square.At(grid.Id, SquareSize.M1, grid.FromLatLon(places[k]));
            Assert.Equal(square, GridReference.Parse(answers[k]));
            // GeoConvert writes zones with two figures, and takes the band of the place, RangeMap that of the middle of the 100 km square.
            otherBand += square.ToString() == answers[k].TrimStart('0') ? 0 : 1;
        }

        Assert.InRange(otherBand, 1, places.Length / 10);
    }
}
