namespace RangeMap.Records;

/// <summary>Reads whole numbers made of the figures 0 to 9 alone: no sign, no space, no other script.</summary>
internal static class Figures
{
    /// <summary>True when the text is 1 to 9 figures.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out int number)
    {
        number = 0;
        if (text.IsEmpty || text.Length > 9)
            return false;
        foreach (var c in text)
        {
            if (!char.IsAsciiDigit(c))
                return false;
            number = number * 10 + (c - '0');
        }

        return true;
    }
}
