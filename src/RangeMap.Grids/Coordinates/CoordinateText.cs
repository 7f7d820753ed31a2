namespace RangeMap.Grids;

/// <summary>Reads a latitude and longitude that a person wrote on one line.</summary>
/// <remarks>
/// Decimal degrees ("54.1, -2.3", "54.1 -2.3", "54.1N 2.3W", "W2.3 N54.1") or degrees, minutes and perhaps seconds ("54 06 N 2 18 W",
/// "54°06'30"N, 2°18'00"W"). Words and unit letters are taken as well ("Lat 54.1, Lon -2.3", "54.1 north 2.3 west", "54d06m30sN 2d18m00sW"), brackets and full-width
/// characters too. Without letters or words the latitude comes first. The decimal sign is the dot, or the comma where a semicolon parts the two ("54,1; -2,3").
/// </remarks>
public static class CoordinateText
{
    private const int LongestText = 100;

    /// <summary>Reads a person's text. On failure <paramref name="why"/> says in a sentence what is wrong and how to mend it; else it is null.</summary>
    /// <param name="text">Such as 54.1, -2.3.</param>
    /// <param name="reading">The place, and how finely it was given.</param>
    /// <param name="why">The reason of a failure.</param>
    public static bool TryParse(ReadOnlySpan<char> text, out CoordinateReading reading, out string? why)
    {
        reading = default;
        text = text.Trim();
        why = text.IsEmpty ? CoordinateFaults.Empty
            : text.Length > LongestText ? CoordinateFaults.TooLong
            : CoordinateWords.AreIn(text) ? CoordinateWords.Replace(text, out var replaced) ?? ReadPlain(replaced, out reading)
            : ReadPlain(text, out reading);
        return why is null;
    }

    private static string? ReadPlain(ReadOnlySpan<char> text, out CoordinateReading reading)
    {
        reading = default;
        return FindStranger(text) ?? Split(text, out var middle) ?? Read(text[..middle], text[middle..], out reading);
    }

    private static string? Read(ReadOnlySpan<char> firstText, ReadOnlySpan<char> secondText, out CoordinateReading reading)
    {
        WrittenAngle first = default, second = default;
        reading = default;
        return ReadAngle(firstText, ref first) ?? ReadAngle(secondText, ref second) ?? first.Check() ?? second.Check() ?? Place(first, second, out reading);
    }

    private static string? FindStranger(ReadOnlySpan<char> text)
    {
        foreach (var ch in text)
        {
            if (!IsNumberPart(ch) && !IsLetter(ch) && !IsMark(ch))
                return CoordinateFaults.StrangeCharacter(ch);
        }

        return null;
    }

    /// <summary>Where the second angle begins: after the first comma, at or after the letters, or half-way through the numbers.</summary>
    private static string? Split(ReadOnlySpan<char> text, out int middle)
    {
        middle = text.IndexOfAny(',', ';');
        if (middle >= 0)
            return text[(middle + 1)..].IndexOfAny(',', ';') < 0 ? null : CommasWithinNumbers(text) ? CoordinateFaults.DecimalComma : CoordinateFaults.NotTwo;
        var letter = IndexOfLetter(text, 0);
        if (letter == 0) // letters before the numbers: the second angle begins at the second letter
            return (middle = IndexOfLetter(text, 1)) > 0 ? null : CoordinateFaults.OneLetter;
        middle = letter > 0 ? letter + 1 : MiddleOfNumbers(text);
        return middle > 0 ? null : CoordinateFaults.NotTwo;
    }

    private static bool CommasWithinNumbers(ReadOnlySpan<char> text)
    {
        var count = 0;
        for (var k = 1; k < text.Length - 1; k++)
            count += text[k] == ',' && char.IsAsciiDigit(text[k - 1]) && char.IsAsciiDigit(text[k + 1]) ? 1 : 0;
        return count == 2;
    }

    private static int IndexOfLetter(ReadOnlySpan<char> text, int from)
    {
        while (from < text.Length && !IsLetter(text[from]))
            from++;
        return from < text.Length ? from : -1;
    }

    /// <summary>The start of the first number of the second half, or -1 when the count of numbers is odd or zero.</summary>
    private static int MiddleOfNumbers(ReadOnlySpan<char> text)
    {
        Span<int> starts = stackalloc int[text.Length];
        var count = 0;
        for (var k = 0; k < text.Length; k++)
        {
            if (StartsNumber(text, k))
                starts[count++] = k;
        }

        return count > 0 && count % 2 == 0 ? starts[count / 2] : -1;
    }

    private static string? ReadAngle(ReadOnlySpan<char> text, ref WrittenAngle angle)
    {
        for (var k = 0; k < text.Length;)
        {
            if (IsLetter(text[k]))
            {
                if (angle.Letter != '\0')
                    return CoordinateFaults.NotTwo;
                angle.Letter = char.ToUpperInvariant(text[k++]);
            }
            else if (StartsNumber(text, k))
            {
                var end = k + 1;
                while (end < text.Length && IsNumberPart(text[end]) && !StartsNumber(text, end))
                    end++;
                if (angle.Add(text[k..end]) is { } fault)
                    return fault;
                k = end;
            }
            else
            {
                k++;
            }
        }

        return null;
    }

    private static string? Place(in WrittenAngle first, in WrittenAngle second, out CoordinateReading reading)
    {
        reading = default;
        if ((first.Letter == '\0') != (second.Letter == '\0'))
            return CoordinateFaults.OneLetter;
        bool firstIsLongitude = first.Letter is 'E' or 'W', secondIsLongitude = second.Letter is 'E' or 'W' or '\0';
        if (firstIsLongitude == secondIsLongitude)
            return CoordinateFaults.SameAxis;
        double latitude = firstIsLongitude ? second.Degrees : first.Degrees, longitude = firstIsLongitude ? first.Degrees : second.Degrees;
        if (Math.Abs(latitude) > 90)
            return Math.Abs(longitude) <= 90 && Math.Abs(latitude) <= 180 && first.Letter == '\0' ? CoordinateFaults.LongitudeFirst : CoordinateFaults.Latitude(latitude);
        if (Math.Abs(longitude) > 180)
            return CoordinateFaults.Longitude(longitude);
        var decimals = first.Parts == 1 && second.Parts == 1 ? Math.Max(first.Decimals, second.Decimals) : (int?)null;
        reading = new(new(latitude, longitude), Math.Min(first.UnitDegrees, second.UnitDegrees), decimals);
        return null;
    }

    /// <summary>A number begins at a sign, or at a figure or dot that no figure, dot or sign stands before.</summary>
    private static bool StartsNumber(ReadOnlySpan<char> text, int at) =>
        IsSign(text[at]) || IsNumberPart(text[at]) && (at == 0 || !IsNumberPart(text[at - 1]));

    private static bool IsNumberPart(char ch) => ch is >= '0' and <= '9' or '.' || IsSign(ch);

    /// <summary>Plus, hyphen, or the minus sign of printed text.</summary>
    private static bool IsSign(char ch) => ch is '+' or '-' or '\u2212';

    private static bool IsLetter(char ch) => ch is 'N' or 'S' or 'E' or 'W' or 'n' or 's' or 'e' or 'w';

    /// <summary>Spaces, commas, and the signs of degrees, minutes and seconds in their several shapes.</summary>
    private static bool IsMark(char ch) =>
        char.IsWhiteSpace(ch) || ch is ',' or ';' or '/' or '\u00B0' or '\u00BA' or '\'' or '"' or '\u2019' or '\u2032' or '\u2033' or '\u201D';
}
