namespace RangeMap.Store;

/// <summary>How an import was made, for its report and for making it again.</summary>
public sealed record BatchDetails
{
    /// <summary>Who made it; null for the command line.</summary>
    public string? MadeBy { get; init; }

    /// <summary>When it began, by the same clock as the session's.</summary>
    public DateTimeOffset? Began { get; init; }

    /// <summary>What kind of file it was, in words.</summary>
    public string? Form { get; init; }

    /// <summary>JSON: what was stated about columns and dates; can be used again for the next file of the kind.</summary>
    public string? Stated { get; init; }

    /// <summary>JSON: what was stated beside columns and dates, so that refused rows are read again as they were.</summary>
    public string? Options { get; init; }

    /// <summary>What was noticed about the file, in sentences.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>JSON: title, licence and citation that came with the file.</summary>
    public string? Citation { get; init; }
}
