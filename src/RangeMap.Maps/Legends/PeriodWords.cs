using System.Globalization;

namespace RangeMap.Maps;

/// <summary>Periods as people read them.</summary>
public static class PeriodWords
{
    /// <summary>"before 2000", "2000–2009", "since 2010", "all years"; other dates as they are written.</summary>
    /// <param name="text">An ISO 8601 interval, such as ../1999.</param>
    public static string Of(string text)
    {
        if (text.Split('/') is not [var from, var to])
            return text;
        if (from == "..")
            return to == ".." ? "all years" : IsYear(to, out var last) ? string.Create(CultureInfo.InvariantCulture, $"before {last + 1}") : $"up to {to}";
        return to == ".." ? $"since {from}" : from == to ? from : $"{from}\u2013{to}";
    }

    private static bool IsYear(string text, out int year)
    {
        year = 0;
        return text.Length == 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out year);
    }
}
