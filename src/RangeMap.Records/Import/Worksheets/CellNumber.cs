using System.Globalization;

namespace RangeMap.Records;

/// <summary>Writes the number of a cell as a person would have typed it.</summary>
internal static class CellNumber
{
    private const double ExactWholeNumbers = 1L << 53;
    private const int SecondsPerDay = 86_400;

    /// <summary>A number without exponent, of at most the 15 figures that a spreadsheet shows, so that 0.30000000000000004 becomes 0.3.</summary>
    public static string Plain(double number)
    {
        if (number == Math.Floor(number) && Math.Abs(number) < ExactWholeNumbers)
            return ((long)number).ToString(CultureInfo.InvariantCulture);
        var text = number.ToString("G15", CultureInfo.InvariantCulture);
        if (!text.Contains('E', StringComparison.Ordinal))
            return text;
        return Math.Abs(number) < 1e-300 || Math.Abs(number) > 1e300
            ? text
            : double.Parse(text, CultureInfo.InvariantCulture).ToString(Math.Abs(number) < 1 ? "0." + new string('#', 330) : "0", CultureInfo.InvariantCulture);
    }

    /// <summary>The day and, where there is one, the time of day, as ISO 8601; the plain number where it names no day.</summary>
    public static string Day(double number, DayCount count)
    {
        var seconds = Math.Round((number - Math.Floor(number)) * SecondsPerDay);
        var day = Math.Floor(number) + (seconds >= SecondsPerDay ? 1 : 0);
        if (count.DayOf(day is >= 0 and < int.MaxValue ? (long)day : -1) is not { } date)
            return Plain(number);
        var text = date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return seconds % SecondsPerDay == 0 ? text : $"{text}T{Clock((int)seconds)}";
    }

    /// <summary>The time of day; a whole number of days or more is a duration and stays a number.</summary>
    public static string Time(double number)
    {
        var seconds = (int)Math.Round(Math.Clamp(number, -1, 2) * SecondsPerDay);
        return seconds is >= 0 and < SecondsPerDay ? Clock(seconds) : Plain(number);
    }

    private static string Clock(int seconds) =>
        TimeSpan.FromSeconds(seconds).ToString(seconds % 60 == 0 ? @"hh\:mm" : @"hh\:mm\:ss", CultureInfo.InvariantCulture);
}
