namespace RangeMap.Maps;

/// <summary>
/// What a map is drawn with. One drawing serves all formats: SVG by <see cref="SvgPen"/>, PNG and PDF by <see cref="SkiaPen"/>.
/// Shapes are drawn within a group, which holds their paint.
/// </summary>
internal interface IMapPen
{
    /// <summary>Starts a group of shapes that share a paint. Groups do not nest; texts stand outside them.</summary>
    /// <param name="name">What the shapes are, unique within the drawing.</param>
    /// <param name="paint">How they are painted.</param>
    /// <param name="clip">Where they end; null for the whole paper.</param>
    void StartGroup(string name, Paint paint, PaperBox? clip = null);

    /// <summary>Ends the group.</summary>
    void EndGroup();

    /// <summary>Draws a shape of the group.</summary>
    /// <param name="strands">Its outlines.</param>
    /// <param name="tip">What it is, for formats that can tell; null for nothing.</param>
    void Shape(IReadOnlyList<Strand> strands, string? tip = null);

    /// <summary>Writes a text on one line.</summary>
    /// <param name="at">Left end, middle or right end of its base line, as the style says.</param>
    /// <param name="text">The text.</param>
    /// <param name="style">How it is written.</param>
    void Text(PaperPoint at, string text, TextStyle style);
}
