namespace RangeMap.Presence.Tests;

public class PeriodTextTests
{
    [Theory]
    [InlineData("2000/2009", "2000-01-01", "2010-01-01")]
    [InlineData("2005", "2005-01-01", "2006-01-01")]
    [InlineData("2004-02", "2004-02-01", "2004-03-01")]
    [InlineData("2004-02/2004-12", "2004-02-01", "2005-01-01")]
    [InlineData("2004-02-29/2004-02-29", "2004-02-29", "2004-03-01")]
    [InlineData("1999-12-31/2000-01-01", "1999-12-31", "2000-01-02")]
    public void TheEndOfAnIntervalCoversItsWholeLastUnit(string text, string first, string end)
    {
        Assert.True(PeriodText.TryParse(text, out var period, out var why), why);
        Assert.Equal(DateOnly.Parse(first, System.Globalization.CultureInfo.InvariantCulture).DayNumber, period.FirstDay);
        Assert.Equal(DateOnly.Parse(end, System.Globalization.CultureInfo.InvariantCulture).DayNumber, period.EndDay);
    }

    [Fact]
    public void OpenEndsReachAsFarAsDaysGo()
    {
        Assert.True(PeriodText.TryParseList("../1999,2010/..", out var periods, out _));
        Assert.Equal(int.MinValue, periods[0].FirstDay);
        Assert.Equal(int.MaxValue, periods[1].EndDay);
    }

    [Theory]
    [InlineData("2009/2000", "ends before it starts")]
    [InlineData("2000/2005/2009", "more than one '/'")]
    [InlineData("yesterday", "is no date")]
    [InlineData("..", "alone is no period")]
    [InlineData("2001-02-30", "is no date")]
    [InlineData("0000", "is no date")]
    [InlineData("2000,,2001", "is no date")]
    public void ABadPeriodIsRefusedWithItsReason(string text, string part)
    {
        Assert.False(PeriodText.TryParseList(text, out _, out var why));
        Assert.Contains(part, why, StringComparison.Ordinal);
    }

    [Fact]
    public void NoTextMeansAllDates()
    {
        Assert.True(PeriodText.TryParseList(null, out var periods, out _));
        Assert.Equal("../..", Assert.Single(periods).Text);
    }

    [Fact]
    public void TooManyPeriodsAreRefused() =>
        Assert.False(PeriodText.TryParseList(string.Join(',', Enumerable.Repeat("2000", 65)), out _, out _));
}
