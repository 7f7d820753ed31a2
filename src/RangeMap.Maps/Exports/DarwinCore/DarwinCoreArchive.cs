using System.IO.Compression;
using System.Text;
using System.Xml;

namespace RangeMap.Maps;

/// <summary>Records as a Darwin Core Archive (Darwin Core text guide): meta.xml, eml.xml with licences and question, and the occurrences. Text stands as it is, without a guard against formulas.</summary>
public static class DarwinCoreArchive
{
    private const string Core = "occurrence.csv", Description = "eml.xml", OwnTerms = "urn:rangemap:terms/";

    /// <summary>The earliest time that a zip file can state; the time of making is left out, so that the same question gives the same bytes.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly XmlWriterSettings Xml = new() { Indent = true, Encoding = new UTF8Encoding(false), CloseOutput = false };

    /// <summary>Writes the archive to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, ExportTable table, ExportSource source, IEnumerable<ExportRow> rows, CancellationToken cancel = default)
    {
        using var zip = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true);
        using (var meta = Entry(zip, "meta.xml"))
            WriteMeta(meta, table);
        using (var eml = Entry(zip, Description))
            EmlDocument.Write(eml, table, source, Xml);
        using (var core = Entry(zip, Core))
            await CsvExport.WriteAsync(core, table, rows, guarded: false, cancel).ConfigureAwait(false);
    }

    private static Stream Entry(ZipArchive zip, string name)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Fastest);
        entry.LastWriteTime = NoTime;
        return entry.Open();
    }

    private static void WriteMeta(Stream output, ExportTable table)
    {
        using var xml = XmlWriter.Create(output, Xml);
        xml.WriteStartElement("archive", "http://rs.tdwg.org/dwc/text/");
        xml.WriteAttributeString("metadata", Description);
        xml.WriteStartElement("core");
        foreach (var (name, value) in (ReadOnlySpan<(string, string)>)
            [("encoding", "UTF-8"), ("fieldsTerminatedBy", ","), ("linesTerminatedBy", @"\r\n"), ("fieldsEnclosedBy", "\""), ("ignoreHeaderLines", "1"), ("rowType", "http://rs.tdwg.org/dwc/terms/Occurrence")])
            xml.WriteAttributeString(name, value);
        xml.WriteStartElement("files");
        xml.WriteElementString("location", Core);
        xml.WriteEndElement();
        xml.WriteStartElement("id");
        xml.WriteAttributeString("index", "0");
        xml.WriteEndElement();
        for (var i = 0; i < table.Columns.Count; i++)
        {
            xml.WriteStartElement("field");
            xml.WriteAttributeString("index", XmlConvert.ToString(i));
            xml.WriteAttributeString("term", table.Columns[i].Term ?? OwnTerms + table.Columns[i].Name);
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
    }
}
