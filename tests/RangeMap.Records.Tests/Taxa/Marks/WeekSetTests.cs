using CsCheck;

namespace RangeMap.Records.Tests;

public sealed class WeekSetTests
{
    [Theory]
    [InlineData("16-44", 15, false)]
    [InlineData("16-44", 16, true)]
    [InlineData("16-44", 44, true)]
    [InlineData("16-44", 45, false)]
    [InlineData("40-8", 53, true)]
    [InlineData("40-8", 1, true)]
    [InlineData("40-8", 9, false)]
    [InlineData("9-12, 30 - 31", 30, true)]
    [InlineData("9-12, 30 - 31", 13, false)]
    [InlineData("1-52", 53, true)]
    [InlineData("7", 7, true)]
    public void ASpanHoldsItsWeeks(string text, int week, bool holds)
    {
        Assert.True(WeekSet.TryParse(text, out var weeks));
        Assert.Equal(holds, weeks.Holds(week));
    }

    [Theory]
    [InlineData("0-4")]
    [InlineData("50-54")]
    [InlineData("16-")]
    [InlineData("")]
    [InlineData("april")]
    public void WhatIsNoSpanIsNotRead(string text) => Assert.False(WeekSet.TryParse(text, out _));

    [Fact]
    public void EverySetReadsBackFromItsText() => Gen.ULong[1, (1UL << 53) - 1].Sample(bits =>
    {
        var weeks = new WeekSet(bits);
        // A span that ends with week 52 takes in week 53.
        if (weeks.Holds(52) && weeks.Holds(51))
            weeks = weeks.With(new(1UL << 52));
        return WeekSet.TryParse(weeks.ToString(), out var back) && back == weeks;
    });

    [Theory]
    // ISO 8601: the week with the year's first Thursday is week 1; 2020 has 53 weeks, and 1 January 2021 is a Friday of 2020's last.
    [InlineData("2021-01-01", "2021-01-01", "53")]
    [InlineData("2021-01-04", "2021-01-04", "1")]
    [InlineData("1998-06-03", "1998-06-03", "23")]
    [InlineData("1998-06-01", "1998-06-30", "23-27")]
    [InlineData("2020-12-28", "2021-01-10", "53-1")]
    public void ARangeOfDaysTouchesItsWeeks(string first, string last, string weeks) =>
        Assert.Equal(weeks, WeekSet.Of(new(DateOnly.ParseExact(first, "yyyy-MM-dd"), DateOnly.ParseExact(last, "yyyy-MM-dd"))).ToString());

    [Fact]
    public void AWholeYearTouchesEveryWeekThatItHas() => Assert.Equal(52, System.Numerics.BitOperations.PopCount(WeekSet.Of(DayRange.Year(1999)).Bits & ((1UL << 52) - 1)));

    [Fact]
    public void WideningGoesOverTheNewYear()
    {
        Assert.True(WeekSet.TryParse("1-3", out var weeks));
        Assert.Equal("52-5", weeks.Widened(2).ToString());
    }
}
