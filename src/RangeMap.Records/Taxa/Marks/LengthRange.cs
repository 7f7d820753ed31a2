using System.Globalization;

namespace RangeMap.Records;

/// <summary>Body lengths in millimetres that are known: "11-17", "to 18", "from 11"; both ends belong to it.</summary>
/// <param name="Least">Least length, or 0 where only the greatest is known.</param>
/// <param name="Most">Greatest length, or infinity where only the least is known.</param>
public readonly record struct LengthRange(double Least, double Most)
{
    /// <summary>Millimetres by which a length lies above (positive) or below (negative) the range; 0 within.</summary>
    public double Beyond(double mm) => mm > Most ? mm - Most : mm < Least ? mm - Least : 0;

    /// <summary>The smallest range that holds both.</summary>
    public LengthRange With(LengthRange other) => new(Math.Min(Least, other.Least), Math.Max(Most, other.Most));

    /// <summary>Reads the written form; a single number is a range of its own.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out LengthRange range)
    {
        range = default;
        text = text.Trim();
        if (text.EndsWith("mm", StringComparison.OrdinalIgnoreCase))
            text = text[..^2].TrimEnd();
        if (text.StartsWith("to ", StringComparison.OrdinalIgnoreCase))
            return TryMake(0, Number(text[3..]), out range);
        if (text.StartsWith("from ", StringComparison.OrdinalIgnoreCase))
            return TryMake(Number(text[5..]), double.PositiveInfinity, out range);
        var dash = text.IndexOfAny('-', '\u2013');
        return dash < 0 ? TryMake(Number(text), Number(text), out range) : TryMake(Number(text[..dash]), Number(text[(dash + 1)..]), out range);
    }

    /// <summary>The written form, which reads back as the same range.</summary>
    public override string ToString()
    {
        var culture = CultureInfo.InvariantCulture;
        if (Least == 0)
            return string.Create(culture, $"to {Most}");
        return double.IsPositiveInfinity(Most) ? string.Create(culture, $"from {Least}") : string.Create(culture, $"{Least}-{Most}");
    }

    private static bool TryMake(double? least, double? most, out LengthRange range)
    {
        range = new(least ?? 0, most ?? 0);
        return least is not null && most > 0 && least <= most;
    }

    private static double? Number(ReadOnlySpan<char> text) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : null;
}
