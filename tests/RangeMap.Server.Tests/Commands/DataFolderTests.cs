using Microsoft.Data.Sqlite;

namespace RangeMap.Server.Tests.Commands;

/// <summary>Folders that are not what a command needs.</summary>
public sealed class DataFolderTests
{
    [Fact]
    public async Task AnotherProgramsDatabaseStaysAsItIs()
    {
        using var data = new DataDirectory();
        Directory.CreateDirectory(data.Data);
        var file = Path.Combine(data.Data, "rangemap.sqlite");
        using (var other = new SqliteConnection($"Data Source={file};Pooling=False"))
        {
            other.Open();
            using var make = other.CreateCommand();
            make.CommandText = "CREATE TABLE letters (text TEXT); INSERT INTO letters VALUES ('keep me');";
            make.ExecuteNonQuery();
        }

        var before = await File.ReadAllBytesAsync(file);
        (await data.ImportTableAsync("species,date,grid\nInventa prima,2005,NZ2563\n"))["error"]!.Text("what").ShouldSay("another program");
        (await data.RunAsync("presence", "prima")).Failed(1, "another program");
        Assert.Equal(before, await File.ReadAllBytesAsync(file));
        Assert.Equal([file], Directory.GetFiles(data.Data));
    }

    [Fact]
    public async Task AFileThatIsNoDatabaseStaysAsItIs()
    {
        using var data = new DataDirectory();
        Directory.CreateDirectory(data.Data);
        var file = Path.Combine(data.Data, "rangemap.sqlite");
        await File.WriteAllTextAsync(file, string.Concat(Enumerable.Repeat("not a database ", 500)));
        var before = await File.ReadAllBytesAsync(file);
        (await data.RunAsync("taxa", data.Write("taxa.csv", DataDirectory.TaxonList))).Failed(1, "cannot be opened");
        Assert.Equal(before, await File.ReadAllBytesAsync(file));
    }

    [Fact]
    public async Task AFileInPlaceOfTheFolderIsToldSo()
    {
        using var data = new DataDirectory();
        data.Write("data", "a file");
        (await data.RunAsync("taxa", data.Write("taxa.csv", DataDirectory.TaxonList))).Failed(1, "cannot be used");
        (await CommandRun.OfAsync("taxa", data.Beside("taxa.csv"), "--data", "")).Failed(1, "cannot be used");
    }

    [Theory]
    [InlineData("presence", "prima")]
    [InlineData("spread", "prima")]
    [InlineData("refusals", "1")]
    [InlineData("serve", "--urls=http://127.0.0.1:0")]
    public async Task AskingAnAbsentFolderDoesNotMakeIt(string command, string argument)
    {
        using var data = new DataDirectory();
        (await data.RunAsync(command, argument)).Failed(1, "no data folder");
        Assert.False(Directory.Exists(data.Data));
    }

    [Fact]
    public async Task ADamagedDatabaseIsToldOfWithoutACrash()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync("species,date,grid\nInventa prima,2005,NZ2563\n");
        Damage.Cubes(data.Data);
        (await data.RunAsync("presence", "prima")).Failed(1, "damaged");
    }
}
