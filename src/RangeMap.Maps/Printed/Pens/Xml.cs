using System.Xml;

namespace RangeMap.Maps;

/// <summary>Text for XML documents.</summary>
internal static class Xml
{
    /// <summary>The text without the characters that XML 1.0 cannot hold; names come from files of users.</summary>
    public static string Clean(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!Holds(text, i))
                return string.Concat(text.Where((_, at) => Holds(text, at)));
        }

        return text;
    }

    private static bool Holds(string text, int at) =>
        char.IsHighSurrogate(text[at]) ? at + 1 < text.Length && char.IsLowSurrogate(text[at + 1])
        : char.IsLowSurrogate(text[at]) ? at > 0 && char.IsHighSurrogate(text[at - 1])
        : XmlConvert.IsXmlChar(text[at]);
}
