using System.Globalization;

namespace RangeMap.Records;

/// <summary>Reads a body length: "12", "12 mm", "1.2 cm", "11-13", "11 to 13 mm", "c. 12".</summary>
internal static class LengthText
{
    /// <summary>Longer than any animal is; beyond it the unit must be wrong.</summary>
    private const double MostMm = 40_000;

    private static readonly (string Unit, double Mm)[] Units =
    [
        ("millimetres", 1), ("millimeters", 1), ("mm", 1), ("centimetres", 10), ("centimeters", 10), ("cm", 10), ("metres", 1000), ("meters", 1000), ("m", 1000),
    ];

    /// <summary>Millimetres, of a span its middle; null where it is no length above 0. Without a unit it is millimetres.</summary>
    public static double? Read(ReadOnlySpan<char> text)
    {
        text = text.Trim().TrimStart('~');
        foreach (var about in (ReadOnlySpan<string>)["circa", "about", "ca.", "c."])
        {
            if (text.StartsWith(about, StringComparison.OrdinalIgnoreCase))
                text = text[about.Length..];
        }

        var mm = UnitOf(ref text);
        if (Number(text) is { } one)
            return InRange(one * mm);
        return Span(text, mm);
    }

    /// <summary>True when the text ends with a unit of length.</summary>
    public static bool NamesUnit(ReadOnlySpan<char> text)
    {
        var length = text.Trim().TrimEnd('.').Length;
        UnitOf(ref text);
        return text.Length < length;
    }

    private static double? Span(ReadOnlySpan<char> text, double mm)
    {
        foreach (var joint in (ReadOnlySpan<string>)["-", "\u2013", " to "])
        {
            var at = text.IndexOf(joint, StringComparison.OrdinalIgnoreCase);
            if (at <= 0)
                continue;
            var from = text[..at];
            var fromUnit = UnitOf(ref from);
            return Number(from) is { } least && Number(text[(at + joint.Length)..]) is { } most && least * mm <= most * mm
                ? InRange((least * (fromUnit == 1 ? mm : fromUnit) + most * mm) / 2)
                : null;
        }

        return null;
    }

    private static double UnitOf(ref ReadOnlySpan<char> text)
    {
        text = text.Trim().TrimEnd('.');
        foreach (var (unit, mm) in Units)
        {
            if (!text.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
                continue;
            text = text[..^unit.Length].TrimEnd();
            return mm;
        }

        return 1;
    }

    private static double? Number(ReadOnlySpan<char> text) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static double? InRange(double mm) => mm is > 0 and <= MostMm ? mm : null;
}
