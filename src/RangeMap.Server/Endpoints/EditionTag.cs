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
    private const int MostAttempts = 5;

    private static readonly string Program = Assembly.GetExecutingAssembly().GetName().Version!.ToString(3);

    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var http = context.HttpContext;
        var edition = current.Now().Edition;
        // The time tells apart the same number of another data folder that was served at the same address before.
        var tag = string.Create(CultureInfo.InvariantCulture, $"W/\"{Program}-{edition.Number}-{edition.MadeAt}\"");
        var asked = http.Request.Headers.IfNoneMatch;
        if (!StringValues.IsNullOrEmpty(asked) && asked.ToString().Contains(tag, StringComparison.Ordinal))
        {
            Mark(http, tag);
            return Results.StatusCode(StatusCodes.Status304NotModified);
        }

        var answer = await AnswerAsync(context, next);
        Mark(http, tag);
        return answer;
    }

    private async ValueTask<object?> AnswerAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await next(context);
            }
            catch (EditionPassedException) when (attempt < MostAttempts)
            {
                // An import was committed under the question: it is asked again of the new state.
                current.LookAgain();
            }
        }
    }

    private static void Mark(HttpContext http, string tag)
    {
        http.Response.Headers.ETag = tag;
        http.Response.Headers.CacheControl = "no-cache";
    }
}
