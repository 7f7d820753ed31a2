namespace RangeMap.Grids;

/// <summary>Tells apart the references that do not begin with the letters of a 100 km square, and hands each to its reader.</summary>
internal static class UnletteredReader
{
    private const string EpsgWord = "EPSG", UtmWord = "UTM", CellWord = "CRS3035";

    /// <summary>True for a text that begins with a figure, a sign, EPSG, UTM or a long cell code, and for E 530800 N 180100; no lettered reference does.</summary>
    public static bool Takes(ReadOnlySpan<char> text)
    {
        text = text.TrimStart();
        if (text.IsEmpty)
            return false;
        if (text.Length > 3 && text[2] == '_') // the country before a long cell code
            return StartsWith(text[3..], CellWord);
        return ReferenceText.Fold(text[0]) switch
        {
            >= '0' and <= '9' => true,
            '-' or '+' or '\u2212' => text.Length > 1 && char.IsAsciiDigit(text[1]),
            'E' or 'N' when IsLetteredPair(text) => true,
            'E' => StartsWith(text, EpsgWord),
            'U' => StartsWith(text, UtmWord),
            'C' => StartsWith(text, CellWord),
            _ => false,
        };
    }

    /// <summary>Reads such a text; null, or the reason why it names no square.</summary>
    public static string? Read(ReadOnlySpan<char> text, GridReferenceOptions options, out Square square, out GridReferenceNotes notes)
    {
        (square, notes) = (default, GridReferenceNotes.None);
        if (text.Length > ReferenceText.LongestText)
            return GridReferenceFaults.TooLong(text.Length);
        Span<char> folded = stackalloc char[ReferenceText.LongestText], packed = stackalloc char[ReferenceText.LongestText];
        var plain = Fold(text, folded);
        var tight = Pack(plain, packed);
        if (CellCode.IsLike(tight))
            return CellCode.Read(tight, out square);
        if (plain.StartsWith(EpsgWord))
            return PairReader.ReadWithCode(plain[EpsgWord.Length..], out square, out notes);
        if (plain.StartsWith(UtmWord))
            return ZoneReader.Read(plain[UtmWord.Length..].TrimStart(), out square, out notes);
        if (ZoneReader.IsLike(plain)) // 54N 2W looks alike, but is no reference of a zone
            return ZoneReader.Read(plain, out square, out notes) is not { } fault ? null : CoordinateText.TryParse(text, out _, out _) ? NumericFaults.Degrees : fault;
        return CoordinateText.TryParse(text, out _, out _) ? NumericFaults.Degrees : PairReader.Read(plain, options, out square, out notes);
    }

    private static bool StartsWith(ReadOnlySpan<char> text, string word)
    {
        for (var k = 0; k < word.Length; k++)
        {
            if (k == text.Length || ReferenceText.Fold(text[k]) != word[k])
                return false;
        }

        return true;
    }

    /// <summary>True for E or N, figures, the other of the two, figures.</summary>
    private static bool IsLetteredPair(ReadOnlySpan<char> text)
    {
        int letters = 0, figures = 0;
        var first = ReferenceText.Fold(text[0]);
        foreach (var raw in text)
        {
            var ch = ReferenceText.Fold(raw);
            if (ch is >= '0' and <= '9')
            {
                figures++;
            }
            else if (ch is >= 'A' and <= 'Z')
            {
                if (letters > 0 && (letters > 1 || figures == 0 || ch == first || ch is not ('E' or 'N')))
                    return false;
                (letters, figures) = (letters + 1, 0);
            }
        }

        return letters == 2 && figures > 0;
    }

    private static ReadOnlySpan<char> Fold(ReadOnlySpan<char> text, Span<char> place)
    {
        for (var k = 0; k < text.Length; k++)
            place[k] = ReferenceText.Fold(text[k]);
        return ((ReadOnlySpan<char>)place[..text.Length]).Trim();
    }

    private static ReadOnlySpan<char> Pack(ReadOnlySpan<char> text, Span<char> place)
    {
        var length = 0;
        foreach (var ch in text)
        {
            if (!char.IsWhiteSpace(ch))
                place[length++] = ch;
        }

        return place[..length];
    }
}
