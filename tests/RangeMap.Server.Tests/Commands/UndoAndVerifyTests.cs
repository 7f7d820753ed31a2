using System.Text.Json;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests;

public sealed class UndoAndVerifyTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task AnImportCanBeTakenBackOnceAndMadeAgain()
    {
        var csv = _folder.Write("invented.csv", "scientificName,date,gridReference\nInventa prima,2001-05-06,SU12\nInventa secunda,2001-05-07,SU13\n");
        Assert.Equal(0, (await RunAsync("import", csv, "--dataset", "invented", "--new-taxa")).Code);

        var undo = await RunAsync("undo", "1", "--json");
        Assert.Equal((0, 2, 0), (undo.Code, undo.Json.GetProperty("removed").GetInt32(), undo.Json.GetProperty("restored").GetInt32()));

        var twice = await RunAsync("undo", "1");
        Assert.Equal(1, twice.Code);
        Assert.Contains("Import 1 was taken back already", twice.Error, StringComparison.Ordinal);

        var again = await RunAsync("import", csv, "--dataset", "invented", "--new-taxa", "--json");
        Assert.Equal(2, again.Json.GetProperty("accepted").GetInt32());
        Assert.Equal(2, again.Json.GetProperty("batch").GetInt32());
    }

    [Fact]
    public async Task AnUndoIsToldInASentence()
    {
        var csv = _folder.Write("invented.csv", "scientificName,date,gridReference\nInventa prima,2001-05-06,SU12\n");
        await RunAsync("import", csv, "--dataset", "invented", "--new-taxa");
        Assert.Equal("Import 1 was taken back: 1 records are gone, 0 say again what they said before.", (await RunAsync("undo", "1")).Out.Trim());
    }

    [Fact]
    public async Task AWholeFolderVerifies()
    {
        var csv = _folder.Write("invented.csv", "scientificName,date,gridReference\nInventa prima,2001-05-06,SU12\nInventa prima,never,SU12\n");
        Assert.Equal(3, (await RunAsync("import", csv, "--dataset", "invented", "--new-taxa")).Code);
        var verified = await RunAsync("verify", "--json");
        Assert.Equal((0, true, 0), (verified.Code, verified.Json.GetProperty("ok").GetBoolean(), verified.Json.GetProperty("problems").GetArrayLength()));
    }

    [Fact]
    public async Task AFolderThatIsNotThereIsNotMadeByVerifying()
    {
        var verified = await RunAsync("verify");
        Assert.Equal(1, verified.Code);
        Assert.False(Directory.Exists(_folder.File("data")));
    }

    private async Task<Answer> RunAsync(params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var context = new CommandContext(output, error, TextReader.Null, TimeProvider.System);
        var code = await CommandLine.RunAsync([.. arguments, "--data", _folder.File("data")], context);
        return new(code, output.ToString(), error.ToString());
    }

    private sealed record Answer(int Code, string Out, string Error)
    {
        public JsonElement Json => JsonDocument.Parse(Out.Trim().Split('\n')[^1]).RootElement;
    }
}
