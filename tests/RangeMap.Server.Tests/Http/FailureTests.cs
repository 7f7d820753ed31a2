using System.Net;

namespace RangeMap.Server.Tests.Http;

/// <summary>When the server itself fails.</summary>
public sealed class FailureTests
{
    [Fact]
    public async Task AFailureTellsNothingOfItsInsideAndPassesWithItsCause()
    {
        const string table = "occurrenceID,species,date,grid\na,Inventa prima,2005-06-01,NZ2563\n";
        await using var server = await RunningServer.StartAsync(table);
        Damage.Cubes(server.Data.Data);
        var detail = await server.GetProblemAsync("/api/v1/taxa/prima/presence", HttpStatusCode.InternalServerError);
        detail.ShouldSay("fault of the server");
        Assert.DoesNotContain("Exception", detail, StringComparison.Ordinal);
        await server.GetAsync("/health/live");
        await server.GetAsync("/api/v1/about");

        // What failed is not remembered: once the data are whole again, so is the answer.
        Damage.Mend(server.Data.Data);
        await server.GetAsync("/api/v1/taxa/prima/presence");
    }
}
