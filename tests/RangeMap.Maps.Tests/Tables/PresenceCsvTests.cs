using System.Globalization;
using CsCheck;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps.Tests;

public class PresenceCsvTests
{
    [Fact]
    public async Task ADrawingGivesARowForEachSquareAndPeriodWithRecords()
    {
        var map = Drawing.Of(new(GridId.British, SquareSize.Km10, 400_000, 300_000), "a.#");
        var text = await Written.TextAsync(stream => PresenceCsv.WriteAsync(stream, map));
        Assert.Equal(
            "square,grid,size,period,records,visits,firstYear,lastYear,quality\r\n" +
            "SK00,GB,10km,../1999,2,3,1980,1990,usable\r\n" +
            "SK20,GB,10km,../1999,2,3,1980,1990,usable\r\n" +
            "SK20,GB,10km,2000/..,5,6,2004,2020,usable\r\n",
            text);
    }

    [Fact]
    public void ReadBackByHandTheTableIsTheMap() =>
        SomeMaps.Any.SampleAsync(async map =>
        {
            var text = await Written.TextAsync(stream => PresenceCsv.WriteAsync(stream, map));
            Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
            var rows = text.TrimEnd().Split("\r\n").Skip(1).Select(row => row.Split(',')).ToArray();
            var expected = map.Squares.SelectMany(square => square.PerPeriod.Select((count, i) => (square.Square, Period: map.Periods[i].Text, Count: count)))
                .Where(row => row.Count.Records > 0).ToArray();
            Assert.Equal(expected.Select(row => row.Square), rows.Select(row => GridReference.Parse(row[0])));
            Assert.Equal(expected.Select(row => row.Period), rows.Select(row => row[3]));
            Assert.Equal(
                expected.Select(row => (row.Count.Records, row.Count.Visits, row.Count.FirstYear, row.Count.LastYear)),
                rows.Select(row => (Number(row[4]), Number(row[5]), Number(row[6]), Number(row[7]))));
        }, iter: 50, seed: "0N0XIzNsQ0O2");

    [Theory]
    [InlineData(SquareSize.M100, Quality.All, "100m", "all")]
    [InlineData(SquareSize.Km2, Quality.Confirmed, "2km", "confirmed")]
    public async Task SizeAndQualityAreNamedAsTheyAreAsked(SquareSize size, Quality quality, string sizeText, string qualityText)
    {
        var map = Drawing.Of(new(GridId.Irish, size, 300_000, 300_000), "a") with { Quality = quality };
        var row = (await Written.TextAsync(stream => PresenceCsv.WriteAsync(stream, map))).Split("\r\n")[1].Split(',');
        Assert.Equal(("IE", sizeText, qualityText), (row[1], row[2], row[8]));
    }

    private static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}
