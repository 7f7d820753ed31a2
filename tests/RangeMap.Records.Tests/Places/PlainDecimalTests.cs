using System.Globalization;
using CsCheck;

namespace RangeMap.Records.Tests;

public sealed class PlainDecimalTests
{
    private const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    [Fact]
    public void NumbersOfAnyLengthAreReadToTheLastBitAsTheGeneralReadingDoes() =>
        (from sign in Gen.Int[0, 2].Select(i => i switch { 0 => "", 1 => "-", _ => "+" })
         from whole in Gen.String[Gen.Char['0', '9'], 0, 18]
         from point in Gen.Bool.Select(has => has ? "." : "")
         from rest in Gen.String[Gen.Char['0', '9'], 0, 20]
         select $"{sign}{whole}{point}{rest}").Sample(AssertSame, iter: 200_000);

    [Fact]
    public void AnyTextIsAnsweredAsTheGeneralReadingDoes() => Gen.String[Gen.Char["0123456789.-+eE, \u0660NaIn"], 0, 12].Sample(AssertSame, iter: 200_000);

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData(".")]
    [InlineData("-.")]
    [InlineData("-0.0")]
    [InlineData("1.")]
    [InlineData(".5")]
    [InlineData("1.2.3")]
    [InlineData("999999999999999")]
    [InlineData("9999999999999999")]
    [InlineData("0.000000000000001")]
    public void TheEdgesAreReadAsTheGeneralReadingDoes(string text) => AssertSame(text);

    private static void AssertSame(string text)
    {
        var expected = double.TryParse(text, Styles, CultureInfo.InvariantCulture, out var number);
        Assert.Equal(expected, PlainDecimal.TryRead(text, out var read));
        Assert.Equal(BitConverter.DoubleToInt64Bits(number), BitConverter.DoubleToInt64Bits(read));
    }
}
