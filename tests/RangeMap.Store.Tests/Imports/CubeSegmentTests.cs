using Dapper;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class CubeSegmentTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    /// <summary>Debug builds write every 50 cells and visits, so 400 records cross that seam many times, whether they make visits or not.</summary>
    [Theory]
    [InlineData("2001-05-06", 3)]
    [InlineData("2001-05-01/2001-05-31", 24)]
    public void ACubeWrittenInManyPiecesIsTheCubeOfAllRecords(string day, int segments)
    {
        _store.Import([.. Enumerable.Range(1, 400).Select(key => Version(key, Square(key % 90), day, taxon: 1 + key % 3))]);
        FromRecords.AssertAgree(_store.Database);
        Assert.InRange(CountSegments(), segments, 3 * CubeStore.MostSegments);
    }

    [Fact]
    public void ManySmallImportsAreMergedAndKeepTheSum()
    {
        var most = 0L;
        for (var key = 1; key <= 3 * CubeStore.MostSegments; key++)
        {
            _store.Import([Version(key, Square(key % 7))]);
            most = Math.Max(most, CountSegments());
        }

        Assert.InRange(most, 2, CubeStore.MostSegments);
        FromRecords.AssertAgree(_store.Database);
        Assert.Equal(3 * CubeStore.MostSegments, _store.Cubes.Read([1]).Cells.ToArray().Sum(cell => cell.Counts.All));
    }

    [Fact]
    public void TheCubeOfSeveralTaxaIsTheirSum()
    {
        _store.Import([Version(1, taxon: 1), Version(2, taxon: 2), Version(3, "SU99", taxon: 3)]);
        Assert.Equal(2, Assert.Single(_store.Cubes.Read([1, 2]).Cells.ToArray()).Counts.All);
        Assert.Equal(0, _store.Cubes.Read([]).Cells.Length);
    }

    private static string Square(int number) => FormattableString.Invariant($"SU{number / 10 % 10}{number % 10}");

    private long CountSegments()
    {
        using var connection = _store.Database.Connect();
        return connection.ExecuteScalar<long>("SELECT COUNT(*) FROM cube_segment");
    }
}
