namespace RangeMap.Server;

/// <summary>Whether the server lives, and whether it can answer.</summary>
internal static class HealthEndpoints
{
    public static void MapHealth(this IEndpointRouteBuilder routes)
    {
        var health = routes.MapGroup("/health").WithTags("Health");
        health.MapGet("/live", () => Results.Text("live")).WithSummary("Answers while the program runs.");
        health.MapGet("/ready", (CurrentData current) => new ReadyJson(true, current.Now().Edition.Number)).WithSummary("Answers when the data can be read.");
    }
}

/// <summary>That the data can be read.</summary>
/// <param name="Ready">True.</param>
/// <param name="Edition">Which state of the data.</param>
internal sealed record ReadyJson(bool Ready, long Edition);
