namespace RangeMap.Server.Tests;

/// <summary>A clock whose day never passes, so that records do not come to lie in the past or future; spans of time are real.</summary>
internal sealed class FixedClock : TimeProvider
{
    /// <summary>15 January 2026, noon.</summary>
    public static FixedClock Winter2026 { get; } = new();

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => new(2026, 1, 15, 12, 0, 0, TimeSpan.Zero);
}
