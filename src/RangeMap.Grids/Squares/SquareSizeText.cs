namespace RangeMap.Grids;

/// <summary>Square sizes as people and addresses write them: 10km, 5km, 2km, 1km, 100m.</summary>
public static class SquareSizeText
{
    private static readonly (SquareSize Size, string Text)[] Texts =
    [
        (SquareSize.Km100, "100km"),
        (SquareSize.Km10, "10km"),
        (SquareSize.Km5, "5km"),
        (SquareSize.Km2, "2km"),
        (SquareSize.Km1, "1km"),
        (SquareSize.M100, "100m"),
        (SquareSize.M10, "10m"),
        (SquareSize.M1, "1m"),
    ];

    /// <summary>The text of a size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is no size in use.</exception>
    public static string ToText(this SquareSize size)
    {
        foreach (var known in Texts)
        {
            if (known.Size == size)
                return known.Text;
        }

        throw new ArgumentOutOfRangeException(nameof(size), size, "This is no square size in use.");
    }

    /// <summary>A size as it stands in a sentence: "10 km".</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is no size in use.</exception>
    public static string ToWords(this SquareSize size)
    {
        var text = ToText(size);
        var digits = text.TakeWhile(char.IsAsciiDigit).Count();
        return $"{text[..digits]} {text[digits..]}";
    }

    /// <summary>Reads a size; capitals and spaces do not matter ("10 km").</summary>
    public static bool TryParse(string text, out SquareSize size)
    {
        var plain = text.Replace(" ", "", StringComparison.Ordinal);
        foreach (var known in Texts)
        {
            if (string.Equals(known.Text, plain, StringComparison.OrdinalIgnoreCase))
            {
                size = known.Size;
                return true;
            }
        }

        size = default;
        return false;
    }
}
