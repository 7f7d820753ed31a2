namespace RangeMap.Change.Tests.Trends;

public class LogisticPlaneTests
{
    // Six invented years by four lengths of list; computed with R 4.2.2, glm.
    private static readonly int[][] _found = [[0, 0, 0, 0, 1, 0], [0, 0, 1, 0, 1, 0], [0, 1, 0, 1, 1, 1], [0, 1, 1, 1, 1, 1]];
    private static readonly int[] _lengths = [3, 6, 12, 24];

    [Fact]
    public void TheFitIsThatOfR()
    {
        LogisticCell[] cells = [.. _lengths.SelectMany((length, row) => _found[row].Select((found, i) => new LogisticCell(i + 1, Math.Log(length), 1, found)))];
        var fit = LogisticPlane.Fit(cells)!;
        Assert.Equal(-7.438906, fit.Coefficients[0], 1e-5);
        Assert.Equal(0.793589, fit.Coefficients[1], 1e-5);
        Assert.Equal(2.179896, fit.Coefficients[2], 1e-5);
        Assert.Equal(0.398872, Math.Sqrt(fit.Covariance[1, 1]), 1e-5);
        Assert.Equal(0.929130, Math.Sqrt(fit.Covariance[2, 2]), 1e-5);
        Assert.Equal(-10.268082, fit.LogLikelihood, 1e-5);
        Assert.Equal(0.164390, fit.At(1, Math.Log(10)), 1e-5);
        Assert.Equal(0.912298, fit.At(6, Math.Log(10)), 1e-5);
    }

    [Fact]
    public void FourHundredRandomListsGiveWhatRGives()
    {
        var fit = LogisticPlane.Fit([.. ReferenceTables.Numbers("lists.csv").Select(row => new LogisticCell(row[1], row[2], 1, row[3]))])!;
        for (var i = 0; i < 3; i++)
            Assert.Equal(ReferenceTables.Expected($"logistic.b{i}"), fit.Coefficients[i], 1e-7);
        Assert.Equal(ReferenceTables.Expected("logistic.se1"), Math.Sqrt(fit.Covariance[1, 1]), 1e-7);
        Assert.Equal(ReferenceTables.Expected("logistic.loglik"), fit.LogLikelihood, 1e-6);
    }

    [Fact]
    public void CellsOfManyListsGiveWhatTheirListsGive()
    {
        var lists = ReferenceTables.Numbers("lists.csv").Select(row => (U: row[1], V: row[2], Found: row[3])).ToList();
        var cells = lists.GroupBy(list => (list.U, list.V)).Select(g => new LogisticCell(g.Key.U, g.Key.V, g.Count(), g.Sum(list => list.Found))).ToArray();
        Assert.True(cells.Length < lists.Count);
        Assert.Equal(ReferenceTables.Expected("logistic.b1"), LogisticPlane.Fit(cells)!.Coefficients[1], 1e-7);
    }

    [Fact]
    public void FindsThatALinePartsFromTheRestAreRefused() => Assert.Null(LogisticPlane.Fit(
        [new(1, 1, 5, 0), new(2, 1, 5, 0), new(3, 1, 5, 5), new(4, 2, 5, 5), new(4, 1, 5, 5), new(1, 2, 5, 0)]));

    [Fact]
    public void OneYearOnlyIsRefused() => Assert.Null(LogisticPlane.Fit([new(1, 1, 5, 2), new(1, 2, 5, 3), new(1, 3, 5, 4)]));

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    public void NoFindOrNothingButFindsIsRefused(int finds) => Assert.Null(LogisticPlane.Fit([new(1, 1, 5, finds), new(2, 2, 5, finds), new(3, 1, 5, finds)]));
}
