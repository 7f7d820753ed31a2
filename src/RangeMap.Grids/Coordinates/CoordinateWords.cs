using System.Buffers;
using System.Text;

namespace RangeMap.Grids;

/// <summary>Puts the plain signs in place of words, unit letters, brackets and full-width characters in a latitude and longitude.</summary>
internal static class CoordinateWords
{
    private static readonly Dictionary<string, char> Signs = new(StringComparer.OrdinalIgnoreCase)
    {
        ["north"] = 'N', ["south"] = 'S', ["east"] = 'E', ["west"] = 'W',
        ["d"] = '\u00B0', ["deg"] = '\u00B0', ["degree"] = '\u00B0', ["degrees"] = '\u00B0',
        ["m"] = '\'', ["min"] = '\'', ["minute"] = '\'', ["minutes"] = '\'',
        ["sec"] = '"', ["second"] = '"', ["seconds"] = '"',
        ["lat"] = ' ', ["latitude"] = ' ', ["lon"] = ' ', ["long"] = ' ', ["longitude"] = ' ',
    };

    private static readonly SearchValues<char> AxisLetters = SearchValues.Create("NSEWnsew");

    /// <summary>True when a text holds any of what is replaced.</summary>
    public static bool AreIn(ReadOnlySpan<char> text)
    {
        var hasSemicolon = text.Contains(';');
        for (var k = 0; k < text.Length; k++)
        {
            var ch = text[k];
            if (ch is '(' or ')' or '[' or ']' or '=' or ':' or >= '\uFF01' and <= '\uFF5E' || ch == ',' && hasSemicolon || IsWordLetter(ch))
                return true;
        }

        return false;
    }

    /// <summary>
    /// Puts signs for words, and the latitude first where the word for longitude stood first. Words that are not known stay, for the reader to refuse.
    /// Null, or the reason why the words contradict each other or the letters.
    /// </summary>
    public static string? Replace(ReadOnlySpan<char> text, out string replaced)
    {
        var plain = new StringBuilder(text.Length);
        int latitude = -1, longitude = -1, axes = 0;
        var decimalComma = text.Contains(';') && !text.Contains('.');
        for (var k = 0; k < text.Length;)
        {
            var end = k;
            while (end < text.Length && char.IsAsciiLetter(Fold(text[end])))
                end++;
            if (end == k)
            {
                plain.Append(Sign(Fold(text[k++]), decimalComma));
                continue;
            }

            var word = Word(text[k..end]);
            if (word.StartsWith("la", StringComparison.OrdinalIgnoreCase))
                (latitude, axes) = (plain.Length, axes + 1);
            else if (word.StartsWith("lo", StringComparison.OrdinalIgnoreCase))
                (longitude, axes) = (plain.Length, axes + 1);
            AppendWord(plain, word);
            k = end;
        }

        replaced = longitude >= 0 && latitude > longitude ? Swapped(plain, latitude) : plain.ToString();
        return axes == 0 ? null : axes != 2 || latitude < 0 || longitude < 0 ? CoordinateFaults.AxisWords : CheckLetters(replaced);
    }

    private static string Swapped(StringBuilder plain, int latitude) =>
        $"{plain.ToString(latitude, plain.Length - latitude)};{plain.ToString(0, latitude).Replace(';', ' ').Replace(',', ' ')}";

    /// <summary>Once words have put the latitude first, the first letter may not be E or W.</summary>
    private static string? CheckLetters(string text) =>
        text.AsSpan().IndexOfAny(AxisLetters) is var first and >= 0 && text[first] is 'E' or 'W' or 'e' or 'w' ? CoordinateFaults.AxisWords : null;

    /// <summary>A lone s behind a figure means seconds once a unit letter stood before it, else south.</summary>
    private static void AppendWord(StringBuilder plain, string word)
    {
        if (word == "s" && plain.Length > 0 && char.IsAsciiDigit(plain[^1]) && HasMinutes(plain))
            plain.Append('"');
        else if (Signs.TryGetValue(word, out var sign))
            plain.Append(sign);
        else if (word.Length == 2 && word[0] == 's' && HasMinutes(plain)) // 30sN
            plain.Append('"').Append(word[1]);
        else
            plain.Append(word);
    }

    private static bool HasMinutes(StringBuilder plain)
    {
        for (var k = plain.Length - 1; k >= 0 && plain[k] is not ('N' or 'S' or 'E' or 'W' or ',' or ';'); k--)
        {
            if (plain[k] == '\'')
                return true;
        }

        return false;
    }

    private static string Word(ReadOnlySpan<char> letters)
    {
        Span<char> word = stackalloc char[letters.Length];
        for (var k = 0; k < letters.Length; k++)
            word[k] = Fold(letters[k]);
        return new(word);
    }

    private static char Sign(char ch, bool decimalComma) => ch switch
    {
        '(' or ')' or '[' or ']' or '=' or ':' => ' ',
        ',' when decimalComma => '.',
        _ => ch,
    };

    /// <summary>Full-width characters to plain ones.</summary>
    private static char Fold(char ch) => ch is >= '\uFF01' and <= '\uFF5E' ? (char)(ch - 0xFEE0) : ch;

    /// <summary>A letter that is not one of N, S, E, W; those alone need no replacing.</summary>
    private static bool IsWordLetter(char ch) => char.IsAsciiLetter(ch) && ch is not ('N' or 'S' or 'E' or 'W' or 'n' or 's' or 'e' or 'w');
}
