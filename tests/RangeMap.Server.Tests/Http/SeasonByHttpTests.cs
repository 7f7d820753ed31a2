using System.Net;

namespace RangeMap.Server.Tests.Http;

/// <summary>When a species is about, stage by stage, and what it visits.</summary>
public sealed class SeasonByHttpTests : IAsyncLifetime
{
    // 1 June 2005 lies in ISO week 22, 15 March 2006 in week 11, 4 July 2006 in week 27.
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,caste,sex,host,identificationVerificationStatus
        a,Inventa prima,2005-06-01,NZ2563,worker,,Planta inventa,
        b,Inventa prima,2006-03-15,NZ2563,queen,,Planta alia | Planta inventa,
        c,Inventa prima,2006-07-04,NZ2563,,male,,
        d,Inventa prima,2006,NZ2563,worker,,,
        e,Inventa prima,2006-07-04,NZ2563,worker,,Planta falsa,rejected
        f,Inventa secunda,2006-07-04,NZ2563,worker,,,
        """;

    private RunningServer _server = null!;

    public async ValueTask InitializeAsync() => _server = await RunningServer.StartAsync(Table);

    public async ValueTask DisposeAsync() => await _server.DisposeAsync();

    [Fact]
    public async Task RecordsAreCountedByWeekStageAndPlant()
    {
        var season = await _server.GetJsonAsync("/api/v1/taxa/prima/season?periods=2005/2005,2006/2006");
        var (first, second) = (season["periods"]![0]!, season["periods"]![1]!);
        Assert.Equal((1, 3), (first.Int("records"), second.Int("records")));
        Assert.Equal(1, (int)first["stages"]![0]!["weeks"]![21]!);
        Assert.Equal(["male", "queen"], second["stages"]!.AsArray().Select(stage => stage!.Text("stage")).Order(StringComparer.Ordinal));
        Assert.Equal(1, (int)second["stages"]!.AsArray().Single(stage => stage!.Text("stage") == "queen")!["weeks"]![10]!);
        Assert.Equal(["Planta alia", "Planta inventa"], second["plants"]!.AsArray().Select(plant => plant!.Text("plant")).Order(StringComparer.Ordinal));
        Assert.Equal(1, season["leftOut"]!.Int("tooVague"));
    }

    [Fact]
    public async Task AnAggregatesSeasonHoldsItsMembers() =>
        Assert.Equal(5, (await _server.GetJsonAsync("/api/v1/taxa/gemella-agg/season"))["periods"]![0]!.Int("records"));

    [Fact]
    public async Task ASpeciesThatIsNotThereHasNoSeason() => await _server.GetProblemAsync("/api/v1/taxa/nulla/season", HttpStatusCode.NotFound);
}
