namespace RangeMap.Maps;

/// <summary>One cell of an export; without a value it is empty.</summary>
public readonly struct ExportValue
{
    private ExportValue(long whole, double number, string? text) => (HasValue, Whole, Number, Text) = (true, whole, number, text);

    /// <summary>False for an empty cell.</summary>
    public bool HasValue { get; }

    /// <summary>The whole number, the day as <see cref="DateOnly.DayNumber"/>, or 1 for true.</summary>
    public long Whole { get; }

    /// <summary>The number.</summary>
    public double Number { get; }

    /// <summary>The text.</summary>
    public string? Text { get; }

    /// <summary>A text; empty for null and for no characters.</summary>
    public static ExportValue Of(string? text) => string.IsNullOrEmpty(text) ? default : new(0, 0, text);

    /// <summary>A whole number.</summary>
    public static ExportValue Of(long? whole) => whole is { } value ? new(value, value, null) : default;

    /// <summary>A number.</summary>
    public static ExportValue Of(double? number) => number is { } value ? new((long)value, value, null) : default;

    /// <summary>A day.</summary>
    public static ExportValue Of(DateOnly day) => new(day.DayNumber, 0, null);

    /// <summary>True or false.</summary>
    public static ExportValue Of(bool truth) => new(truth ? 1 : 0, 0, null);

    /// <summary>The day.</summary>
    internal DateOnly Day => DateOnly.FromDayNumber((int)Whole);
}
