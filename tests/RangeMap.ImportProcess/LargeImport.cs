using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.ImportProcess;

/// <summary>An import of invented records, the same at every run, large enough that the database must write before the commit.</summary>
public static class LargeImport
{
    /// <summary>Steps of the whole import.</summary>
    public const int Steps = 90;

    private const int RecordsPerStep = 20;

    /// <summary>More than the database keeps in memory, over all steps: about 64 MiB.</summary>
    private const int BytesPerStep = 1 << 20;

    /// <summary>Runs the import to its end, or to where it is stopped.</summary>
    /// <param name="database">Where to.</param>
    /// <param name="dataset">The data set.</param>
    /// <param name="tell">Hears of each step and, as step <see cref="Steps"/>, that the commit begins.</param>
    /// <param name="bytesPerStep">Bytes of source rows that each step keeps.</param>
    public static ImportFigures Run(Database database, string dataset, Action<int> tell, int bytesPerStep = BytesPerStep)
    {
        using var session = ImportSession.Begin(database, dataset, "invented.csv", TimeProvider.System);
        var chance = new Random(1);
        for (var step = 0; step < Steps; step++)
        {
            tell(step);
            for (var i = 0; i < RecordsPerStep; i++)
                session.Keep(Record(step * RecordsPerStep + i + 1));
            var bytes = new byte[bytesPerStep];
            chance.NextBytes(bytes);
            session.KeepSource(new(step * RecordsPerStep + 1, RecordsPerStep, bytes));
        }

        tell(Steps);
        return session.Commit("hash of an invented file", "{}", new Dictionary<string, string>());
    }

    private static Record Record(int row) => new()
    {
        Row = row,
        Key = (UInt128)row * new UInt128(0x9E3779B97F4A7C15UL, 0xC2B2AE3D27D4EB4FUL),
        Content = (UInt128)row,
        Taxon = new("name:Inventa larga", "Inventa larga"),
        Square = new(GridId.British, SquareSize.Km1, 400_000 + row % 50 * 1000, 300_000 + row / 50 * 1000),
        Dates = new(new(2000, 1, 1), new(2000, 1, 1 + row % 2)),
        Recorder = $"Invented recorder {row % 7}",
    };
}
