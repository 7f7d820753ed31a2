namespace RangeMap.Maps;

/// <summary>Breaks texts into lines that fit a width.</summary>
internal static class TextFlow
{
    /// <summary>The lines of a text; a word longer than the width is cut.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">The face that it is written in.</param>
    /// <param name="points">Size.</param>
    /// <param name="widthMm">Room for a line.</param>
    public static IReadOnlyList<string> Lines(string text, Face face, double points, double widthMm)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, face, points, widthMm)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length == 0 || MapFonts.WidthMm(longer, face, points) <= widthMm)
            {
                line = longer;
                continue;
            }

            lines.Add(line);
            line = word;
        }

        if (line.Length > 0)
            lines.Add(line);
        return lines;
    }

    private static IEnumerable<string> Pieces(string word, Face face, double points, double widthMm)
    {
        while (word.Length > 1 && MapFonts.WidthMm(word, face, points) > widthMm)
        {
            var length = word.Length - 1;
            while (length > 1 && MapFonts.WidthMm(word[..length], face, points) > widthMm)
                length--;
            // A sign of two characters stays whole.
            if (char.IsHighSurrogate(word[length - 1]))
                length += length > 1 ? -1 : 1;
            yield return word[..length];
            word = word[length..];
        }

        yield return word;
    }
}
