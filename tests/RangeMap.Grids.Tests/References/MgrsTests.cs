namespace RangeMap.Grids.Tests;

public sealed class MgrsTests
{
    [Theory]
    // The Washington Monument, example of the United States National Grid standard (FGDC-STD-011-2001): UTM zone 18 323371 4306519.
    [InlineData("18SUJ2337106519", GridId.UtmNorth, 18_323_371, 4_306_519, SquareSize.M1)]
    [InlineData("18S UJ 23371 06519", GridId.UtmNorth, 18_323_371, 4_306_519, SquareSize.M1)]
    [InlineData("18suj 2337 0651", GridId.UtmNorth, 18_323_370, 4_306_510, SquareSize.M10)]
    [InlineData("18S UJ 233 065", GridId.UtmNorth, 18_323_300, 4_306_500, SquareSize.M100)]
    [InlineData("18SUJ2306", GridId.UtmNorth, 18_323_000, 4_306_000, SquareSize.Km1)]
    [InlineData("18SUJ20", GridId.UtmNorth, 18_320_000, 4_300_000, SquareSize.Km10)]
    [InlineData("18SUJ", GridId.UtmNorth, 18_300_000, 4_300_000, SquareSize.Km100)]
    [InlineData("18SUJ20NE", GridId.UtmNorth, 18_325_000, 4_305_000, SquareSize.Km5)]
    [InlineData("18SUJ20A", GridId.UtmNorth, 18_320_000, 4_300_000, SquareSize.Km2)]
    // St Helier: WV of the Channel Islands is WV of zone 30, band U begins at 48 N.
    [InlineData("30UWV6548", GridId.UtmNorth, 30_565_000, 5_448_000, SquareSize.Km1)]
    [InlineData("04QFJ1234", GridId.UtmNorth, 4_612_000, 2_334_000, SquareSize.Km1)]
    // South of the equator northings count up to 10,000 km; 56HLH3436850948 lies at -33.8688 151.2093 (computed with GeographicLib 2.1.2).
    [InlineData("56HLH3450", GridId.UtmSouth, 56_334_000, 6_250_000, SquareSize.Km1)]
    public void AReferenceNamesItsSquare(string text, GridId grid, int easting, int northing, SquareSize size) =>
        Assert.Equal(new Square(grid, size, easting, northing), GridReference.Parse(text));

    [Fact]
    public void ASquareInTwoBandsIsReadUnderBothAndNamedWithOne()
    {
        // The parallel of 40 N, between S and T, runs through the rows of 4,400 km near 4,428 km.
        var lower = GridReference.Parse("18SUK0001");
        Assert.Equal(lower, GridReference.Parse("18TUK0001"));
        Assert.Equal("18TUK0001", lower.ToString());
    }

    [Theory]
    [InlineData(60.39, 5.32, 32)] // Bergen: 32V is widened to 3 E
    [InlineData(60.39, 2.9, 31)]
    [InlineData(55.9, 5.32, 31)]
    [InlineData(64.0, 5.32, 31)]
    [InlineData(78.22, 15.64, 33)] // Longyearbyen
    [InlineData(78.22, 8.9, 31)]
    [InlineData(78.22, 9.0, 33)]
    [InlineData(78.22, 21.0, 35)]
    [InlineData(78.22, 33.0, 37)]
    [InlineData(78.22, 42.0, 38)]
    [InlineData(71.9, 8.9, 32)]
    [InlineData(0, -180, 1)]
    [InlineData(0, 180, 1)]
    [InlineData(0, 179.99, 60)]
    [InlineData(-45, 5.32, 31)]
    public void ZonesFollowTheExceptionsForNorwayAndSvalbard(double latitude, double longitude, int zone) =>
        Assert.Equal(zone, UtmZone.Of(new(latitude, longitude)));

    [Fact]
    public void EveryPairOfLettersIsASquareOfTheBandOrIsRefused()
    {
        // In zone 31 the columns are A to H, and the rows count from A at the equator, A again at 2,000, 4,000 and 6,000 km. Band U, 48 to 56 N, has northings of
        // about 5,316 to 6,210 km (computed with GeographicLib 2.1.2): rows P (5,300 km) to V (5,900 km) and A (6,000 km) to C (6,200 km).
        const string RowsOfBandU = "PQRSTUVABC";
        for (var column = 'A'; column <= 'Z'; column++)
        {
            for (var row = 'A'; row <= 'Z'; row++)
            {
                var place = RowsOfBandU.IndexOf(row, StringComparison.Ordinal);
                var read = GridReference.TryParse($"31U{column}{row}", default, out var square, out var why);
                Assert.True(read == (column <= 'H' && place >= 0), $"31U{column}{row}: {why}");
                if (read)
                    Assert.Equal((31_000_000 + (column - 'A' + 1) * 100_000, 5_300_000 + place * 100_000), (square.Easting, square.Northing));
            }
        }
    }

    [Theory]
    [InlineData("61UXC12", "There is no zone 61")]
    [InlineData("0UXC12", "There is no zone 0")]
    [InlineData("30IXC12", "I is no band")]
    [InlineData("30OXC12", "O is no band")]
    [InlineData("30AXC12", "polar")]
    [InlineData("30ZXC12", "polar")]
    [InlineData("32XMH12", "There is no 32X")]
    [InlineData("34XMH12", "There is no 34X")]
    [InlineData("30U", "names a zone only")]
    [InlineData("30UX", "1 letters stand between")]
    [InlineData("30UXCC12", "3 letters stand between")]
    [InlineData("30UAC12", "AC is no 100 km square of 30U")]
    [InlineData("30UXJ12", "XJ is no 100 km square of 30U")]
    [InlineData("30UXI12", "XI is no 100 km square of 30U")]
    [InlineData("10kmE342", "ME is no 100 km square of 10K")]
    [InlineData("30UXC123", "3 figures: give an even number")]
    [InlineData("30UXC 12 345", "groups of 2 and 3")]
    [InlineData("30UXC12O", "O is not used in tetrad letters")]
    [InlineData("30UXC1#", "'#' does not belong")]
    public void EveryFaultHasItsReason(string text, string reason)
    {
        Assert.False(GridReference.TryParse(text, default, out var square, out var why));
        Assert.Equal(default, square);
        Assert.Contains(reason, why, StringComparison.Ordinal);
    }
}
