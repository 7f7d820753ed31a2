using System.Globalization;
using Microsoft.OpenApi;

namespace RangeMap.Server;

/// <summary>
/// Routes that answer in more than one shape with the same status. The framework keeps one shape a status, so the others are given to it under statuses of their own, a
/// thousand apart, and are put where they belong when the description is written.
/// </summary>
internal static class OtherAnswers
{
    private const int Apart = 1000;

    /// <summary>Says of a route that its answer may also be this, with status 200.</summary>
    public static RouteHandlerBuilder AlsoProduces<T>(this RouteHandlerBuilder route, string contentType = "application/json")
    {
        route.Add(endpoint =>
        {
            var others = endpoint.Metadata.OfType<ProducesResponseTypeMetadata>().Count(answer => answer.StatusCode >= Apart);
            endpoint.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK + Apart * (others + 1), typeof(T), [contentType]));
        });
        return route;
    }

    /// <summary>Puts the other answers of an operation beside the first.</summary>
    public static void Merge(OpenApiOperation operation)
    {
        if (operation.Responses is not { } answers)
            return;
        foreach (var status in answers.Keys.Where(status => status.Length > 3).Order(StringComparer.Ordinal).ToList())
        {
            var content = ContentOf(answers[(int.Parse(status, CultureInfo.InvariantCulture) % Apart).ToString(CultureInfo.InvariantCulture)]);
            foreach (var (mediaType, other) in ContentOf(answers[status]))
                content[mediaType] = content.TryGetValue(mediaType, out var first) ? Either(first, other) : other;
            answers.Remove(status);
        }
    }

    private static IDictionary<string, OpenApiMediaType> ContentOf(IOpenApiResponse answer) => ((OpenApiResponse)answer).Content ??= new Dictionary<string, OpenApiMediaType>();

    private static OpenApiMediaType Either(OpenApiMediaType first, OpenApiMediaType other) =>
        new() { Schema = new OpenApiSchema { OneOf = [.. first.Schema?.OneOf ?? [first.Schema!], other.Schema!] } };
}
