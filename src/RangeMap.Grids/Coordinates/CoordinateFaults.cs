using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Every reason why a text is no latitude and longitude, as a sentence that says how to mend it.</summary>
internal static class CoordinateFaults
{
    public const string Empty = "There are no coordinates: the text is empty.";
    public const string TooLong = "The text is too long for a latitude and longitude: give two numbers, such as 54.1, -2.3.";
    public const string NotTwo = "A place needs a latitude and a longitude: give two numbers, such as 54.1, -2.3.";
    public const string DecimalComma = "Commas stand within both numbers of the latitude and longitude: write decimals with a dot, or part the two with a semicolon.";
    public const string AxisWords = "The words for latitude and longitude must stand once each, and agree with the letters N, S, E and W: mend the words or the letters.";
    public const string SameAxis = "Both numbers are given as latitude or both as longitude: use N or S with one, E or W with the other.";
    public const string OneLetter = "A letter N, S, E or W stands with one number only: give both or none.";
    public const string SignAndLetter = "A number has both a sign and a letter N, S, E or W: use one of them.";
    public const string SignInside = "A sign stands before minutes or seconds: put it before the degrees.";
    public const string DecimalInside = "Only the last of degrees, minutes and seconds may have decimals.";
    public const string Sixty = "Minutes and seconds must be below 60.";
    public const string LongitudeFirst = "The first number is no latitude (-90 to 90) but the second could be: put the latitude first.";

    public static string StrangeCharacter(char ch) => Text($"The character U+{(int)ch:X4} does not belong in coordinates: give numbers such as 54.1, -2.3 or 54 06 N 2 18 W.");

    public static string BadNumber(ReadOnlySpan<char> number) => Text($"'{number.ToString()}' is no number: give figures with at most one dot.");

    public static string Latitude(double value) => Text($"The latitude {value} is not in [-90, 90].");

    public static string Longitude(double value) => Text($"The longitude {value} is not in [-180, 180].");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
