using System.Globalization;
using System.Reflection;
using Microsoft.Extensions.Primitives;

namespace RangeMap.Server;

/// <summary>
/// Tags answers with the edition that they were made from. The same question to the same edition gives the same answer, so
/// a browser that still has it is told so without the answer being made again.
/// </summary>
internal sealed class EditionTag(CurrentData current) : IEndpointFilter
{
    private static readonly string Program = Assembly.GetExecutingAssembly().GetName().Version!.ToString(3);

    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var http = context.HttpContext;
        var tag = string.Create(CultureInfo.InvariantCulture, $"W/\"{Program}-{current.Now().Edition.Number}\"");
        var asked = http.Request.Headers.IfNoneMatch;
        if (!StringValues.IsNullOrEmpty(asked) && asked.ToString().Contains(tag, StringComparison.Ordinal))
        {
            Mark(http, tag);
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        var answer = await next(context);
        Mark(http, tag);
        return answer;
    }

    private static void Mark(HttpContext http, string tag)
    {
        http.Response.Headers.ETag = tag;
        http.Response.Headers.CacheControl = "no-cache";
    }
}
