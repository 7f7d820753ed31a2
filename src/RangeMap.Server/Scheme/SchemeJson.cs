using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Settings of the scheme.</summary>
/// <param name="Periods">The periods that maps begin with, oldest first.</param>
/// <param name="Newest">Number of the newest change of them; 0 where the program's own hold since the beginning.</param>
/// <param name="History">The changes, newest first.</param>
internal sealed record SchemeJson(IReadOnlyList<NamedPeriod> Periods, long Newest, IReadOnlyList<PeriodChangeJson> History)
{
    public static SchemeJson Of(SchemePeriods periods)
    {
        var history = periods.History();
        var newest = history is [var first, ..] ? first : null;
        return new(SchemePeriods.PeriodsOf(newest), newest?.Number ?? 0, [.. history.Select(PeriodChangeJson.Of)]);
    }
}

/// <summary>A change of the periods.</summary>
/// <param name="Number">Number by which it can be gone back to.</param>
/// <param name="At">When, ISO 8601 in UTC.</param>
/// <param name="By">Who.</param>
/// <param name="Reason">Why.</param>
/// <param name="Periods">The periods from then on.</param>
/// <param name="IsOwn">True where these are what the program brings.</param>
internal sealed record PeriodChangeJson(long Number, string At, string By, string Reason, IReadOnlyList<NamedPeriod> Periods, bool IsOwn)
{
    public static PeriodChangeJson Of(SettingChange change) => new(change.Number, change.MadeAt, change.MadeBy, change.Reason, SchemePeriods.PeriodsOf(change), change.Value is null);
}
