using Microsoft.AspNetCore.Http.Features;

namespace RangeMap.Server;

/// <summary>Sends tiles that are ready before routing, filters or binding look at the request: most requests of a map are for these, and reading their question anew costs more than sending them.</summary>
internal static class WarmTiles
{
    /// <summary>Puts it first; everything that is not a ready tile goes on to the rest.</summary>
    public static void UseWarmTiles(this WebApplication app)
    {
        var current = app.Services.GetRequiredService<CurrentData>();
        app.Use((context, next) =>
        {
            if (!HttpMethods.IsGet(context.Request.Method) || Find(current, context) is not { } tile)
                return next(context);
            SharedHeaders.Set(context);
            tile.Send(context);
            return Task.CompletedTask;
        });
    }

    /// <summary>Only while the state is known to be the newest; the request that has to look goes the whole way, where a failure to look is answered in words.</summary>
    private static TileAnswer? Find(CurrentData current, HttpContext context) =>
        context.Features.Get<IHttpRequestFeature>() is { } request ? current.Known?.Addressed.Find(request.RawTarget) : null;
}
