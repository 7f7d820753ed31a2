namespace RangeMap.Change.Tests.Fronts;

/// <summary>Data that carry no speed: every estimator says so in a sentence, and nothing is NaN or infinite.</summary>
public class PoorDataTests
{
    public static TheoryData<string> Cases => ["nothing", "one square", "one year", "all in the first year", "two squares", "squares on one line", "islands far apart", "no place", "many in one square", "years without end"];

    [Theory]
    [MemberData(nameof(Cases))]
    public void EveryEstimatorGivesANumberWithItsIntervalOrASentence(string what)
    {
        var points = Points(what);
        foreach (var visits in (IReadOnlyList<SquareVisit>?[])[null, [], Visits(points)])
        {
            var report = Spread.Measure(points, visits: visits, model: ArrivalModel.Fit(Sites(points)));
            Assert.NotEmpty(report.Estimators);
            Assert.NotEmpty(report.Summary);
            Assert.DoesNotContain("NaN", report.Summary, StringComparison.Ordinal);
            Assert.All(report.Estimators, estimate =>
            {
                Assert.True(estimate.KmPerYear is null != (estimate.Refused is null), $"{estimate.Method}: {estimate}");
                Assert.True(estimate.Refused is null || estimate.Refused.Split(' ').Length > 3 && !estimate.Refused.Contains("NaN", StringComparison.Ordinal), $"{estimate.Method}: {estimate.Refused}");
                foreach (var number in (double?[])[estimate.KmPerYear, estimate.Low, estimate.High])
                    Assert.True(number is null || double.IsFinite(number.Value), $"{estimate.Method}: {estimate}");
            });
            Assert.All(report.Sectors, sector => Assert.True(double.IsFinite(sector.KmPerYear ?? 0)));
            Assert.All(report.Jumps, jump => Assert.True(double.IsFinite(jump.KmAhead)));
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void TheArrivalModelIsRefusedWithASentence(string what)
    {
        var answer = ArrivalModel.Fit(Sites(Points(what)));
        Assert.Null(answer.Fit);
        Assert.EndsWith(".", answer.Refused, StringComparison.Ordinal);
    }

    private static List<ArrivalPoint> Points(string what) => what switch
    {
        "nothing" => [],
        "one square" => [new(10, 10, 2001)],
        "one year" => [.. Enumerable.Range(0, 40).Select(i => new ArrivalPoint(i % 7 * 10, i / 7 * 10, 2005))],
        "all in the first year" => [.. Enumerable.Range(0, 60).Select(i => new ArrivalPoint(i % 10 * 10, i / 10 * 10, i == 59 ? 2002 : 2001))],
        "two squares" => [new(0, 0, 2001), new(50, 0, 2010)],
        "squares on one line" => [.. Enumerable.Range(0, 60).Select(i => new ArrivalPoint(i * 10, 5, 2000 + i / 4))],
        "islands far apart" => [.. Enumerable.Range(0, 12).Select(i => new ArrivalPoint(i % 4 * 150, i / 4 * 170, 2000 + i * 5 % 12))],
        "no place" => [.. Enumerable.Range(0, 40).Select(i => new ArrivalPoint(double.NaN, i, 2000 + i))],
        "many in one square" => [.. Enumerable.Range(0, 60).Select(i => new ArrivalPoint(5, 5, 2000 + i % 20))],
        _ => [.. Enumerable.Range(0, 40).Select(i => new ArrivalPoint(i % 7 * 10, i / 7 * 10, i % 2 == 0 ? double.PositiveInfinity : -1e300))],
    };

    private static List<SquareVisit> Visits(List<ArrivalPoint> points) => [.. points.Select(point => new SquareVisit(point.X, point.Y, point.Time, true))];

    // Finds only, as where nobody writes down what was not found.
    private static List<ArrivalSite> Sites(List<ArrivalPoint> points) =>
        [.. points.Select(point => new ArrivalSite(point.X, point.Y, [new((int)Math.Clamp(point.Time, 1900, 2100), 3, true)]))];
}
