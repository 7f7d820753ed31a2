using System.Globalization;

namespace RangeMap.Records;

/// <summary>Spans that write month or year once, at the end: 3-5 June 1998, 3 and 4 June 1998, June-July 1998, 3 June - 5 July 1998.</summary>
internal static class NamedMonthSpan
{
    private static readonly string[] Joints = [" - ", " to ", " and ", "&", "-", "/"];

    public static DateForm TryRead(ReadOnlySpan<char> text, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        foreach (var joint in Joints)
        {
            var at = text.IndexOf(joint, StringComparison.OrdinalIgnoreCase);
            if (at <= 0)
                continue;
            var form = TryRead(text[..at].Trim(), text[(at + joint.Length)..].Trim(), out days, out why);
            if (form != DateForm.Other)
                return form;
        }

        return DateForm.Other;
    }

    private static DateForm TryRead(ReadOnlySpan<char> from, ReadOnlySpan<char> to, out DayRange days, out string? why)
    {
        days = default;
        var form = NamedMonthDate.TryRead(to, out var end, out why);
        if (form != DateForm.Understood)
            return form;
        form = from.Length <= 2 && Figures.TryRead(from, out var day)
            ? end.IsOneDay ? IsoDate.TryMakeDay(end.First.Year, end.First.Month, day, out days, out why) : DateForm.Other
            : NamedMonthDate.TryRead(string.Create(CultureInfo.InvariantCulture, $"{from} {end.First.Year:0000}"), out days, out why);
        if (form != DateForm.Understood)
            return form;
        if (end.Last < days.First)
            why = "The span ends before it begins. If it runs over the turn of the year, write both years.";
        days = new(days.First, end.Last);
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }
}
