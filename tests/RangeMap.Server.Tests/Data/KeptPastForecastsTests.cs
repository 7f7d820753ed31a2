using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests.Data;

public sealed class KeptPastForecastsTests : IDisposable
{
    private static readonly HindcastCut Scored = new(2019, 3, new(40, 12, 0.125, 0.4, 0.83, 1.02, -0.1), new(40, 12, 0.3, 1.4, 0.5, null, null), new(40, 12, 0.2, 0.7, 0.7, 0.9, 0), null, null);
    private static readonly HindcastCut Refused = new(2016, 3, null, null, null, null, "Not enough squares.");

    private readonly TemporaryFolder _folder = new();
    private int _made;

    [Fact]
    public void ARestartFindsTheScoresOnFile()
    {
        Assert.Equal([Refused, Scored], Ask(edition: 3));
        Assert.Equal([Refused, Scored], Ask(edition: 3));
        Assert.Equal(1, _made);
    }

    [Fact]
    public void AnotherStateOfTheDataOrAnotherTaxonIsScoredAnew()
    {
        Ask(edition: 3);
        Ask(edition: 4);
        // The same number in a folder that was begun again.
        Ask(edition: 4, at: "2026-12-02T00:00:00Z");
        Ask(edition: 4, at: "2026-12-02T00:00:00Z", taxon: 2);
        Ask(edition: 4, at: "2026-12-02T00:00:00Z");
        Assert.Equal(4, _made);
        Assert.Equal(2, Directory.GetFiles(Path.Combine(_folder.Path, "past-forecasts")).Length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("""{"state":null,"cuts":null}""")]
    [InlineData("""{"state":{"edition":"three"},"cuts":[]}""")]
    public void ADamagedFileIsMadeAnew(string content)
    {
        Ask(edition: 3);
        File.WriteAllText(Assert.Single(Directory.GetFiles(Path.Combine(_folder.Path, "past-forecasts"))), content);
        Assert.Equal([Refused, Scored], Ask(edition: 3));
        Assert.Equal([Refused, Scored], Ask(edition: 3));
        Assert.Equal(2, _made);
    }

    [Fact]
    public void AFolderThatCannotBeMadeCostsTheFileOnly()
    {
        File.WriteAllText(Path.Combine(_folder.Path, "past-forecasts"), "a file in its place");
        Assert.Equal([Refused, Scored], Ask(edition: 3));
        Assert.Equal([Refused, Scored], Ask(edition: 3));
        Assert.Equal(2, _made);
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>Asks as a server does that has just started.</summary>
    private IReadOnlyList<HindcastCut> Ask(long edition, string at = "2026-12-01T00:00:00Z", int taxon = 1) =>
        new KeptPastForecasts(_folder.Path).GetOrMake(new Taxon($"inventa-{taxon}", "Inventa prima") { Number = taxon }, SquareSize.Km10, new() { Number = edition, MadeAt = at }, () =>
        {
            _made++;
            return [Refused, Scored];
        });
}
