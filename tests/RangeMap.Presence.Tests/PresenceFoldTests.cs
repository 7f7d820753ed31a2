using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.TestKit;

namespace RangeMap.Presence.Tests;

public class PresenceFoldTests
{
    [Fact]
    public void ARecordCountsInThePeriodThatHoldsAllItsDays()
    {
        var map = Fold(SquareSize.Km10, "2000/2009,2010/2019", Some.Record("SK32", "2005-06-01"), Some.Record("SK32", "2009-12-31/2010-01-01"));
        var square = Assert.Single(map.Squares);
        Assert.Equal([1, 0], square.PerPeriod.Select(count => count.Records));
        Assert.Equal(new(0, 1, 0), map.Omitted);
    }

    [Fact]
    public void ARecordNeverAppearsOnAMapFinerThanItsPrecision()
    {
        var map = Fold(SquareSize.Km2, "../..", Some.Record("SK32", "2005-06-01"), Some.Record("SK3628", "2005-06-01"));
        Assert.Equal("SK32U", Assert.Single(map.Squares).Square.ToString());
        Assert.Equal(1, map.Omitted.TooCoarse);
    }

    [Fact]
    public void ATetradThatStraddlesTwoQuadrantsIsOnNoQuadrantMap()
    {
        // Letters M to R of the tetrad table begin 4 km east and 4 km north, and straddle the 5 km lines.
        var map = Fold(SquareSize.Km5, "../..", Some.Record("SK32M", "2005-06-01"), Some.Record("SK32A", "2005-06-01"));
        Assert.Equal("SK32SW", Assert.Single(map.Squares).Square.ToString());
        Assert.Equal(1, map.Omitted.TooCoarse);
    }

    [Fact]
    public void RejectedAndAbsentRecordsNeverMap()
    {
        var map = Fold(
            SquareSize.Km10, "../..",
            Some.Record("SK32", "2005-06-01") with { Status = ReviewStatus.Rejected },
            Some.Record("SK33", "2005-06-01") with { Present = false });
        Assert.Empty(map.Squares);
        Assert.Equal(default, map.Omitted);
    }

    [Fact]
    public void WhatADoubtKeepsOffTheDefaultMapIsReported()
    {
        var doubtful = Some.Record("SK32", "2005-06-01") with { Doubts = Doubts.PlacesDisagree };
        Assert.Equal(new(0, 0, 1), Fold(SquareSize.Km10, "../..", doubtful).Omitted);
        Assert.Single(Fold(SquareSize.Km10, "../..", Quality.All, doubtful).Squares);
    }

    [Fact]
    public void EveryRecordIsShownOrReported()
    {
        var records = Enumerable.Range(0, 500).Select(i => Some.Record(
            i % 7 == 0 ? "SK32" : i % 5 == 0 ? "SK32M" : "SK3628",
            $"{1995 + i % 20}-06-01/{1995 + i % 20 + (i % 11 == 0 ? 2 : 0)}-06-01") with
        { Doubts = i % 13 == 0 ? Doubts.PlacesDisagree : Doubts.None }).ToArray();
        foreach (var size in new[] { SquareSize.Km10, SquareSize.Km5, SquareSize.Km2, SquareSize.Km1 })
        {
            var map = Fold(size, "1995/1999,2000/2009,2010/..", records);
            var shown = map.Squares.Sum(square => square.PerPeriod.Sum(count => count.Records));
            Assert.Equal(records.Length, shown + map.Omitted.TooCoarse + map.Omitted.BetweenPeriods + map.Omitted.BelowQuality);
        }
    }

    [Fact]
    public void TheFirstYearIsTheOneByWhichPresenceIsCertain()
    {
        var square = Assert.Single(Fold(SquareSize.Km10, "../..", Some.Record("SK32", "1990-01-01/2001-12-31"), Some.Record("SK32", "2003-05-05")).Squares);
        Assert.Equal((2001, 2003), (square.FirstYear, square.LastYear));
    }

    [Fact]
    public void AFrontDrawnYearByYearIsReadBackFromTheMap()
    {
        // Each digit is the last digit of the year of first arrival.
        var picture = """
            ..9
            .78
            567
            """;
        var drawn = Drawing.Squares(picture, GridReference.Parse("SK32")).ToList();
        var cube = TaxonCube.Gather(drawn.SelectMany(d => new[] { Cell(d.Square, 2000 + d.Mark - '0'), Cell(d.Square, 2012) }));
        var arrivals = Arrival.Of(SizedCube.Of(cube, SquareSize.Km10), Quality.Usable);
        Assert.Equal(drawn.OrderBy(d => d.Square).Select(d => (d.Square, 2000 + d.Mark - '0')), arrivals.Select(a => (a.Square, a.Year)));
    }

    [Fact]
    public void ASensitiveTaxonStandsOnNoFinerMapThanAllowed()
    {
        var cube = Generalisation.Generalise(Cube(Some.Record("SK3628", "2005-06-01"), Some.Record("SK32M", "2005-06-01")), SquareSize.Km5);
        Assert.Empty(PresenceFold.Fold(SizedCube.Of(cube, SquareSize.Km1), Periods("../.."), Quality.All).Squares);
        Assert.Equal(["SK32"], PresenceFold.Fold(SizedCube.Of(cube, SquareSize.Km10), Periods("../.."), Quality.All).Squares.Select(s => s.Square.ToString()));
        Assert.Equal(["SK32", "SK32NE"], cube.Cells.ToArray().Select(cell => Square.FromCode(cell.SquareCode).ToString()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void TheFirstFindOfASquareIsTheRecordThatIsCertainEarliest()
    {
        // In SK32 the whole of 2004 is over after 1 June 2004; the rejected record of 1999 does not count.
        var cube = Cube(
            Some.Record("SK3628", "2004-01-01/2004-12-31"), Some.Record("SK32", "2004-06-01"), Some.Record("SK32", "2010-06-01"), Some.Record("TQ38", "2011-05-01/2011-05-31"),
            Some.Record("SK3629", "1999-06-01") with { Status = ReviewStatus.Rejected });
        var finds = FirstFind.Of(SizedCube.Of(cube, SquareSize.Km10), Quality.Usable);
        Assert.Equal(
            [("SK32", "2004-06-01", "2004-06-01"), ("TQ38", "2011-05-01", "2011-05-31")],
            finds.Select(find => (find.Square.ToString(), Day(find.FirstDay), Day(find.LastDay))).Order());

        static string Day(int number) => DateOnly.FromDayNumber(number).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
    }

    private static PresenceMap Fold(SquareSize size, string periods, params Record[] records) => Fold(size, periods, Quality.Usable, records);

    private static PresenceMap Fold(SquareSize size, string periods, Quality quality, params Record[] records) =>
        PresenceFold.Fold(SizedCube.Of(Cube(records), size), Periods(periods), quality);

    private static TaxonCube Cube(params Record[] records) =>
        TaxonCube.Gather(records.Select(record => CubeFold.TryCell(record, out var cell) ? cell : default).Where(cell => cell.SquareCode != 0));

    private static IReadOnlyList<Period> Periods(string text) => PeriodText.TryParseList(text, out var periods, out var why) ? periods : throw new ArgumentException(why);

    private static CubeCell Cell(Square square, int year)
    {
        var day = new DateOnly(year, 6, 1).DayNumber;
        return new(square.Code, day, day, new(1, 1, 0));
    }
}
