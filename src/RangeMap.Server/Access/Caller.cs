namespace RangeMap.Server;

/// <summary>Who asks.</summary>
/// <param name="Name">The name that decisions and imports are kept under; null for the public.</param>
/// <param name="Rights">What the caller may do beyond looking at what is public.</param>
public sealed record Caller(string? Name, Right Rights)
{
    /// <summary>Anyone.</summary>
    public static Caller Public { get; } = new(null, Right.None);

    /// <summary>True for a caller with all the rights named.</summary>
    public bool May(Right right) => (Rights & right) == right;
}
