namespace RangeMap.Server;

/// <summary>Reads Accept-Encoding (RFC 9110, 12.5.3) without allocating: it is looked at for every tile.</summary>
internal static class ContentCodings
{
    /// <summary>True when the header names a coding and does not weigh it nought.</summary>
    public static bool Takes(ReadOnlySpan<char> header, ReadOnlySpan<char> coding)
    {
        foreach (var range in header.Split(','))
        {
            var part = header[range].Trim();
            var end = part.IndexOf(';');
            if ((end < 0 ? part : part[..end]).TrimEnd().Equals(coding, StringComparison.OrdinalIgnoreCase))
                return end < 0 || !IsNought(part[(end + 1)..].Trim());
        }

        return false;
    }

    /// <summary>"q=0", with nothing but noughts behind the point.</summary>
    private static bool IsNought(ReadOnlySpan<char> weight) =>
        weight.StartsWith("q=", StringComparison.OrdinalIgnoreCase) && weight[2..].TrimStart('0').TrimStart('.').TrimStart('0').IsEmpty;
}
