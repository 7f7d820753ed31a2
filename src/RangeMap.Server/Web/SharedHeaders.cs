namespace RangeMap.Server;

/// <summary>Headers that every answer carries.</summary>
internal static class SharedHeaders
{
    // The viewer loads nothing from elsewhere; the reference page writes its own styles and scripts inline.
    private const string ViewerPolicy =
        "default-src 'self'; img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; worker-src 'self' blob:; object-src 'none'; base-uri 'none'; frame-ancestors 'none'";

    public static void UseSharedHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        // Set at the last moment: a failure clears what was set before it, and its answer needs them as much.
        context.Response.OnStarting(() =>
        {
            Set(context);
            return Task.CompletedTask;
        });
        return next(context);
    });

    /// <summary>Sets them now.</summary>
    public static void Set(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        // The data are open to read: any page may draw them.
        if (context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal) || context.Request.Path.StartsWithSegments("/ogc", StringComparison.Ordinal))
            headers.AccessControlAllowOrigin = "*";
        else if (!context.Request.Path.StartsWithSegments("/reference", StringComparison.Ordinal))
            headers.ContentSecurityPolicy = ViewerPolicy;
    }
}
