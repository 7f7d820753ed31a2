using System.Xml;

namespace RangeMap.Records;

/// <summary>Walks through XML forward, by the local names of its elements. Every failure is a problem that names file and line.</summary>
internal sealed class UntrustedXmlReader(XmlReader xml, string name) : IDisposable
{
    private const int Deepest = 64;

    /// <summary>The line at hand, from 1.</summary>
    public int Line => ((IXmlLineInfo)xml).LineNumber;

    /// <summary>How deep the element at hand is nested.</summary>
    public int Depth => xml.Depth;

    /// <summary>The local name of the element at hand.</summary>
    public string Element => xml.LocalName;

    /// <summary>True while standing on the beginning of an element.</summary>
    public bool IsStart => xml.NodeType == XmlNodeType.Element;

    /// <summary>True while standing on the end of an element.</summary>
    public bool IsEnd => xml.NodeType == XmlNodeType.EndElement;

    /// <summary>True for an element without content.</summary>
    public bool IsEmpty => xml.IsEmptyElement;

    /// <summary>True while standing on text.</summary>
    public bool IsText => xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace;

    /// <summary>The text at hand, of which the end may still have to be read.</summary>
    public string Text
    {
        get
        {
            try
            {
                return xml.Value;
            }
            catch (Exception e) when (UntrustedXml.IsOfXml(e))
            {
                throw UntrustedXml.Problem(name, xml, e);
            }
        }
    }

    /// <summary>Moves on by one node; false at the end.</summary>
    public bool Read()
    {
        try
        {
            var more = xml.Read();
            return xml.Depth <= Deepest ? more : throw ContainerProblem.Damaged(name, "Its elements are nested too deeply.");
        }
        catch (Exception e) when (UntrustedXml.IsOfXml(e))
        {
            throw UntrustedXml.Problem(name, xml, e);
        }
    }

    /// <summary>Moves on by one node inside an element that is not empty; false at its end.</summary>
    /// <param name="depth">How deep that element is nested.</param>
    public bool ReadInside(int depth) => Read() && !(IsEnd && Depth == depth);

    /// <summary>Moves to the next beginning of an element; false at the end.</summary>
    public bool ReadStart()
    {
        while (Read())
        {
            if (IsStart)
                return true;
        }

        return false;
    }

    /// <summary>An attribute without prefix; null if it is not there.</summary>
    public string? Attribute(string attribute) => xml.GetAttribute(attribute);

    /// <summary>An attribute by its local name, with whatever prefix; null if it is not there.</summary>
    public string? PrefixedAttribute(string localName)
    {
        var plain = xml.GetAttribute(localName);
        if (plain is not null || !xml.MoveToFirstAttribute())
            return plain;
        do
        {
            if (xml.LocalName == localName)
                plain = xml.Value;
        }
        while (plain is null && xml.MoveToNextAttribute());
        xml.MoveToElement();
        return plain;
    }

    /// <summary>All text inside the element at hand; afterwards the reader stands on its end.</summary>
    public string ReadContent()
    {
        if (IsEmpty)
            return "";
        var depth = Depth;
        var first = ReadInside(depth) && IsText ? Text : "";
        System.Text.StringBuilder? all = null;
        while (!(IsEnd && Depth == depth) && ReadInside(depth))
        {
            if (IsText)
                all = (all ?? new(first)).Append(Text);
        }

        return all?.ToString() ?? first;
    }

    /// <inheritdoc/>
    public void Dispose() => xml.Dispose();
}
