using System.Text.Json;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The periods that maps of a scheme begin with, and how they came to be.</summary>
internal sealed class SchemePeriods(DataFolder folder, TimeProvider clock)
{
    /// <summary>What the program brings, where a scheme has set none.</summary>
    public static IReadOnlyList<NamedPeriod> Own { get; } = [new("before 2000", "../1999"), new("2000–2009", "2000/2009"), new("since 2010", "2010/..")];

    private readonly SettingHistory _history = new(folder.Database, clock);

    /// <summary>The periods that hold.</summary>
    public IReadOnlyList<NamedPeriod> Now() => PeriodsOf(History() is [var newest, ..] ? newest : null);

    /// <summary>The changes, newest first.</summary>
    public IReadOnlyList<SettingChange> History() => _history.Read(SettingNames.Periods);

    /// <summary>The periods from a change on.</summary>
    public static IReadOnlyList<NamedPeriod> PeriodsOf(SettingChange? change) =>
        change?.Value is { } kept ? JsonSerializer.Deserialize<List<NamedPeriod>>(kept, CommandContext.Json)! : Own;

    /// <summary>Sets the periods.</summary>
    /// <exception cref="UserException">They break a rule, no reason is given, or somebody else changed them meanwhile.</exception>
    public void Set(IReadOnlyList<NamedPeriod> periods, bool gapsAreMeant, string by, string? reason, long? seen = null) =>
        Change(JsonSerializer.Serialize(PeriodRules.Check(periods, gapsAreMeant), CommandContext.Json), by, reason, seen);

    /// <summary>Goes back to the periods of a change.</summary>
    /// <param name="number">The change; 0 for what the program brings.</param>
    /// <param name="by">Who goes back.</param>
    /// <param name="reason">Why.</param>
    /// <param name="seen">Number of the change that was seen as the newest; null where nobody looked.</param>
    /// <exception cref="UserException">There is no such change, no reason is given, or somebody else changed them meanwhile.</exception>
    public void Restore(long number, string by, string? reason, long? seen = null)
    {
        var change = number == 0 ? null : History().FirstOrDefault(change => change.Number == number)
            ?? throw new UserException(FormattableString.Invariant($"The periods have no change {number}."), "number", "GET /api/v1/scheme or rangemap periods history lists them; 0 is what the program brings.", StatusCodes.Status404NotFound);
        Change(change?.Value, by, reason, seen);
    }

    private void Change(string? value, string by, string? reason, long? seen)
    {
        if (string.IsNullOrWhiteSpace(reason))
            throw new UserException("The change has no reason.", "reason", "Say in a sentence why, for those who look at the history later.") { IsArgument = true };
        try
        {
            _history.Change(SettingNames.Periods, value, by, reason.Trim(), seen);
        }
        catch (StoreException problem) when (problem.IsOfRequest)
        {
            throw new UserException(problem.Message, "seen", problem.Mend, StatusCodes.Status409Conflict);
        }
    }
}
