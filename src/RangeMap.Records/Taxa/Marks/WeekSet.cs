using System.Globalization;

namespace RangeMap.Records;

/// <summary>A set of ISO 8601 weeks of the year, 1 to 53, written as spans: "16-44", "9-20, 30-42", or over the new year "40-8".</summary>
/// <param name="Bits">Bit 0 is week 1.</param>
public readonly record struct WeekSet(ulong Bits)
{
    /// <summary>Weeks that a year can have.</summary>
    public const int Most = 53;

    private const ulong AllBits = (1UL << Most) - 1;

    /// <summary>Every week.</summary>
    public static WeekSet All => new(AllBits);

    /// <summary>True when the week, 1 to 53, belongs to it.</summary>
    public bool Holds(int week) => (Bits >> (week - 1) & 1) != 0;

    /// <summary>True when both have a week in common.</summary>
    public bool Meets(WeekSet other) => (Bits & other.Bits) != 0;

    /// <summary>The weeks of either.</summary>
    public WeekSet With(WeekSet other) => new(Bits | other.Bits);

    /// <summary>The weeks that a range of days touches.</summary>
    public static WeekSet Of(DayRange days)
    {
        var first = WeekOf(days.First);
        if (days.IsOneDay)
            return new(1UL << (first - 1));
        if (days.Last.DayNumber - days.First.DayNumber >= 371)
            return new(AllBits);
        var bits = 1UL << (WeekOf(days.Last) - 1);
        for (var day = days.First; day < days.Last; day = day.AddDays(7))
            bits |= 1UL << (WeekOf(day) - 1);
        return new(bits);
    }

    /// <summary>The set widened by a number of weeks at both ends of each span.</summary>
    public WeekSet Widened(int weeks)
    {
        var bits = Bits;
        for (var i = 0; i < weeks; i++)
            bits |= (bits << 1 | bits >> (Most - 1) | bits >> 1 | bits << (Most - 1)) & AllBits;
        return new(bits);
    }

    /// <summary>Reads spans with commas between. A span that ends with week 52 takes in week 53, which few years have.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out WeekSet weeks)
    {
        weeks = default;
        foreach (var part in text.Split(','))
        {
            var span = text[part].Trim();
            var dash = span.IndexOfAny('-', '\u2013');
            if (!TryWeek(dash < 0 ? span : span[..dash], out var from) || !TryWeek(dash < 0 ? span : span[(dash + 1)..], out var to))
                return false;
            if (to == Most - 1 && from != to)
                to = Most;
            for (var week = from; ; week = week % Most + 1)
            {
                weeks = new(weeks.Bits | 1UL << (week - 1));
                if (week == to)
                    break;
            }
        }

        return true;
    }

    /// <summary>The spans, in a form that reads back as the same set.</summary>
    public override string ToString()
    {
        if (Bits == AllBits)
            return "1-53";
        var spans = new List<string>();
        for (var week = 1; week <= Most; week++)
        {
            if (!Holds(week) || Holds(week == 1 ? Most : week - 1))
                continue;
            var to = week;
            while (Holds(to % Most + 1))
                to = to % Most + 1;
            spans.Add(to == week ? week.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{week}-{to}"));
        }

        return string.Join(", ", spans);
    }

    /// <summary>The ISO 8601 week of a day.</summary>
    public static int WeekOf(DateOnly day) => ISOWeek.GetWeekOfYear(day.ToDateTime(TimeOnly.MinValue));

    private static bool TryWeek(ReadOnlySpan<char> text, out int week) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out week) && week is >= 1 and <= Most;
}
