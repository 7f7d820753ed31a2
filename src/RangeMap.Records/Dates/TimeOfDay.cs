using System.Buffers;

namespace RangeMap.Records;

/// <summary>Cuts the time of day, with fractions and time zone, off a date that has one.</summary>
internal static class TimeOfDay
{
    private static readonly SearchValues<char> Characters = SearchValues.Create("0123456789:.,+-Zz AaPpMm");

    /// <summary>The date before a T or a space that is followed by a time; otherwise the whole text.</summary>
    public static ReadOnlySpan<char> CutOff(ReadOnlySpan<char> text, out bool hadTime)
    {
        var mark = text.IndexOfAny('T', 't', ' ');
        hadTime = mark >= 6 && IsTime(text[(mark + 1)..], text[mark] == ' ');
        return hadTime ? text[..mark].TrimEnd() : text;
    }

    /// <summary>True for text such as 08:40, 08:40:05.5Z, 1407-0600 or 8:40 PM.</summary>
    public static bool IsTime(ReadOnlySpan<char> text, bool needsColon)
    {
        text = text.Trim();
        if (text.Length < 2 || !char.IsAsciiDigit(text[0]) || text.ContainsAnyExcept(Characters))
            return false;
        return text.Contains(':') || (!needsColon && char.IsAsciiDigit(text[1]));
    }
}
