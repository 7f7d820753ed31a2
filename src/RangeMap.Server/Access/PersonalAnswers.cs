namespace RangeMap.Server;

/// <summary>Answers that depend on who asks: no cache may keep them.</summary>
internal sealed class PersonalAnswers : IEndpointFilter
{
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        context.HttpContext.Response.Headers.CacheControl = "no-store";
        context.HttpContext.Response.Headers.Vary = "Authorization";
        return next(context);
    }
}

/// <summary>Lets only callers with a right through, and hands them on.</summary>
internal static class AccessRoutes
{
    private const string CallerItem = "RangeMap.Caller";

    /// <summary>All routes of the group need the right.</summary>
    public static RouteGroupBuilder Require(this RouteGroupBuilder group, Right right) => group.AddEndpointFilter(async (context, next) =>
    {
        var rules = context.HttpContext.RequestServices.GetRequiredService<AccessRules>();
        context.HttpContext.Items[CallerItem] = rules.Require(context.HttpContext, right);
        return await next(context);
    });

    /// <summary>The caller that was let through.</summary>
    public static Caller Caller(this HttpContext http) => (Caller)http.Items[CallerItem]!;
}
