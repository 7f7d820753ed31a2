namespace RangeMap.Server.Tests.Commands;

public sealed class MistypedFileTests
{
    [Theory]
    [InlineData("taxa", "nothing.csv")]
    [InlineData("import", "nothing.csv", "--dataset", "x")]
    [InlineData("undo", "1")]
    [InlineData("verify")]
    public async Task AMistypedNameMakesNoDataFolder(params string[] arguments)
    {
        using var place = new TestKit.TemporaryFolder();
        var folder = place.File("data");
        var (output, error) = (new StringWriter(), new StringWriter());
        var exit = await CommandLine.RunAsync([.. arguments, "--data", folder], new(output, error, TextReader.Null, TimeProvider.System));
        Assert.Equal(1, exit);
        Assert.NotEmpty(error.ToString());
        Assert.False(Directory.Exists(folder));
    }
}
