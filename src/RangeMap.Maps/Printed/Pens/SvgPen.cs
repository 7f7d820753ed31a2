using System.Globalization;
using System.Text;
using System.Xml;

namespace RangeMap.Maps;

/// <summary>
/// Writes SVG 1.1 in millimetres. A group is a g element with an id, a shape a path, a text a text element with the built-in font,
/// so that a layout program finds all of them again.
/// </summary>
internal sealed class SvgPen : IMapPen, IDisposable
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    private readonly XmlWriter _xml;
    private readonly StringBuilder _path = new();
    private int _clips;

    /// <summary>Starts a document.</summary>
    /// <param name="output">Stays open.</param>
    /// <param name="widthMm">Width of the paper.</param>
    /// <param name="heightMm">Its height.</param>
    /// <param name="title">What is drawn, in a few words.</param>
    /// <param name="description">The same in sentences.</param>
    public SvgPen(Stream output, double widthMm, double heightMm, string title, string description)
    {
        _xml = XmlWriter.Create(output, new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, IndentChars = "", NewLineChars = "\n", CheckCharacters = true });
        _xml.WriteStartElement("svg", Namespace);
        _xml.WriteAttributeString("version", "1.1");
        _xml.WriteAttributeString("width", Number(widthMm) + "mm");
        _xml.WriteAttributeString("height", Number(heightMm) + "mm");
        _xml.WriteAttributeString("viewBox", $"0 0 {Number(widthMm)} {Number(heightMm)}");
        _xml.WriteAttributeString("xml", "lang", null, "en-GB");
        _xml.WriteAttributeString("role", "img");
        _xml.WriteElementString("title", Namespace, Xml.Clean(title));
        _xml.WriteElementString("desc", Namespace, Xml.Clean(description));
        WriteFonts();
    }

    public void StartGroup(string name, Paint paint, PaperBox? clip = null)
    {
        var clipName = clip is { } box ? WriteClip(box) : null;
        _xml.WriteStartElement("g", Namespace);
        _xml.WriteAttributeString("id", name);
        _xml.WriteAttributeString("fill", paint.Fill ?? "none");
        if (paint.Fill is not null)
            _xml.WriteAttributeString("fill-rule", "evenodd");
        if (paint.Stroke is not null)
        {
            _xml.WriteAttributeString("stroke", paint.Stroke);
            _xml.WriteAttributeString("stroke-width", Number(paint.WidthMm));
            _xml.WriteAttributeString("stroke-linejoin", "round");
            if (paint.DashMm > 0)
                _xml.WriteAttributeString("stroke-dasharray", Number(paint.DashMm));
        }

        if (clipName is not null)
            _xml.WriteAttributeString("clip-path", $"url(#{clipName})");
    }

    public void EndGroup() => _xml.WriteEndElement();

    public void Shape(IReadOnlyList<Strand> strands, string? tip = null)
    {
        _path.Clear();
        foreach (var (points, closed) in strands)
        {
            var (x, y) = (Hundredths(points[0].X), Hundredths(points[0].Y));
            _path.Append('M').Append(Number(x)).Append(' ').Append(Number(y)).Append('l');
            for (var i = 1; i < points.Count; i++)
            {
                // Steps between rounded places, so that no error adds up along the line.
                var (nextX, nextY) = (Hundredths(points[i].X), Hundredths(points[i].Y));
                AppendStep(nextX - x, isFirst: i == 1);
                AppendStep(nextY - y, isFirst: false);
                (x, y) = (nextX, nextY);
            }

            if (closed)
                _path.Append('z');
        }

        _xml.WriteStartElement("path", Namespace);
        _xml.WriteAttributeString("d", _path.ToString());
        if (tip is not null)
            _xml.WriteElementString("title", Namespace, tip);
        _xml.WriteEndElement();
    }

    public void Text(PaperPoint at, string text, TextStyle style)
    {
        _xml.WriteStartElement("text", Namespace);
        _xml.WriteAttributeString("x", Number(at.X));
        _xml.WriteAttributeString("y", Number(at.Y));
        _xml.WriteAttributeString("font-size", Number(style.SizeMm));
        if (style.Face != Face.Regular)
            _xml.WriteAttributeString(style.Face == Face.Bold ? "font-weight" : "font-style", style.Face == Face.Bold ? "bold" : "italic");
        if (style.Anchor != TextAnchor.Start)
            _xml.WriteAttributeString("text-anchor", style.Anchor == TextAnchor.Middle ? "middle" : "end");
        _xml.WriteAttributeString("fill", style.Colour);
        if (style.Halo is not null)
        {
            _xml.WriteAttributeString("stroke", style.Halo);
            _xml.WriteAttributeString("stroke-width", Number(style.SizeMm * TextStyle.HaloShare));
            _xml.WriteAttributeString("stroke-linejoin", "round");
            _xml.WriteAttributeString("paint-order", "stroke");
        }

        _xml.WriteString(Xml.Clean(text));
        _xml.WriteEndElement();
    }

    /// <summary>Ends the document.</summary>
    public void Dispose()
    {
        _xml.WriteEndElement();
        _xml.Dispose();
    }

    private void WriteFonts()
    {
        var rules = new StringBuilder($"text{{font-family:'{MapFonts.Family}',sans-serif;white-space:pre}}");
        foreach (var face in Enum.GetValues<Face>())
        {
            var (weight, slope) = (face == Face.Bold ? "bold" : "normal", face == Face.Italic ? "italic" : "normal");
            rules.Append(CultureInfo.InvariantCulture, $"@font-face{{font-family:'{MapFonts.Family}';font-weight:{weight};font-style:{slope};src:url(data:font/woff2;base64,{MapFonts.WebFont(face)})}}");
        }

        _xml.WriteElementString("style", Namespace, rules.ToString());
    }

    private string WriteClip(PaperBox box)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"clip-{++_clips}");
        _xml.WriteStartElement("clipPath", Namespace);
        _xml.WriteAttributeString("id", name);
        _xml.WriteStartElement("rect", Namespace);
        _xml.WriteAttributeString("x", Number(box.Left));
        _xml.WriteAttributeString("y", Number(box.Top));
        _xml.WriteAttributeString("width", Number(box.Width));
        _xml.WriteAttributeString("height", Number(box.Height));
        _xml.WriteEndElement();
        _xml.WriteEndElement();
        return name;
    }

    private void AppendStep(int hundredths, bool isFirst)
    {
        if (!isFirst && hundredths >= 0)
            _path.Append(' ');
        _path.Append(Number(hundredths));
    }

    /// <summary>To a hundredth of a millimetre, which no press prints.</summary>
    private static string Number(double mm) => Number(Hundredths(mm));

    private static string Number(int hundredths) => (hundredths / 100m).ToString("#.##;-#.##;0", CultureInfo.InvariantCulture);

    private static int Hundredths(double mm) => (int)Math.Round(mm * 100);
}
