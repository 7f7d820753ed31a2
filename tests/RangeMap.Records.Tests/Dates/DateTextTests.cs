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
    [InlineData("../9999", "1600-01-01", "2026-06-07")]
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

    // Further forms of ISO 8601-1:2019: basic forms, durations of several units, and a duration before its end.
    [Theory]
    [InlineData("2009034", "2009-02-03", "2009-02-03")]
    [InlineData("2009W07", "2009-02-09", "2009-02-15")]
    [InlineData("2009W074", "2009-02-12", "2009-02-12")]
    [InlineData("20090220T0840Z", "2009-02-20", "2009-02-20")]
    [InlineData("2009-02-20T08", "2009-02-20", "2009-02-20")]
    [InlineData("2001-01-01/P1Y2M3D", "2001-01-01", "2002-03-03")]
    [InlineData("P1Y/2001-12-31", "2001-01-01", "2001-12-31")]
    [InlineData("P1Y/2001", "2001-01-01", "2001-12-31")]
    [InlineData("2009-W07/2009-W09", "2009-02-09", "2009-03-01")]
    [InlineData("2009-034/2009-060", "2009-02-03", "2009-03-01")]
    [InlineData("2004-12-30/2005-03-13", "2004-12-30", "2005-03-13")]
    public void FurtherFormsOfTheStandardAreRead(string text, string first, string last) => AFormIsReadAsTheDaysItNames(text, first, last);

    // What these mean is ours, as docs/organiser/files.md says it.
    [Theory]
    [InlineData("1998-2001", "1998-01-01", "2001-12-31")]
    [InlineData("1998\u20132001", "1998-01-01", "2001-12-31")]
    [InlineData("1998 - 2001", "1998-01-01", "2001-12-31")]
    [InlineData("1998/9", "1998-01-01", "1999-12-31")]
    [InlineData("1998-9", "1998-01-01", "1999-12-31")]
    [InlineData("1998/99", "1998-01-01", "1999-12-31")]
    [InlineData("1998-6", "1998-06-01", "1998-06-30")]
    [InlineData("1998-06", "1998-06-01", "1998-06-30")]
    [InlineData("1998-12", "1998-12-01", "1998-12-31")]
    [InlineData("spring 1998", "1998-03-01", "1998-05-31")]
    [InlineData("Summer of 1998", "1998-06-01", "1998-08-31")]
    [InlineData("1998, autumn", "1998-09-01", "1998-11-30")]
    [InlineData("fall 1998", "1998-09-01", "1998-11-30")]
    [InlineData("winter 1998", "1998-12-01", "1999-02-28")]
    [InlineData("winter 1999/2000", "1999-12-01", "2000-02-29")]
    [InlineData("winter 1999-00", "1999-12-01", "2000-02-29")]
    [InlineData("winter 1998/9", "1998-12-01", "1999-02-28")]
    [InlineData("spring 1998 - autumn 1999", "1998-03-01", "1999-11-30")]
    [InlineData("1980s", "1980-01-01", "1989-12-31")]
    [InlineData("the 1980's", "1980-01-01", "1989-12-31")]
    [InlineData("1900s", "1900-01-01", "1999-12-31")]
    [InlineData("before 1970", "1600-01-01", "1969-12-31")]
    [InlineData("pre-1970", "1600-01-01", "1969-12-31")]
    [InlineData("Pre 1970s", "1600-01-01", "1969-12-31")]
    [InlineData("<1970", "1600-01-01", "1969-12-31")]
    [InlineData("before 3 June 1998", "1600-01-01", "1998-06-02")]
    [InlineData("before 2030", "1600-01-01", "2026-06-07")]
    [InlineData("until 1970", "1600-01-01", "1970-12-31")]
    [InlineData("after 1990", "1991-01-01", "2026-06-07")]
    [InlineData("post-1990", "1991-01-01", "2026-06-07")]
    [InlineData("since 1990", "1990-01-01", "2026-06-07")]
    [InlineData("from 1990", "1990-01-01", "2026-06-07")]
    [InlineData("from 1990 to 1995", "1990-01-01", "1995-12-31")]
    [InlineData("between 1990 and 1995", "1990-01-01", "1995-12-31")]
    [InlineData("c. 1985", "1983-01-01", "1987-12-31")]
    [InlineData("c1985", "1983-01-01", "1987-12-31")]
    [InlineData("circa 1985", "1983-01-01", "1987-12-31")]
    [InlineData("ca. June 1985", "1985-05-01", "1985-07-31")]
    [InlineData("about 3 June 1985", "1985-05-27", "1985-06-10")]
    [InlineData("~1980s", "1978-01-01", "1991-12-31")]
    [InlineData("c. 2025", "2023-01-01", "2026-06-07")]
    [InlineData("3-5 June 1998", "1998-06-03", "1998-06-05")]
    [InlineData("3 and 4 June 1998", "1998-06-03", "1998-06-04")]
    [InlineData("June-July 1998", "1998-06-01", "1998-07-31")]
    [InlineData("June/July 1998", "1998-06-01", "1998-07-31")]
    [InlineData("3 June - 5 July 1998", "1998-06-03", "1998-07-05")]
    [InlineData("Wednesday, June 3, 1998", "1998-06-03", "1998-06-03")]
    public void VagueDatesAreTheDaysThatTheyMayMean(string text, string first, string last) => AFormIsReadAsTheDaysItNames(text, first, last);

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
    [InlineData("spring 98", "no date in a form")]
    [InlineData("spring 1998/99", "one year")]
    [InlineData("winter 1998/00", "one year")]
    [InlineData("80s", "no date in a form")]
    [InlineData("1985s", "no date in a form")]
    [InlineData("1998-45", "no month 45")]
    [InlineData("2001-1998", "before it begins")]
    [InlineData("2020-2030", "future")]
    [InlineData("after 2027", "future")]
    [InlineData("after 2026", "future")]
    [InlineData("before 1600", "before 1600")]
    [InlineData("c. 2030", "future")]
    [InlineData("5-3 June 1998", "before it begins")]
    [InlineData("December - January 1998", "before it begins")]
    [InlineData("31-32 June 1998", "30 days")]
    [InlineData("Tuesday, 3 June 1998", "was a Wednesday")]
    [InlineData("36526", "2000-01-01")]
    [InlineData("1985?", "question mark")]
    [InlineData("9989-01-01/P20Y", "duration")]
    [InlineData("P2000Y/1700", "duration")]
    [InlineData("P1D1Y/1998", "duration")]
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
