using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;

namespace RangeMap.Server.Tests.Http;

/// <summary>The description of the interface names everything that is served.</summary>
public sealed partial class OpenApiTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    [Fact]
    public async Task EveryRouteOfTheInterfaceIsDescribed()
    {
        var document = await world.Server.GetJsonAsync("/openapi/v1.json");
        Assert.StartsWith("3.1", document.Text("openapi"), StringComparison.Ordinal);
        var served = ((IEndpointRouteBuilder)world.Server.Host).DataSources.SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            .Select(endpoint => Plain("/" + endpoint.RoutePattern.RawText!.TrimStart('/')))
            .Where(path => path.StartsWith("/api/v1", StringComparison.Ordinal) || path.StartsWith("/ogc", StringComparison.Ordinal) || path.StartsWith("/health", StringComparison.Ordinal))
            .Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.True(served.Count >= 12);
        var described = document["paths"]!.Names().Select(Plain).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(served, described.Where(path => path != "/"));
    }

    [Fact]
    public async Task EveryDescribedRouteHasASummaryAndItsParameters()
    {
        var document = await world.Server.GetJsonAsync("/openapi/v1.json");
        foreach (var (path, operation) in document["paths"]!.AsObject().SelectMany(entry => entry.Value!.AsObject().Select(operation => (entry.Key, operation.Value!))))
        {
            Assert.False(string.IsNullOrEmpty((string?)operation["summary"]), path);
            var named = (operation["parameters"]?.AsArray() ?? []).Where(parameter => parameter!.Text("in") == "path").Select(parameter => parameter!.Text("name"));
            Assert.Equal(InBraces().Matches(path).Select(match => match.Groups[1].Value).Order(StringComparer.Ordinal), named.Order(StringComparer.Ordinal));
        }
    }

    private static string Plain(string path) => Constraint().Replace(path, "}").TrimEnd('/');

    [GeneratedRegex(":[a-z]+}")]
    private static partial Regex Constraint();

    [GeneratedRegex("{([A-Za-z]+)}")]
    private static partial Regex InBraces();
}
