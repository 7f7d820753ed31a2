using System.Globalization;

namespace RangeMap.Records;

/// <summary>A number of degrees as written, with the decimals that tell its precision.</summary>
/// <param name="Degrees">The number.</param>
/// <param name="Decimals">Figures behind the decimal point as written, zeros at the end included.</param>
internal readonly record struct DegreesText(double Degrees, int Decimals)
{
    /// <summary>Reads a plain decimal number. On failure <paramref name="why"/> tells how to write it.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, double most, out DegreesText degrees, out string? why)
    {
        degrees = default;
        why = null;
        if (text.Contains(','))
            why = "Write the decimals with a point, such as 54.123.";
        else if (!PlainDecimal.TryRead(text, out var number) || double.IsNaN(number))
            why = "This is no number of degrees. Write it as decimal degrees, west and south negative, such as -2.345.";
        else if (Math.Abs(number) > most)
            why = string.Create(CultureInfo.InvariantCulture, $"It must lie between -{most} and {most} degrees. Is it an easting or northing, or is a decimal point missing?");
        else
            degrees = new(number, text.Contains('.') ? text.Length - text.IndexOf('.') - 1 : 0);
        return why is null;
    }
}
