using System.Buffers;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Primitives;

namespace RangeMap.Server;

/// <summary>Sends a tile under its own tag, or says that the client's copy is still good. A live tile is asked about again each time; one of a frozen edition never changes.</summary>
/// <param name="tile">The tile.</param>
/// <param name="data">The state that it was drawn from.</param>
/// <param name="mediaType">Its media type.</param>
internal sealed class TileAnswer(ReadyTile tile, DataSnapshot data, string mediaType) : IResult
{
    // Not for good: an edition may be withdrawn.
    private const string Live = "no-cache", Frozen = "public, max-age=86400";

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        // What was asked of a live state without refusal will be asked again: it is sent by its address alone, before anything else looks at the request.
        if (data.FrozenId is null && httpContext.Features.Get<IHttpRequestFeature>()?.RawTarget is { } address)
            data.Addressed.Keep(address, this);
        Send(httpContext);
        return Task.CompletedTask;
    }

    /// <summary>Writes headers and body to the buffers of the connection, which are sent at once when the request ends.</summary>
    public void Send(HttpContext context)
    {
        var (request, response) = (context.Request, context.Response);
        var body = tile.For(request.Headers.AcceptEncoding);
        var headers = response.Headers;
        headers.ETag = body.Tag;
        headers.CacheControl = data.FrozenId is null ? Live : Frozen;
        headers.Vary = "Accept-Encoding";
        var known = request.Headers.IfNoneMatch;
        if (known.Count > 0 && Knows(known, body.Tag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        headers.ContentType = mediaType;
        headers.ContentLength = body.Bytes.Length;
        if (body.Coding is not null)
            headers.ContentEncoding = body.Coding;
        response.BodyWriter.Write(body.Bytes);
    }

    /// <summary>True when If-None-Match names the tag or any (RFC 9110, 13.1.2: weak comparison).</summary>
    private static bool Knows(StringValues known, string tag)
    {
        foreach (var list in known)
        {
            if (list is not null && (list.Contains(tag, StringComparison.Ordinal) || list.AsSpan().Trim() is "*"))
                return true;
        }

        return false;
    }
}
