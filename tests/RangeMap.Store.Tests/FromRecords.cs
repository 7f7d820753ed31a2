using Dapper;
using RangeMap.Presence;

namespace RangeMap.Store.Tests;

/// <summary>
/// The cube and the visits as the database itself counts them from its table of records: an answer that shares nothing
/// with the code under test. The serious doubts are bits 0, 1, 3, 4, 8, 10 to 13, 16, 17 and 22.
/// </summary>
internal static class FromRecords
{
    private const int SeriousDoubts = 1 + 2 + 8 + 16 + (1 << 8) + (15 << 10) + (3 << 16) + (1 << 22);

    public static SortedDictionary<int, List<CubeCell>> Cubes(Database database)
    {
        using var connection = database.Connect();
        var rows = connection.Query<(long Taxon, long Square, long First, long Last, long All, long Usable, long Confirmed)>(
            """
            SELECT taxon, square, first_day, last_day, COUNT(*), SUM(status = 1 OR (status = 0 AND (doubts & @SeriousDoubts) = 0)), SUM(status = 1)
            FROM record WHERE present = 1 AND status <> 3 GROUP BY 1, 2, 3, 4 ORDER BY 1, 2, 3, 4
            """,
            new { SeriousDoubts });
        var cubes = new SortedDictionary<int, List<CubeCell>>();
        foreach (var row in rows)
        {
            if (!cubes.TryGetValue((int)row.Taxon, out var cells))
                cubes.Add((int)row.Taxon, cells = []);
            cells.Add(new(row.Square, (int)row.First, (int)row.Last, new((int)row.All, (int)row.Usable, (int)row.Confirmed)));
        }

        return cubes;
    }

    public static List<VisitEntry> Visits(Database database)
    {
        using var connection = database.Connect();
        return [.. connection.Query<(long Square, long Day, long Recorder, long Taxon, long Present, long Complete, long Count)>(
            """
            SELECT square, first_day, COALESCE(recorder, 0), taxon, present, complete_list, COUNT(*)
            FROM record WHERE first_day = last_day AND status <> 3 GROUP BY 1, 2, 3, 4, 5, 6 ORDER BY 1, 2, 3, 4, 5, 6
            """)
            .Select(row => new VisitEntry(row.Square, (int)row.Day, (int)row.Recorder, (int)row.Taxon, row.Present == 1, (int)row.Count, row.Complete == 1))];
    }

    /// <summary>Asserts that the store's cube and visits are those of its records, each way of reading them.</summary>
    public static void AssertAgree(Database database)
    {
        var store = new CubeStore(database);
        var expected = Cubes(database);
        var all = store.ReadAll();
        Assert.Equal(expected.Keys, all.Keys.Order());
        foreach (var (taxon, cells) in expected)
        {
            Assert.Equal(cells, all[taxon].Cells.ToArray());
            Assert.Equal(cells, store.Read([taxon]).Cells.ToArray());
        }

        Assert.Equal(Visits(database), store.ReadVisits().Entries.ToArray());
    }
}
