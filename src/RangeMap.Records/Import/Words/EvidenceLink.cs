namespace RangeMap.Records;

/// <summary>What of an evidence link may be shown as a link.</summary>
public static class EvidenceLink
{
    /// <summary>
    /// The first http or https address among those that bars or spaces part; null if there is none, so that text which a
    /// browser would run, such as javascript:, never becomes a link.
    /// </summary>
    public static Uri? Shown(string? written)
    {
        foreach (var part in (written ?? "").Split(['|', ' ', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Uri.TryCreate(part, UriKind.Absolute, out var address) && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps) && address.UserInfo.Length == 0)
                return address;
        }

        return null;
    }
}
