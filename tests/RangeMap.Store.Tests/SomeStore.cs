using RangeMap.Records;
using RangeMap.TestKit;

namespace RangeMap.Store.Tests;

/// <summary>A database in a folder of its own, with three invented taxa numbered 1 to 3.</summary>
internal sealed class SomeStore : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public SomeStore()
    {
        Database = Database.Open(Path);
        new TaxonStore(Database, Clock).Keep([Some.Taxon(1), Some.Taxon(2), Some.Taxon(3)], []);
    }

    public static TimeProvider Clock { get; } = new StoppedClock();

    public string Path => _folder.File("store.sqlite");

    public Database Database { get; private set; }

    public CubeStore Cubes => new(Database);

    public long Edition => new Editions(Database).Current().Number;

    /// <summary>Opens the file anew, as another run of the program would.</summary>
    public void Reopen() => Database = Database.Open(Path);

    /// <summary>Imports records whose rows are as they stand here.</summary>
    public ImportFigures Import(IReadOnlyList<Record> records, IReadOnlyList<Refusal>? refusals = null, string dataset = "invented", string hash = "")
    {
        using var session = ImportSession.Begin(Database, dataset, "invented.csv", Clock);
        Fill(session, records, refusals ?? []);
        return session.Commit(hash.Length > 0 ? hash : $"hash {session.Batch}", """["taxon"]""", new Dictionary<string, string> { ["taxon"] = "scientificName" });
    }

    public static void Fill(ImportSession session, IReadOnlyList<Record> records, IReadOnlyList<Refusal> refusals)
    {
        foreach (var record in records)
            session.Keep(record);
        foreach (var refusal in refusals)
            session.Refuse(refusal);
        var rows = new SourceRows();
        for (var i = 0; i < records.Count + refusals.Count; i++)
            rows.Add(FormattableString.Invariant($"row {i + 1} as it was sent"));
        session.KeepSource(rows.Pack(1));
    }

    /// <summary>A record with the key given; a different version of it says something else.</summary>
    public static Record Version(int key, string square = "SU1234", string day = "2001-05-06", int taxon = 1, int version = 1) =>
        Some.Record(square, day, Some.Taxon(taxon), key) with { Content = (UInt128)version };

    public static Refusal Refused(long row) => new(row, row + 1, "taxon", "Nonsensa", "The name is not in the taxon list.", "Nonsensa,SU12");

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearPool(new(new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder(Database.Connect().ConnectionString).ToString()));
        _folder.Dispose();
    }

    private sealed class StoppedClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2020, 2, 3, 4, 5, 6, TimeSpan.Zero);
    }
}
