namespace RangeMap.Server;

/// <summary>The address under which a request reached the server, for documents that name addresses.</summary>
internal static class OwnAddress
{
    /// <summary>Such as https://maps.example.org, with the path that a proxy put before.</summary>
    /// <exception cref="UserException">The request names a host that cannot stand in an address.</exception>
    public static string Of(HttpRequest request) => Uri.TryCreate($"{request.Scheme}://{request.Host}", UriKind.Absolute, out _)
        ? $"{request.Scheme}://{request.Host}{request.PathBase}"
        : throw new UserException($"The request names the host '{request.Host}', which cannot stand in an address.", "Host", "Ask the server by its name.");
}
