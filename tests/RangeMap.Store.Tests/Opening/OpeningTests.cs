using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.TestKit;

namespace RangeMap.Store.Tests;

public sealed class OpeningTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string File => _folder.File("store.sqlite");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void AnAbsentFileBecomesAnEmptyStoreOfTheNewestSchema()
    {
        var database = Database.Open(File);
        using var connection = database.Connect();
        Assert.Equal(Migrations.Newest, connection.ExecuteScalar<int>("PRAGMA user_version"));
        Assert.Equal(Migrations.ApplicationId, connection.ExecuteScalar<int>("PRAGMA application_id"));
        Assert.Equal("wal", connection.ExecuteScalar<string>("PRAGMA journal_mode"));
        Assert.Equal(0, new Editions(database).Current().Number);
    }

    [Fact]
    public void OpeningAgainChangesNothing()
    {
        var before = LogicalDump.Of(Database.Open(File));
        Assert.Equal(before, LogicalDump.Of(Database.Open(File)));
    }

    [Fact]
    public void AnEmptyFileBecomesAStore()
    {
        System.IO.File.WriteAllBytes(File, []);
        Assert.Equal(0, new Editions(Database.Open(File)).Current().Number);
    }

    [Fact]
    public void AStoreOfAnOlderSchemaIsBroughtUpToDateWithItsData()
    {
        using (var old = Plain(File))
            old.Execute($"{Script("0001_start.sql")}; INSERT INTO setting VALUES ('name', 'An old folder'); PRAGMA user_version = 1; PRAGMA application_id = {Migrations.ApplicationId}");
        var database = Database.Open(File);
        Assert.Equal("An old folder", new Settings(database).Read("name"));
        Assert.Equal(LogicalDump.Of(Database.Open(_folder.File("new.sqlite")), "setting"), LogicalDump.Of(database, "setting"));
    }

    [Fact]
    public void AStoreOfANewerProgramIsRefusedAndLeftAsItIs()
    {
        using (var newer = Database.Open(File).Connect())
            newer.Execute("PRAGMA user_version = 999; PRAGMA wal_checkpoint(TRUNCATE)");
        var before = System.IO.File.ReadAllBytes(File);
        var problem = Assert.Throws<StoreException>(() => Database.Open(File));
        Assert.Contains("schema 999", problem.Message, StringComparison.Ordinal);
        Assert.Contains("newer", problem.Mend, StringComparison.Ordinal);
        Assert.Equal(before, System.IO.File.ReadAllBytes(File));
    }

    [Theory]
    [InlineData("CREATE TABLE theirs (x)")]
    [InlineData("PRAGMA journal_mode = WAL; CREATE TABLE theirs (x)")]
    [InlineData("PRAGMA application_id = 77")]
    [InlineData("PRAGMA user_version = 1")]
    public void AnotherProgramsDatabaseIsRefusedAndLeftByteForByte(string theirs)
    {
        using (var other = Plain(File))
            other.Execute(theirs);
        var before = System.IO.File.ReadAllBytes(File);
        var problem = Assert.Throws<StoreException>(() => Database.Open(File));
        Assert.Contains("another program", problem.Message, StringComparison.Ordinal);
        Assert.Equal(before, System.IO.File.ReadAllBytes(File));
    }

    /// <summary>What another program had not yet written into its file stays in its log, for that program to find.</summary>
    [Fact]
    public void AnotherProgramsUnfinishedLogIsLeftAlone()
    {
        using (var other = Plain(_folder.File("theirs.sqlite")))
        {
            other.Execute("PRAGMA journal_mode = WAL; CREATE TABLE theirs (x)");
            System.IO.File.Copy(_folder.File("theirs.sqlite"), File);
            System.IO.File.Copy(_folder.File("theirs.sqlite-wal"), File + "-wal");
        }

        var (before, log) = (System.IO.File.ReadAllBytes(File), System.IO.File.ReadAllBytes(File + "-wal"));
        Assert.Contains("another program", Assert.Throws<StoreException>(() => Database.Open(File)).Message, StringComparison.Ordinal);
        Assert.Equal(before, System.IO.File.ReadAllBytes(File));
        Assert.Equal(log, System.IO.File.ReadAllBytes(File + "-wal"));
    }

    [Fact]
    public void AFileThatIsNoDatabaseIsRefusedAndLeftByteForByte()
    {
        System.IO.File.WriteAllText(File, string.Concat(Enumerable.Repeat("taxon,date,place\n", 500)));
        var before = System.IO.File.ReadAllBytes(File);
        Assert.Contains("cannot be opened", Assert.Throws<StoreException>(() => Database.Open(File)).Message, StringComparison.Ordinal);
        Assert.Equal(before, System.IO.File.ReadAllBytes(File));
    }

    [Theory]
    [InlineData(50)]
    [InlineData(4096)]
    [InlineData(20_000)]
    public void AFileThatWasCutOffIsRefused(int length)
    {
        MakeWhole();
        using (var stream = System.IO.File.OpenWrite(File))
            stream.SetLength(length);
        Assert.Throws<StoreException>(() => Database.Open(File));
    }

    /// <summary>Damage may be out of sight when the file is opened; it must never end the program with anything but a sentence.</summary>
    [Fact]
    public void DamageAnywhereIsASentenceOrAProblemThatIsTold()
    {
        MakeWhole();
        var whole = System.IO.File.ReadAllBytes(File);
        var chance = new Random(7);
        for (var i = 0; i < 40; i++)
        {
            var path = _folder.File($"damaged-{i}.sqlite");
            var damaged = whole.ToArray();
            chance.NextBytes(damaged.AsSpan(chance.Next(damaged.Length - 600), 600));
            System.IO.File.WriteAllBytes(path, damaged);
            try
            {
                new StoreVerification(Database.Open(path)).FindProblems();
            }
            catch (StoreException)
            {
            }
        }
    }

    [Fact]
    public void AFolderThatIsNotThereIsRefused() =>
        Assert.Throws<StoreException>(() => Database.Open(_folder.File("absent/store.sqlite")));

    [Fact]
    public void AFolderInThePlaceOfTheFileIsRefused() =>
        Assert.Throws<StoreException>(() => Database.Open(_folder.Path));

    [Fact]
    public void AFolderThatCannotBeWrittenToIsRefused()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The folder is one of Linux.");
        Assert.Throws<StoreException>(() => Database.Open("/proc/store.sqlite"));
    }

    [Fact]
    public void ANewSchemaIsEitherThereWholeOrNotAtAll()
    {
        using var connection = Plain(File);
        using (connection.BeginTransaction())
            connection.Execute(Script("0001_start.sql"));
        Assert.Equal(0, connection.ExecuteScalar<int>("SELECT COUNT(*) FROM sqlite_schema"));
        connection.Close();
        Assert.Equal(0, new Editions(Database.Open(File)).Current().Number);
    }

    private void MakeWhole()
    {
        using var store = new SomeStore();
        store.Import([.. Enumerable.Range(1, 300).Select(key => SomeStore.Version(key))]);
        using (var connection = store.Database.Connect())
            connection.Execute("PRAGMA wal_checkpoint(TRUNCATE)");
        System.IO.File.Copy(store.Path, File);
    }

    private static SqliteConnection Plain(string path)
    {
        var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        return connection;
    }

    private static string Script(string name)
    {
        using var reader = new StreamReader(typeof(Database).Assembly.GetManifestResourceStream("RangeMap.Store.Schema.sqlite." + name)!);
        return reader.ReadToEnd();
    }
}
