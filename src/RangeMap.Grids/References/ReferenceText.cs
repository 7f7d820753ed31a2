namespace RangeMap.Grids;

/// <summary>A reference taken apart: letters, figures, letters after the figures. Nothing is allocated while it is read.</summary>
internal ref struct ReferenceText
{
    /// <summary>Most figures read: nine for each axis, far beyond any instrument.</summary>
    public const int MostFigures = 18;

    /// <summary>Most characters read.</summary>
    public const int LongestText = 64;

    /// <summary>The first three letters before the figures, capitals.</summary>
    public char First, Second, Third;

    /// <summary>How many letters stand before the figures.</summary>
    public int Letters;

    /// <summary>The figures as one number, and how many there are.</summary>
    public ulong Figures;

    /// <summary>How many figures there are.</summary>
    public int FigureCount;

    /// <summary>How many groups of figures, and how many figures in the first.</summary>
    public int Groups, FirstGroup;

    /// <summary>The first two letters after the figures, capitals.</summary>
    public char SuffixFirst, SuffixSecond;

    /// <summary>How many letters stand after the figures.</summary>
    public int Suffix;

    private char _previous;
    private bool _dotAfterFigure;

    /// <summary>Reads a text; null when it could be taken apart, else the reason.</summary>
    public string? Read(ReadOnlySpan<char> text)
    {
        if (text.Length > LongestText)
            return GridReferenceFaults.TooLong(text.Length);
        foreach (var raw in text)
        {
            var ch = Fold(raw);
            var fault = ch is >= '0' and <= '9' ? Figure(ch) : ch is >= 'A' and <= 'Z' ? Letter(ch) : Separator(ch, raw);
            if (fault is not null)
                return fault;
            _previous = ch;
        }

        return null;
    }

    /// <summary>Small letters to capitals, full-width characters (U+FF01 to U+FF5E) to plain ones.</summary>
    public static char Fold(char ch)
    {
        if (ch is >= '\uFF01' and <= '\uFF5E')
            ch = (char)(ch - 0xFEE0);
        return ch is >= 'a' and <= 'z' ? (char)(ch - 32) : ch;
    }

    private string? Figure(char ch)
    {
        if (Suffix > 0)
            return GridReferenceFaults.LetterAmongFigures(SuffixFirst);
        if (FigureCount == MostFigures)
            return GridReferenceFaults.TooManyFigures;
        if (_dotAfterFigure)
            return GridReferenceFaults.DotAmongFigures;
        if (_previous is < '0' or > '9')
            Groups++;
        if (Groups == 1)
            FirstGroup++;
        Figures = Figures * 10 + (ulong)(ch - '0');
        FigureCount++;
        return null;
    }

    private string? Letter(char ch)
    {
        _dotAfterFigure = false;
        if (FigureCount > 0)
        {
            if (Suffix == 0)
                SuffixFirst = ch;
            else
                SuffixSecond = ch;
            Suffix++;
        }
        else
        {
            if (Letters == 0)
                First = ch;
            else if (Letters == 1)
                Second = ch;
            else if (Letters == 2)
                Third = ch;
            Letters++;
        }

        return null;
    }

    private string? Separator(char ch, char raw)
    {
        if (ch == '.' && _previous is >= '0' and <= '9')
            _dotAfterFigure = true;
        return char.IsWhiteSpace(ch) || ch is '-' or '.' or ',' or '/' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2212'
            ? null
            : GridReferenceFaults.StrangeCharacter(raw);
    }
}
