namespace RangeMap.Grids.Tests;

/// <summary>Cell codes of the European grid: the long form as Commission Implementing Regulation (EU) 2018/1799 prescribes it, the short one as in the INSPIRE specification.</summary>
public sealed class CellCodeTests
{
    [Theory]
    [InlineData("10kmE342N321", 3_420_000, 3_210_000, SquareSize.Km10)]
    [InlineData("10KM E342 N321", 3_420_000, 3_210_000, SquareSize.Km10)]
    [InlineData("10kmN321E342", 3_420_000, 3_210_000, SquareSize.Km10)]
    [InlineData("100kmE34N32", 3_400_000, 3_200_000, SquareSize.Km100)]
    [InlineData("1kmE3421N3210", 3_421_000, 3_210_000, SquareSize.Km1)]
    [InlineData("5kmE3425N3210", 3_425_000, 3_210_000, SquareSize.Km5)]
    [InlineData("2kmE3424N3210", 3_424_000, 3_210_000, SquareSize.Km2)]
    [InlineData("100mE34210N32100", 3_421_000, 3_210_000, SquareSize.M100)]
    [InlineData("10mE342100N321000", 3_421_000, 3_210_000, SquareSize.M10)]
    [InlineData("1mE3421000N3210000", 3_421_000, 3_210_000, SquareSize.M1)]
    [InlineData("CRS3035RES10000mN3210000E3420000", 3_420_000, 3_210_000, SquareSize.Km10)]
    [InlineData("CRS3035RES1000mN3210000E3421000", 3_421_000, 3_210_000, SquareSize.Km1)]
    [InlineData("crs3035res1000mN3210000E3421000", 3_421_000, 3_210_000, SquareSize.Km1)]
    [InlineData("UK_CRS3035RES1000mN3210000E3421000", 3_421_000, 3_210_000, SquareSize.Km1)]
    public void ACodeNamesItsSquare(string text, int easting, int northing, SquareSize size) =>
        Assert.Equal(new Square(GridId.European, size, easting, northing), GridReference.Parse(text));

    [Theory]
    [InlineData(SquareSize.Km100, "100kmE34N32")]
    [InlineData(SquareSize.Km10, "10kmE342N321")]
    [InlineData(SquareSize.Km5, "5kmE3425N3210")]
    [InlineData(SquareSize.Km2, "2kmE3426N3210")]
    [InlineData(SquareSize.Km1, "1kmE3426N3211")]
    [InlineData(SquareSize.M100, "100mE34267N32119")]
    public void SquaresOfEverySizeHaveTheShortCode(SquareSize size, string code) =>
        Assert.Equal(code, Square.At(GridId.European, size, new(3_426_789, 3_211_987)).ToString());

    [Theory]
    [InlineData("10kmE342E321", "no cell code")]
    [InlineData("CRS3035RES10000mN3210000", "no cell code")]
    [InlineData("3kmE342N321", "no cells of 3000 m")]
    [InlineData("250mE1025N22000", "no cells of 250 m")]
    [InlineData("4294967mE1N1", "no cells of 4294967 m")]
    [InlineData("10kmE3420000N3210000", "outside the European grid")]
    [InlineData("10kmE3N3", "outside the European grid")]
    [InlineData("5kmE3426N3210", "no multiple of 5000 m")]
    [InlineData("CRS3035RES10000mN3211000E3420000", "no multiple of 10000 m")]
    public void EveryFaultHasItsReason(string text, string reason)
    {
        Assert.False(GridReference.TryParse(text, default, out var square, out var why));
        Assert.Equal(default, square);
        Assert.Contains(reason, why, StringComparison.Ordinal);
    }
}
