using System.Globalization;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>What a scheme's periods must be: named, in order, without overlap, and without gaps but those that are meant.</summary>
internal static class PeriodRules
{
    /// <summary>More than a map can tell apart.</summary>
    public const int MostPeriods = 8;

    /// <summary>The longest name, in characters: longer ones do not fit beside a legend.</summary>
    public const int LongestName = 40;

    /// <summary>The periods with names and intervals trimmed.</summary>
    /// <exception cref="UserException">They break a rule; says which periods do, and how to mend it.</exception>
    public static IReadOnlyList<NamedPeriod> Check(IReadOnlyList<NamedPeriod> given, bool gapsAreMeant)
    {
        var named = given.Select(period => new NamedPeriod(period.Name?.Trim() ?? "", period.Period?.Trim() ?? "")).ToList();
        if (named.Count is 0 or > MostPeriods)
            throw Bad(named.Count == 0 ? "There is no period." : FormattableString.Invariant($"{named.Count} periods are more than a map can tell apart."), FormattableString.Invariant($"Name 1 to {MostPeriods}."));
        CheckNames(named);
        var periods = named.ConvertAll(Read);
        for (var i = 1; i < periods.Count; i++)
            CheckNeighbours((named[i - 1].Name, periods[i - 1]), (named[i].Name, periods[i]), gapsAreMeant);
        return named;
    }

    private static void CheckNames(List<NamedPeriod> named)
    {
        if (named.Find(period => period.Name.Length == 0) is { } nameless)
            throw Bad($"The period {nameless.Period} has no name.", "Name it as your recorders do, such as \"first survey\".");
        if (named.Find(period => period.Name.Length > LongestName) is { } longest)
            throw Bad($"The name \"{longest.Name}\" is too long.", FormattableString.Invariant($"Use at most {LongestName} characters, so that it fits beside a map."));
        if (named.GroupBy(period => period.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw Bad($"Two periods are called \"{twice.Key}\".", "Give each a name of its own.");
    }

    private static Period Read(NamedPeriod named) => PeriodText.TryParse(named.Period, out var period, out var why)
        ? period
        : throw Bad($"\"{named.Name}\": {why}", "Write ISO 8601 intervals such as ../1999, 2000/2009 or 2010/.. .");

    private static void CheckNeighbours((string Name, Period Days) earlier, (string Name, Period Days) later, bool gapsAreMeant)
    {
        if (later.Days.FirstDay < earlier.Days.FirstDay)
            throw Bad($"\"{later.Name}\" begins before \"{earlier.Name}\", which stands in front of it.", "List the periods from the oldest to the newest.");
        if (later.Days.FirstDay < earlier.Days.EndDay)
            throw Bad($"\"{earlier.Name}\" and \"{later.Name}\" overlap.", $"A record of the days that they share would count twice: end the one before the other begins.");
        if (later.Days.FirstDay > earlier.Days.EndDay && !gapsAreMeant)
        {
            throw Bad(
                $"Between \"{earlier.Name}\" and \"{later.Name}\" lie days of no period, {Day(earlier.Days.EndDay)} to {Day(later.Days.FirstDay - 1)}: their records would be on no map.",
                "Close the gap, or say that it is meant.");
        }
    }

    private static string Day(int day) => DateOnly.FromDayNumber(day).ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private static UserException Bad(string what, string mend) => new(what, "periods", mend) { IsArgument = true };
}
