namespace RangeMap.Server.Tests.Commands;

public sealed class ChangeTests : IDisposable
{
    private readonly DataDirectory _data = new();

    public void Dispose() => _data.Dispose();

    [Theory]
    [InlineData("change")]
    [InlineData("change", "prima", "--all", "--from", "2000/2009", "--to", "2010/2019")]
    [InlineData("change", "prima", "--from", "2000/2009")]
    [InlineData("change", "prima", "--from", "2010/2019", "--to", "2000/2009")]
    public async Task WhatIsMissingOrWrongIsSaidAsABadArgument(params string[] arguments) => (await CommandRun.OfAsync(arguments)).Failed(2);

    [Fact]
    public async Task AFolderThatIsNotThereIsNotMade()
    {
        var folder = Path.Combine(_data.Data, "nowhere");
        (await CommandRun.OfAsync("change", "prima", "--from", "2000/2009", "--to", "2010/2019", "--data", folder)).Failed(1, "nowhere");
        Assert.False(Directory.Exists(folder));
    }
}
