using System.Globalization;

namespace RangeMap.Records;

/// <summary>
/// How a spreadsheet counts days: since the end of 1899, where by an old mistake 29 February 1900 counts as day 60
/// (ECMA-376 part 1, 18.17.4.1), or since 1 January 1904, which is day 0.
/// </summary>
internal sealed class DayCount
{
    /// <summary>Serial numbers below this are also years; they are read as years.</summary>
    public const int FirstReadAsDay = 10_000;

    private const int LastDay = 2_958_465;
    private const int FalseLeapDay = 60;
    private readonly DateOnly _zero;
    private readonly bool _hasFalseLeapDay;

    private DayCount(DateOnly zero, bool hasFalseLeapDay)
    {
        _zero = zero;
        _hasFalseLeapDay = hasFalseLeapDay;
    }

    /// <summary>Day 1 is 1 January 1900.</summary>
    public static DayCount Since1900 { get; } = new(new(1899, 12, 30), hasFalseLeapDay: true);

    /// <summary>Day 0 is 1 January 1904.</summary>
    public static DayCount Since1904 { get; } = new(new(1904, 1, 1), hasFalseLeapDay: false);

    /// <summary>The day of a whole number; null outside the count and for the day that never was.</summary>
    public DateOnly? DayOf(long serial)
    {
        if (serial < (_hasFalseLeapDay ? 1 : 0) || serial > LastDay - _zero.DayNumber + new DateOnly(1899, 12, 30).DayNumber)
            return null;
        if (_hasFalseLeapDay && serial == FalseLeapDay)
            return null;
        return _zero.AddDays((int)serial + (_hasFalseLeapDay && serial < FalseLeapDay ? 1 : 0));
    }

    /// <summary>The day that a plain number of five figures stands for, with or without a part of a day; null for any other text.</summary>
    public DateOnly? Read(ReadOnlySpan<char> text) =>
        text.Length >= 5 && double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is >= FirstReadAsDay and < 100_000
            ? DayOf((long)number)
            : null;
}
