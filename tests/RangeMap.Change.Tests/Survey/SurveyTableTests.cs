using CsCheck;

namespace RangeMap.Change.Tests.Survey;

public class SurveyTableTests
{
    private static readonly Gen<(int Square, int Taxon, int Records)[]> _finds = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 6], Gen.Int[0, 4]).Array[0, 60];

    [Fact]
    public void FindsReadFromEitherSideAreTheFindsThatWereGiven() => _finds.Sample(finds =>
    {
        var table = FoundTable.Of(10, 7, finds);
        var sums = finds.GroupBy(find => (find.Square, find.Taxon)).Select(g => (g.Key.Square, g.Key.Taxon, Records: g.Sum(f => f.Records))).Where(f => f.Records > 0).ToHashSet();
        var bySquare = Enumerable.Range(0, 10).SelectMany(s => table.InSquare(s).ToArray().Select(f => (s, f.Index, f.Records))).ToList();
        var byTaxon = Enumerable.Range(0, 7).SelectMany(t => table.OfTaxon(t).ToArray().Select(f => (f.Index, t, f.Records))).ToList();
        Assert.Equal(sums.Count, bySquare.Count);
        Assert.True(sums.SetEquals(bySquare));
        Assert.True(sums.SetEquals(byTaxon));
        Assert.Equal(sums.Count, byTaxon.Count);
        Assert.Equal(sums.Select(f => f.Square).Distinct().Count(), table.SquaresWithFinds);
    });

    [Theory]
    [InlineData(10, 0, 1)]
    [InlineData(-1, 0, 1)]
    [InlineData(0, 7, 1)]
    [InlineData(0, 0, -1)]
    public void AFindOutsideTheTableIsRefused(int square, int taxon, int records) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FoundTable.Of(10, 7, [(square, taxon, records)]));

    [Fact]
    public void VisitsComeBySquareAndDayWithTheirListsSortedAndEachTaxonOnce()
    {
        var day = new DateOnly(2004, 5, 3).DayNumber;
        var visits = VisitTable.Of(3, [(2, day, 7, [4, 1, 4]), (0, day + 400, 1, []), (0, day, 1, [2])]);
        Assert.Equal([2004, 2005], visits.To(0).ToArray().Select(v => v.Year));
        Assert.True(visits.To(1).IsEmpty);
        Assert.Equal([1, 4], visits.List(visits.To(2)[0]).ToArray());
        Assert.Equal(3, visits.All.Length);
    }

    [Fact]
    public void AnUprightSquareHasTheAreaOfItsSideAndItsCentreInTheMiddle()
    {
        var square = SurveySquare.Upright(400, 200, 10);
        Assert.Equal(100, square.AreaKm2, 9);
        Assert.Equal(new PlanePoint(405, 205), square.Centre);
    }
}
