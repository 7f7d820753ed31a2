namespace RangeMap.Records;

/// <summary>A duration of ISO 8601 in whole years, months, weeks and days, such as P1Y, P3M, P2W, P10D or P1Y2M10D.</summary>
/// <param name="Months">Years and months, in months.</param>
/// <param name="Days">Weeks and days, in days.</param>
internal readonly record struct IsoDuration(int Months, int Days)
{
    /// <summary>Which durations are read, for messages.</summary>
    public const string Known = "The duration must be a whole number of years, months, weeks or days of at least 1, such as P1Y, P3M, P2W or P10D.";

    private const int MostMonths = 12 * 2_000;
    private const int MostDays = 366 * 2_000;
    private const int LastYear = 9_990;
    private const string Units = "YMWD";

    /// <summary>Reads what follows the P; false for none, for parts out of order, and for more than 2000 years.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out IsoDuration duration)
    {
        duration = default;
        long months = 0, days = 0;
        for (var least = 0; !text.IsEmpty; least++)
        {
            var figures = text.IndexOfAnyExceptInRange('0', '9');
            if (figures < 1 || !Figures.TryRead(text[..figures], out var number))
                return false;
            var unit = Units.IndexOf(char.ToUpperInvariant(text[figures]), StringComparison.Ordinal);
            if (unit < least)
                return false;
            months += unit switch { 0 => 12L * number, 1 => number, _ => 0 };
            days += unit switch { 2 => 7L * number, 3 => number, _ => 0 };
            least = unit;
            text = text[(figures + 1)..];
        }

        duration = new((int)Math.Min(months, MostMonths + 1), (int)Math.Min(days, MostDays + 1));
        return months + days > 0 && months <= MostMonths && days <= MostDays;
    }

    /// <summary>The last day of the duration that begins with a day; P1Y from 1 January ends on 31 December; null after the year 9990.</summary>
    public DateOnly? LastDayFrom(DateOnly first) =>
        first.Year + Months / 12 + Days / 365 < LastYear ? first.AddMonths(Months).AddDays(Days - 1) : null;

    /// <summary>The first day of the duration that ends with a day; null before the year 1 and after the year 9990.</summary>
    public DateOnly? FirstDayTo(DateOnly last)
    {
        if (last.Year >= LastYear)
            return null;
        var after = last.AddDays(1);
        return after.Year * 12 + after.Month - Months <= 24 || after.DayNumber - Months * 31 - Days < 400 ? null : after.AddMonths(-Months).AddDays(-Days);
    }
}
