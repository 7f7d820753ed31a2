namespace RangeMap.Server;

/// <summary>Whether the server lives, and whether it can answer.</summary>
internal static class HealthEndpoints
{
    public static void MapHealth(this IEndpointRouteBuilder routes)
    {
        var health = routes.MapGroup("/health").WithTags("Health");
        health.MapGet("/live", () => Results.Text("live")).WithSummary("Answers while the program runs.");
        health.MapGet("/ready", (CurrentData current) => new { Ready = true, Edition = current.Now().Edition.Number }).WithSummary("Answers when the data can be read.");
    }
}
