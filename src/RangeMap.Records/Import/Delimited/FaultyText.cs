namespace RangeMap.Records;

/// <summary>What makes the text of a row unfit to be read.</summary>
internal static class FaultyText
{
    /// <summary>The reason to refuse the row, or null.</summary>
    /// <param name="raw">The row as it stands in the file.</param>
    /// <param name="source">Where its characters came from.</param>
    public static string? Of(ReadOnlySpan<char> raw, CharSource source)
    {
        if (raw.Contains('\0'))
            return "The row holds NUL characters, which no text has. Was the file damaged, or saved in another form than CSV?";
        return source.MayHoldBadText && CharSource.FirstLoneSurrogate(raw) >= 0
            ? $"The row holds bytes that are no characters in {source.Encoding}; they are shown here as Windows-1252. Save the file as UTF-8, or state its encoding."
            : null;
    }
}
