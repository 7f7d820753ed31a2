namespace RangeMap.Records.Tests;

public sealed class LengthTextTests
{
    [Theory]
    [InlineData("12", 12)]
    [InlineData("12 mm", 12)]
    [InlineData("12.5mm.", 12.5)]
    [InlineData("1.2 cm", 12)]
    [InlineData("1.7 m", 1700)]
    [InlineData("11-13", 12)]
    [InlineData("11 to 13 mm", 12)]
    [InlineData("11\u201313 mm", 12)]
    [InlineData("1.1 - 1.3 cm", 12)]
    [InlineData("1.1 cm - 1.3 cm", 12)]
    [InlineData("c. 12 mm", 12)]
    [InlineData("~12", 12)]
    public void ALengthIsReadInMillimetres(string text, double mm) => Assert.Equal(mm, LengthText.Read(text)!.Value, 9);

    [Theory]
    [InlineData("")]
    [InlineData("large")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("13-11")]
    [InlineData("1,2 cm")]
    [InlineData("12 in")]
    [InlineData("1e3")]
    [InlineData("999999")]
    public void WhatIsNoLengthIsNull(string text) => Assert.Null(LengthText.Read(text));
}
