namespace RangeMap.Server;

/// <summary>A period that maps of the scheme begin with.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Period">ISO 8601 interval; an open end is two dots.</param>
public sealed record NamedPeriod(string Name, string Period);
