using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The one place that decides who a request comes from and what it may do.</summary>
public sealed class AccessRules(TokenStore tokens)
{
    private const string Scheme = "Bearer ";

    /// <summary>Who a request comes from: the owner of the token that it bears, or the public when it bears none.</summary>
    /// <exception cref="UserException">It bears something that is no token, or a token that was revoked.</exception>
    public Caller CallerOf(HttpContext http)
    {
        var header = http.Request.Headers.Authorization.ToString();
        if (header.Length == 0)
            return Caller.Public;
        var known = header.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase) ? tokens.Find(header[Scheme.Length..].Trim()) : null;
        return known is null
            ? throw Refuse(http, "The token is not known here, or it was revoked.")
            : new(known.Name, RightText.Parse(known.Rights));
    }

    /// <summary>The caller, if it has a token and may do something.</summary>
    /// <exception cref="UserException">It may not.</exception>
    public Caller Require(HttpContext http, Right right)
    {
        var caller = CallerOf(http);
        if (caller.Name is null)
            throw Refuse(http, "This needs a token.");
        if (caller.May(right))
            return caller;
        throw new UserException(
            $"The token of {caller.Name} does not allow this.", "Authorization",
            $"It needs the right to {string.Join(" and ", RightText.Words(right))}. Whoever runs the server can make such a token.", StatusCodes.Status403Forbidden);
    }

    private static UserException Refuse(HttpContext http, string what)
    {
        http.Response.Headers.WWWAuthenticate = "Bearer realm=\"RangeMap\"";
        return new(
            what, "Authorization", "Whoever runs the server makes tokens with rangemap token create; send one as Authorization: Bearer TOKEN.",
            StatusCodes.Status401Unauthorized);
    }
}
