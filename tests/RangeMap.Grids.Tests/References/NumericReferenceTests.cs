namespace RangeMap.Grids.Tests;

/// <summary>References in figures: on the grid that the text, the data set or the country states, else refused.</summary>
public sealed class NumericReferenceTests
{
    [Theory]
    [InlineData("ITM 715830 734697", GridId.IrishTransverseMercator, 715_830, 734_697, SquareSize.M1)]
    [InlineData("itm715734", GridId.IrishTransverseMercator, 715_000, 734_000, SquareSize.Km1)]
    [InlineData("ITM 71 73", GridId.IrishTransverseMercator, 710_000, 730_000, SquareSize.Km10)]
    [InlineData("ITM77", GridId.IrishTransverseMercator, 700_000, 700_000, SquareSize.Km100)]
    [InlineData("ITM7173NE", GridId.IrishTransverseMercator, 715_000, 735_000, SquareSize.Km5)]
    [InlineData("ITM 7158301 7346972", GridId.IrishTransverseMercator, 715_830, 734_697, SquareSize.M1)]
    [InlineData("RD 155-463", GridId.Dutch, 155_000, 463_000, SquareSize.Km1)]
    [InlineData("RD 155000 463000", GridId.Dutch, 155_000, 463_000, SquareSize.M1)]
    [InlineData("rd013391", GridId.Dutch, 13_000, 391_000, SquareSize.Km1)]
    [InlineData("EPSG:27700 530800 180100", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("EPSG:27700 530800.7 180100.2", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("epsg 27700, N 180100 E 530800", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("EPSG:29903 315904 234671", GridId.Irish, 315_904, 234_671, SquareSize.M1)]
    [InlineData("EPSG:2157 715830 734697", GridId.IrishTransverseMercator, 715_830, 734_697, SquareSize.M1)]
    [InlineData("EPSG:23030 565248 5448733", GridId.ChannelIslands, 565_248, 5_448_733, SquareSize.M1)]
    [InlineData("EPSG:3035 E 3962799 N 2999718", GridId.European, 3_962_799, 2_999_718, SquareSize.M1)]
    [InlineData("EPSG:32630 565145 5448517", GridId.UtmNorth, 30_565_145, 5_448_517, SquareSize.M1)]
    [InlineData("EPSG:32756 334369 6250948", GridId.UtmSouth, 56_334_369, 6_250_948, SquareSize.M1)]
    [InlineData("30U 565145 5448517", GridId.UtmNorth, 30_565_145, 5_448_517, SquareSize.M1)]
    [InlineData("30N 565145 5448517", GridId.UtmNorth, 30_565_145, 5_448_517, SquareSize.M1)]
    [InlineData("UTM 30N 565145mE 5448517mN", GridId.UtmNorth, 30_565_145, 5_448_517, SquareSize.M1)]
    [InlineData("30U E565145 N5448517", GridId.UtmNorth, 30_565_145, 5_448_517, SquareSize.M1)]
    [InlineData("56S 334369 6250948", GridId.UtmSouth, 56_334_369, 6_250_948, SquareSize.M1)]
    [InlineData("56H 334369 6250948", GridId.UtmSouth, 56_334_369, 6_250_948, SquareSize.M1)]
    public void ATextThatStatesItsGridIsRead(string text, GridId grid, int easting, int northing, SquareSize size) =>
        Assert.Equal(new Square(grid, size, easting, northing), GridReference.Parse(text));

    [Theory]
    [InlineData("530800 180100", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("E 530800 N 180100", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("530800 mE 180100 mN", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("180100N, 530800E", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("9587.906 899449.000", GridId.British, 9_587, 899_449, SquareSize.M1)]
    [InlineData("460000;1210000", GridId.British, 460_000, 1_210_000, SquareSize.M1)]
    [InlineData("５３０８００ １８０１００", GridId.British, 530_800, 180_100, SquareSize.M1)]
    [InlineData("155-463", GridId.Dutch, 155_000, 463_000, SquareSize.Km1)]
    [InlineData("155000/463000", GridId.Dutch, 155_000, 463_000, SquareSize.M1)]
    [InlineData("7158 7346", GridId.IrishTransverseMercator, 715_800, 734_600, SquareSize.M100)]
    [InlineData("565145 5448517", GridId.ChannelIslandsWgs84, 565_145, 5_448_517, SquareSize.M1)]
    [InlineData("3962799E 2999718N", GridId.European, 3_962_799, 2_999_718, SquareSize.M1)]
    public void TheStatedGridReadsBareNumbers(string text, GridId grid, int easting, int northing, SquareSize size)
    {
        Assert.True(GridReference.TryParse(text, new(System: grid), out var square, out var why), why);
        Assert.Equal(new Square(grid, size, easting, northing), square);
    }

    [Theory]
    [InlineData("530800 180100", "gb", GridId.British)]
    [InlineData("238000 476000", "IM", GridId.British)]
    [InlineData("315904 234671", "IE", GridId.Irish)]
    [InlineData("715830 734697", "IE", GridId.IrishTransverseMercator)]
    [InlineData("733753 874011", "GB", GridId.IrishTransverseMercator)]
    [InlineData("155000 463000", "NL", GridId.Dutch)]
    [InlineData("565248 5448733", "JE", GridId.ChannelIslands)]
    public void TheCountryTellsTheGridOfBareNumbers(string text, string country, GridId grid)
    {
        Assert.True(GridReference.TryParse(text, new(Country: country), out var square, out var notes, out var why), why);
        Assert.Equal(grid, square.Grid);
        Assert.Equal(GridReferenceNotes.MetresTakenAsWritten, notes);
        Assert.Contains("read to 1 m", Assert.Single(GridReference.InWords(notes)), StringComparison.Ordinal);
    }

    [Fact]
    public void AStatedGridSettlesTheDatumOfTheChannelIslands()
    {
        Assert.True(GridReference.TryParse("WV6548", new(System: GridId.ChannelIslandsWgs84), out var square, out var notes, out _));
        Assert.Equal((GridId.ChannelIslandsWgs84, GridReferenceNotes.None), (square.Grid, notes));
    }

    [Theory]
    // Belfast on the Irish Grid, Stoke on the British: nothing in the numbers tells.
    [InlineData("333831 374015", null, "British National Grid or Irish Grid")]
    [InlineData("333831 374015", "GB", "British National Grid or Irish Grid")]
    [InlineData("530800 180100", null, "here British National Grid")]
    [InlineData("155000 463000", null, "Irish Grid or Dutch RD")]
    [InlineData("5 700", null, "do not say which grid")]
    [InlineData("530800 180100", "FR", "The country FR does not tell the grid")]
    [InlineData("530800 180100", "IE", "On no grid of IE")]
    [InlineData("30S 565145 3900000", null, "southern hemisphere or band S")]
    [InlineData("54.1, -2.3", null, "latitude and longitude, not a grid reference")]
    [InlineData("-33.9 18.4", null, "latitude and longitude, not a grid reference")]
    [InlineData("54N 2W", null, "latitude and longitude, not a grid reference")]
    public void WhatTwoSystemsCouldMeanIsRefused(string text, string? country, string reason) => Refuses(text, new(Country: country), reason);

    [Theory]
    [InlineData("ITM", "needs figures behind it")]
    [InlineData("ITM 715 7346", "groups of 3 and 4")]
    [InlineData("ITM 7158307", "7 figures")]
    [InlineData("ITM 315904 234671", "outside the area of the Irish Transverse Mercator")]
    [InlineData("ITM71A", "follows four figures on a grid without letters, as in ITM7173A, not 2")]
    [InlineData("ITM7173O", "O is not used in tetrad letters")]
    [InlineData("RD 13600 391000", "groups of 5 and 6")]
    [InlineData("RD 463 155", "outside the area of the Dutch RD")]
    [InlineData("EPSG:27700", "no easting and northing")]
    [InlineData("EPSG:27700 530800", "no easting and northing")]
    [InlineData("EPSG:27700 530800 180100 7", "no easting and northing")]
    [InlineData("EPSG:27700 530800 E 180100 E", "letters E and N must stand with one number each")]
    [InlineData("EPSG:27700 530800E 180100", "letters E and N must stand with one number each")]
    [InlineData("EPSG:27700 830800 180100", "outside the area of the British National Grid")]
    [InlineData("EPSG:27700 -30800 180100", "negative")]
    [InlineData("EPSG:27700 530 180", "fewer than 4 figures")]
    [InlineData("EPSG:4326 53 2", "EPSG:4326 is no grid that is known")]
    [InlineData("EPSG:3035 3962799 2999718", "mark them with E and N")]
    [InlineData("EPSG:32600 565145 5448517", "need their zone")]
    [InlineData("EPSG:32661 565145 5448517", "EPSG:32661 is no grid that is known")]
    [InlineData("UTM 565145 5448517", "need their zone")]
    [InlineData("30U 565145 9448517", "does not lie in band U")]
    [InlineData("30U 5651450 5448517", "outside the area of the UTM")]
    [InlineData("30U 565145", "no easting and northing")]
    [InlineData("61N 565145 5448517", "There is no zone 61")]
    public void EveryFaultHasItsReason(string text, string reason) => Refuses(text, default, reason);

    [Theory]
    [InlineData("J3374", GridId.British, "The reference is on the Irish Grid, but the British National Grid is stated")]
    [InlineData("TQ3080", GridId.IrishTransverseMercator, "on the British National Grid, but the Irish Transverse Mercator is stated")]
    [InlineData("530800 180100", GridId.UtmNorth, "need their zone")]
    [InlineData("3962799 2999718", GridId.European, "mark them with E and N")]
    [InlineData("830800 180100", GridId.British, "outside the area of the British National Grid")]
    [InlineData("530 180", GridId.British, "fewer than 4 figures")]
    [InlineData("530800 -180100", GridId.British, "negative")]
    [InlineData("five hundred", GridId.British, "letters stand before the figures")]
    [InlineData("5five 7", GridId.British, "3 letters stand between")]
    public void AStatedGridBindsAndHasItsOwnReasons(string text, GridId stated, string reason) => Refuses(text, new(System: stated), reason);

    private static void Refuses(string text, GridReferenceOptions options, string reason)
    {
        Assert.False(GridReference.TryParse(text, options, out var square, out var why));
        Assert.Equal(default, square);
        Assert.Contains(reason, why, StringComparison.Ordinal);
    }
}
