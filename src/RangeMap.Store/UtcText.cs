using System.Globalization;

namespace RangeMap.Store;

/// <summary>Points in time as they are kept and told: ISO 8601 in UTC, to the second.</summary>
public static class UtcText
{
    /// <summary>The text, such as 2026-06-07T08:09:10Z.</summary>
    public static string Of(DateTimeOffset time) => time.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
}
