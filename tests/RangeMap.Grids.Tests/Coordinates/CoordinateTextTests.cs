namespace RangeMap.Grids.Tests;

public sealed class CoordinateTextTests
{
    [Theory]
    [InlineData("54.1, -2.3", 54.1, -2.3)]
    [InlineData("54.1 -2.3", 54.1, -2.3)]
    [InlineData("54.1-2.3", 54.1, -2.3)]
    [InlineData("54.1, \u22122.3", 54.1, -2.3)]
    [InlineData("54.1;2.3", 54.1, 2.3)]
    [InlineData("+54.1 +2.3", 54.1, 2.3)]
    [InlineData("54.1N 2.3W", 54.1, -2.3)]
    [InlineData("54.1 n, 2.3 w", 54.1, -2.3)]
    [InlineData("N54.1 W2.3", 54.1, -2.3)]
    [InlineData("W 2.3, N 54.1", 54.1, -2.3)]
    [InlineData("2.3E 54.1S", -54.1, 2.3)]
    [InlineData("54.1° -2.3°", 54.1, -2.3)]
    [InlineData("54 06 N 2 18 W", 54.1, -2.3)]
    [InlineData("54°06'00\"N, 2°18'00\"W", 54.1, -2.3)]
    [InlineData("54 06 00 -2 18 00", 54.1, -2.3)]
    [InlineData("54 6.5 N 2 18 W", 54.108333333333, -2.3)]
    [InlineData("54d06m00sN 2d18m00sW", 54.1, -2.3)]
    [InlineData("54d 6m 0s N, 2d 18m 0s W", 54.1, -2.3)]
    [InlineData("54 deg 06 min 00 sec N 2 deg 18 min 00 sec W", 54.1, -2.3)]
    [InlineData("54° 06.0' N, 002° 18.0' W", 54.1, -2.3)]
    [InlineData("54º06′00″N 2º18′00″W", 54.1, -2.3)]
    [InlineData("N 54° 06' 00'' W 2° 18' 00''", 54.1, -2.3)]
    [InlineData("Lat 54.1, Lon -2.3", 54.1, -2.3)]
    [InlineData("latitude: 54.1 longitude: -2.3", 54.1, -2.3)]
    [InlineData("Long -2.3 Lat 54.1", 54.1, -2.3)]
    [InlineData("lon=-2.3; lat=54.1", 54.1, -2.3)]
    [InlineData("Lat 54.1N Long 2.3W", 54.1, -2.3)]
    [InlineData("54.1 North 2.3 West", 54.1, -2.3)]
    [InlineData("54.1 degrees south, 2.3 degrees east", -54.1, 2.3)]
    [InlineData("(54.1, -2.3)", 54.1, -2.3)]
    [InlineData("[54.1 -2.3]", 54.1, -2.3)]
    [InlineData("+54.1-002.3/", 54.1, -2.3)]
    [InlineData("54,1; -2,3", 54.1, -2.3)]
    [InlineData("５４．１，－２．３", 54.1, -2.3)]
    [InlineData("54.1\t-2.3", 54.1, -2.3)]
    [InlineData("-0.5, -0.25", -0.5, -0.25)]
    [InlineData("0 30 S 0 15 W", -0.5, -0.25)]
    [InlineData("-0 30, -0 15", -0.5, -0.25)]
    [InlineData("90N 180E", 90, 180)]
    public void UsualFormsAreRead(string text, double latitude, double longitude)
    {
        Assert.True(CoordinateText.TryParse(text, out var reading, out var why), why);
        Assert.Equal(latitude, reading.Position.Latitude, 1e-9);
        Assert.Equal(longitude, reading.Position.Longitude, 1e-9);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("54.1", "latitude and a longitude")]
    [InlineData("54.1 2.3 4.5", "latitude and a longitude")]
    [InlineData("54,1 -2,3", "write decimals with a dot")]
    [InlineData("54, 1, -2", "latitude and a longitude")]
    [InlineData("lat 54.1 lat 2.3", "words for latitude and longitude")]
    [InlineData("lat 54.1 2.3", "words for latitude and longitude")]
    [InlineData("lat 54.1E lon 2.3N", "agree with the letters")]
    [InlineData("54.1 up 2.3 left", "U+0075 does not belong")]
    [InlineData("91 2", "put the latitude first")]
    [InlineData("-95.0, 200", "is not in [-90, 90]")]
    [InlineData("54, 181", "is not in [-180, 180]")]
    [InlineData("54N 2N", "Both numbers")]
    [InlineData("54N 2", "with one number only")]
    [InlineData("-54N 2W", "both a sign and a letter")]
    [InlineData("54 -6, 2 18", "sign stands before minutes")]
    [InlineData("54.5 6 N 2 18 W", "Only the last")]
    [InlineData("54 60 N 2 18 W", "below 60")]
    [InlineData("54.1.2, 3", "is no number")]
    [InlineData("54.1x, 3", "U+0078 does not belong")]
    public void FaultsHaveTheirReason(string text, string reason)
    {
        Assert.False(CoordinateText.TryParse(text, out _, out var why));
        Assert.Contains(reason, why, StringComparison.Ordinal);
    }

    [Fact]
    public void FinenessIsTakenFromTheFinerNumber()
    {
        Assert.True(CoordinateText.TryParse("54.1, -2.3456", out var decimals, out _));
        Assert.Equal(4, decimals.Decimals);
        Assert.Equal(0.0001, decimals.UnitDegrees, 1e-12);
        Assert.True(CoordinateText.TryParse("54 06 N 2 18 W", out var minutes, out _));
        Assert.Null(minutes.Decimals);
        Assert.Equal(1 / 60.0, minutes.UnitDegrees, 1e-12);
    }

    [Fact]
    public void AnyTextGivesAPlaceOrAReasonAndNeverThrows()
    {
        const string Alphabet = "0123456789.+-\u2212NSEW°'\", ;x";
        var random = new Random(20_240_608);
        for (var k = 0; k < 100_000; k++)
        {
            var text = new string([.. Enumerable.Range(0, random.Next(20)).Select(_ => Alphabet[random.Next(Alphabet.Length)])]);
            Assert.Equal(CoordinateText.TryParse(text, out _, out var why), why is null);
        }
    }

    [Theory]
    // Half the diagonal of the rounding box; 658 m, 66 m, 6.6 m at most over Great Britain: computed with an independent script.
    [InlineData(2, 50, 662)]
    [InlineData(2, 54, 646)]
    [InlineData(3, 54, 64.6)]
    [InlineData(4, 54, 6.46)]
    [InlineData(0, 54, 64_600)]
    public void DecimalsGiveARadius(int decimals, double latitude, double metres) =>
        Assert.Equal(metres, CoordinatePrecision.RadiusMetres(decimals, latitude), metres * 0.01);

    [Fact]
    public void ACountOfDecimalsOutOfRangeIsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoordinatePrecision.RadiusMetres(-1, 54));
}
