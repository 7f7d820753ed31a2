using System.Globalization;

namespace RangeMap.Grids;

/// <summary>
/// Cell codes of the European grid. Written in the short form, 10kmE342N321: size, easting, northing of the south-west corner, the numbers without as many zeros as the
/// size in metres ends in, so 5kmE3425N3210. Read also in the statistical form in metres, CRS3035RES10000mN3210000E3420000, with or without a country before it.
/// </summary>
/// <remarks>
/// Sources: INSPIRE data specification on geographical grid systems, 3.1, 2014; Commission Implementing Regulation (EU) 2018/1799, article 3. The
/// rule of the zeros for sizes that are no power of ten (2 km and 5 km): from memory of the European Environment Agency's guide to its grids, not verified.
/// </remarks>
internal static class CellCode
{
    private const string MetreForm = "CRS3035RES";

    /// <summary>The short code of a square.</summary>
    public static string Of(Square square)
    {
        Span<char> text = stackalloc char[GridReference.LongestText];
        TryWrite(square, text, out var length);
        return new(text[..length]);
    }

    /// <summary>Writes the short code; false when the place is too short.</summary>
    public static bool TryWrite(Square square, Span<char> destination, out int length)
    {
        var unit = Unit(square.SideMetres);
        return destination.TryWrite(CultureInfo.InvariantCulture, $"{square.Size.ToText()}E{square.Easting / unit}N{square.Northing / unit}", out length);
    }

    /// <summary>True when a text (capitals, no spaces) looks like a cell code, right or wrong: the long form's word, or a size, then two axis letters with numbers. 10KME34 is a military reference.</summary>
    public static bool IsLike(ReadOnlySpan<char> text) =>
        text.Contains(MetreForm, StringComparison.Ordinal)
        || TryTakeNumber(ref text, out var size) && TryTakeUnit(ref text, ref size) && TryTakeAxis(ref text, out _, out _) && TryTakeAxis(ref text, out _, out _);

    /// <summary>Reads a code (capitals, no spaces); null, or the reason why it is none.</summary>
    public static string? Read(ReadOnlySpan<char> text, out Square square)
    {
        square = default;
        var metreForm = text.IndexOf(MetreForm, StringComparison.Ordinal);
        if (metreForm >= 0)
            text = text[(metreForm + MetreForm.Length)..];
        if (!TryTakeNumber(ref text, out var size) || !TryTakeUnit(ref text, ref size)
            || !TryTakeAxis(ref text, out var first, out var one) || !TryTakeAxis(ref text, out var second, out var two) || first == second || !text.IsEmpty)
            return GridReferenceFaults.NoCellCode;
        if (size is < 1 or > 100_000 || !Enum.IsDefined((SquareSize)size))
            return GridReferenceFaults.NoCellSize(size);
        var unit = metreForm >= 0 ? 1 : Unit((int)size);
        var (east, north) = first == 'E' ? (one * unit, two * unit) : (two * unit, one * unit);
        if (!NationalGrid.Get(GridId.European).Contains(new(east, north)))
            return GridReferenceFaults.CellOutside(east, north);
        if (east % size != 0 || north % size != 0)
            return GridReferenceFaults.CellOffGrid(size);
        square = new(GridId.European, (SquareSize)size, (int)east, (int)north);
        return null;
    }

    /// <summary>1 followed by the zeros that a size in metres ends in.</summary>
    private static int Unit(int side)
    {
        var unit = 1;
        while (side % (10 * unit) == 0)
            unit *= 10;
        return unit;
    }

    private static bool TryTakeNumber(ref ReadOnlySpan<char> text, out long number)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        end = end < 0 ? text.Length : end;
        number = 0;
        if (end is 0 or > 9 || !long.TryParse(text[..end], NumberStyles.None, CultureInfo.InvariantCulture, out number))
            return false;
        text = text[end..];
        return true;
    }

    private static bool TryTakeUnit(ref ReadOnlySpan<char> text, ref long size)
    {
        var kilometres = text.StartsWith("KM");
        size *= kilometres ? 1_000 : 1;
        if (!kilometres && !text.StartsWith("M"))
            return false;
        text = text[(kilometres ? 2 : 1)..];
        return true;
    }

    private static bool TryTakeAxis(ref ReadOnlySpan<char> text, out char axis, out long number)
    {
        (axis, number) = (text.IsEmpty ? '\0' : text[0], 0);
        if (axis is not ('E' or 'N'))
            return false;
        text = text[1..];
        return TryTakeNumber(ref text, out number);
    }
}
