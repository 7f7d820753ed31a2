using System.Xml;

namespace RangeMap.Records;

/// <summary>Opens XML that may come from anyone: no document type, nothing fetched, no huge piece, no deep nesting.</summary>
internal static class UntrustedXml
{
    /// <summary>Reads a file of a bundle and hands its elements on.</summary>
    /// <param name="bundle">Where the file lies.</param>
    /// <param name="name">The file.</param>
    /// <param name="limits">How much it may hold.</param>
    /// <param name="mostBytes">Bytes that may be read of it.</param>
    public static UntrustedXmlReader Open(FileBundle bundle, string name, FileLimits limits, long mostBytes)
    {
        var stream = new XmlPieceGuard(bundle.Open(name, mostBytes), name, limits.XmlPieceBytes);
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            CloseInput = true,
        };
        try
        {
            return new UntrustedXmlReader(XmlReader.Create(stream, settings), name);
        }
        catch (Exception e) when (IsOfXml(e))
        {
            throw Problem(name, null, e);
        }
    }

    /// <summary>True for what an XML reader throws at broken XML; some of it comes as other exceptions than its own.</summary>
    internal static bool IsOfXml(Exception e) => e is XmlException or ArgumentException or InvalidOperationException;

    /// <summary>The problem that names file and line.</summary>
    internal static ImportProblemException Problem(string name, XmlReader? reader, Exception e)
    {
        var line = Math.Max((e as XmlException)?.LineNumber ?? 0, Math.Max((reader as IXmlLineInfo)?.LineNumber ?? 0, 1));
        return new(new($"{name} is no XML that can be read: {FirstSentence(e.Message)}", $"{name}, line {line}", "Make the file again with the program it came from."));
    }

    private static string FirstSentence(string message) => message.Split(". ")[0].TrimEnd('.') + ".";
}
