namespace RangeMap.Maps;

/// <summary>Words that follow each other on lines, in one size and perhaps several faces.</summary>
/// <param name="Lines">The lines, each as its pieces from left to right.</param>
/// <param name="Points">Size.</param>
internal sealed record TextBlock(IReadOnlyList<IReadOnlyList<TextPiece>> Lines, double Points)
{
    /// <summary>The greatest part of its size by which a name shrinks before it breaks.</summary>
    private const double LeastShare = 0.75;

    /// <summary>Height, millimetres.</summary>
    public double Height => Lines.Count * SheetStyle.LineMm(Points);

    /// <summary>A text in one face.</summary>
    public static TextBlock Of(string text, Face face, double points, double widthMm) =>
        new([.. TextFlow.Lines(text, face, points, widthMm).Select(line => (TextPiece[])[new(line, face, 0)])], points);

    /// <summary>Several paragraphs in one face.</summary>
    public static TextBlock Of(IEnumerable<string> paragraphs, Face face, double points, double widthMm) =>
        new([.. paragraphs.SelectMany(paragraph => Of(paragraph, face, points, widthMm).Lines)], points);

    /// <summary>A name in upright and italic words: on one line where it fits or can be made to, on several otherwise.</summary>
    public static TextBlock OfName(IReadOnlyList<NamePart> name, double points, double widthMm)
    {
        var words = name.SelectMany(part => part.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => (Word: word, Face: part.Italic ? Face.Italic : Face.Regular))).ToList();
        var width = words.Sum(word => MapFonts.WidthMm(word.Word + " ", word.Face, points));
        var size = points * Math.Clamp(widthMm / Math.Max(width, 1e-9), LeastShare, 1);
        var (lines, line, x) = (new List<IReadOnlyList<TextPiece>>(), new List<TextPiece>(), 0.0);
        foreach (var (word, face) in words.SelectMany(word => TextFlow.Lines(word.Word, word.Face, size, widthMm).Select(piece => (piece, word.Face))))
        {
            var wide = MapFonts.WidthMm(word, face, size);
            if (line.Count > 0 && x + wide > widthMm)
            {
                lines.Add(line);
                (line, x) = ([], 0);
            }

            line.Add(new(word, face, x));
            x += wide + MapFonts.WidthMm(" ", Face.Regular, size);
        }

        lines.Add(line);
        return new([.. lines.Select(Joined)], size);
    }

    /// <summary>Writes the block.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="colour">Colour of the letters.</param>
    public void Draw(IMapPen pen, PaperPoint at, string colour)
    {
        for (var i = 0; i < Lines.Count; i++)
        {
            var baseLine = at.Y + i * SheetStyle.LineMm(Points) + Points * TextStyle.MmPerPoint;
            foreach (var piece in Lines[i])
                pen.Text(new(at.X + piece.X, baseLine), piece.Text, new(piece.Face, Points, colour));
        }
    }

    /// <summary>Neighbouring pieces of one face as one text, so that a reader finds the name whole.</summary>
    private static List<TextPiece> Joined(IReadOnlyList<TextPiece> pieces)
    {
        var joined = new List<TextPiece>();
        foreach (var piece in pieces)
        {
            if (joined.Count > 0 && joined[^1].Face == piece.Face)
                joined[^1] = joined[^1] with { Text = $"{joined[^1].Text} {piece.Text}" };
            else
                joined.Add(piece);
        }

        return joined;
    }
}

/// <summary>A text of one face on a line.</summary>
/// <param name="Text">The text.</param>
/// <param name="Face">Its face.</param>
/// <param name="X">Millimetres from the start of the line.</param>
internal readonly record struct TextPiece(string Text, Face Face, double X);
