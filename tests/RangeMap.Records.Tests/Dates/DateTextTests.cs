using System.Globalization;

namespace RangeMap.Records.Tests;

public sealed class DateTextTests
{
    private static readonly DateOnly Today = new(2026, 6, 7);

    // Forms and meanings after ISO 8601-1:2019 and the examples of the Darwin Core term eventDate (https://dwc.tdwg.org/terms/#dwc:eventDate).
    [Theory]
    [InlineData("1971", "1971-01-01", "1971-12-31")]
    [InlineData("1906-06", "1906-06-01", "1906-06-30")]
    [InlineData("1809-02-12", "1809-02-12", "1809-02-12")]
    [InlineData("2009-02-20T08:40Z", "2009-02-20", "2009-02-20")]
    [InlineData("1963-03-08T14:07-06:00", "1963-03-08", "1963-03-08")]
    [InlineData("1963-03-08T14:07-0600", "1963-03-08", "1963-03-08")]
    [InlineData("2018-08-29T15:19", "2018-08-29", "2018-08-29")]
    [InlineData("2018-08-29 15:19:03.5", "2018-08-29", "2018-08-29")]
    [InlineData("2009-034", "2009-02-03", "2009-02-03")]
    [InlineData("2008-366", "2008-12-31", "2008-12-31")]
    [InlineData("2009-W07-4", "2009-02-12", "2009-02-12")]
    [InlineData("2009-W01", "2008-12-29", "2009-01-04")]
    [InlineData("20090220", "2009-02-20", "2009-02-20")]
    [InlineData("1998/06/03", "1998-06-03", "1998-06-03")]
    [InlineData("2007-03-01/2008-05-11", "2007-03-01", "2008-05-11")]
    [InlineData("2007-03-01T13:00:00Z/2008-05-11T15:30:00Z", "2007-03-01", "2008-05-11")]
    [InlineData("2007-11-13/15", "2007-11-13", "2007-11-15")]
    [InlineData("2007-11-13/12-15", "2007-11-13", "2007-12-15")]
    [InlineData("2007-11/12", "2007-11-01", "2007-12-31")]
    [InlineData("2009-02-20T08:40/09:10", "2009-02-20", "2009-02-20")]
    [InlineData("1900/1909", "1900-01-01", "1909-12-31")]
    [InlineData("2001-01-01/P1Y", "2001-01-01", "2001-12-31")]
    [InlineData("2001-01-31/P10D", "2001-01-31", "2001-02-09")]
    [InlineData("2001-01/P3M", "2001-01-01", "2001-03-31")]
    [InlineData("../1999", "1600-01-01", "1999-12-31")]
    [InlineData("1999/..", "1999-01-01", "2026-06-07")]
    [InlineData("1999/", "1999-01-01", "2026-06-07")]
    [InlineData("2026", "2026-01-01", "2026-12-31")]
    [InlineData("3 Jun 1998", "1998-06-03", "1998-06-03")]
    [InlineData("3rd June 1998", "1998-06-03", "1998-06-03")]
    [InlineData("June 3, 1998", "1998-06-03", "1998-06-03")]
    [InlineData("03-Jun-1998", "1998-06-03", "1998-06-03")]
    [InlineData("June 1998", "1998-06-01", "1998-06-30")]
    [InlineData("Sept 1998", "1998-09-01", "1998-09-30")]
    [InlineData("  1998-06-03 ", "1998-06-03", "1998-06-03")]
    [InlineData("1 June 1998 - 3 June 1998", "1998-06-01", "1998-06-03")]
    [InlineData("25/6/1998", "1998-06-25", "1998-06-25")]
    [InlineData("6/25/1998", "1998-06-25", "1998-06-25")]
    [InlineData("06/1998", "1998-06-01", "1998-06-30")]
    [InlineData("6.6.1998", "1998-06-06", "1998-06-06")]
    [InlineData("25/6/1998 00:00:00", "1998-06-25", "1998-06-25")]
    [InlineData("25/06/1998 - 27/06/1998", "1998-06-25", "1998-06-27")]
    public void AFormIsReadAsTheDaysItNames(string text, string first, string last)
    {
        Assert.True(DateText.TryParse(text, DateOrder.NotStated, Today, out var days, out var why), why);
        Assert.Equal(new(Day(first), Day(last)), days);
        Assert.Null(why);
    }

    [Theory]
    [InlineData("2001-02-30", "28 days")]
    [InlineData("2001-02-29", "28 days")]
    [InlineData("2001-13-01", "no month 13")]
    [InlineData("0000-00-00", "no year 0")]
    [InlineData("1999-00-00", "no month 0")]
    [InlineData("1999-06-00", "no day 0")]
    [InlineData("2009-366", "365 days")]
    [InlineData("2009-W54", "no such week")]
    [InlineData("2008-05-11/2007-03-01", "before it begins")]
    [InlineData("2007-11-13/12", "before it begins")]
    [InlineData("2026-06-08", "future")]
    [InlineData("2027", "future")]
    [InlineData("2020/2027", "future")]
    [InlineData("1599-12-31", "before 1600")]
    [InlineData("1066", "before 1600")]
    [InlineData("../1599", "before it begins")]
    [InlineData("../..", "both ends")]
    [InlineData("/", "both ends")]
    [InlineData("3/6/98", "four figures")]
    [InlineData("01/02/03", "four figures")]
    [InlineData("3 Jun 98", "four figures")]
    [InlineData("3/6/1998", "told apart")]
    [InlineData("31/31/1998", "no month 31")]
    [InlineData("13/1998", "no month 13")]
    [InlineData("36179", "bare number")]
    [InlineData("199806", "bare number")]
    [InlineData("1998/06", "1998-06")]
    [InlineData("spring 1910", "no date in a form")]
    [InlineData("1999-03-XX", "no date in a form")]
    [InlineData("17IV1934", "no date in a form")]
    [InlineData("", "no date")]
    [InlineData("2001-01-01/P0D", "duration")]
    [InlineData("2001-01-01/P99999Y", "duration")]
    public void WhatIsNoDayIsRefusedWithItsReason(string text, string reason)
    {
        Assert.False(DateText.TryParse(text, DateOrder.NotStated, Today, out _, out var why));
        Assert.Contains(reason, why, StringComparison.Ordinal);
    }

    [Fact]
    public void AStatedOrderIsFollowed()
    {
        Assert.True(DateText.TryParse("3/6/1998", DateOrder.DayFirst, Today, out var days, out _));
        Assert.Equal(new DateOnly(1998, 6, 3), days.First);
        Assert.True(DateText.TryParse("3/6/1998", DateOrder.MonthFirst, Today, out days, out _));
        Assert.Equal(new DateOnly(1998, 3, 6), days.First);
        Assert.False(DateText.TryParse("25/6/1998", DateOrder.MonthFirst, Today, out _, out var why));
        Assert.Contains("no month 25", why, StringComparison.Ordinal);
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
