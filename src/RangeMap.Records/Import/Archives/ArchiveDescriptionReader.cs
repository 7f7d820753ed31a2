using System.Globalization;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>Reads meta.xml after the Darwin Core text guide (https://dwc.tdwg.org/text/, 2023-09-13), with the defaults of its schema.</summary>
internal sealed class ArchiveDescriptionReader
{
    private const string NeedsFiles = "Each core and extension needs files/location.";
    private readonly UntrustedXmlReader _xml;
    private readonly string _name;
    private readonly string _folder;

    private ArchiveDescriptionReader(UntrustedXmlReader xml, string name)
    {
        _xml = xml;
        _name = name;
        _folder = name[..(name.LastIndexOf('/') + 1)];
    }

    /// <exception cref="ImportProblemException">meta.xml is broken, or says what cannot be followed.</exception>
    public static ArchiveDescription Read(FileBundle files, string name, FileLimits limits)
    {
        using var xml = UntrustedXml.Open(files, name, limits, limits.DescriptionBytes);
        return new ArchiveDescriptionReader(xml, name).Read();
    }

    private ArchiveDescription Read()
    {
        ArchiveTable? core = null;
        string? metadata = null;
        var extensions = new List<ArchiveTable>();
        while (_xml.ReadStart())
        {
            if (_xml.Element is "archive" or "starArchive")
                metadata = _xml.Attribute("metadata");
            else if (_xml.Element == "core")
                core = core is null ? ReadTable("id") : throw Problem("It describes more than one core.", "One core and any number of extensions are allowed.");
            else if (_xml.Element == "extension")
                extensions.Add(ReadTable("coreid"));
        }

        if (core is null)
            throw Problem("It describes no core.", "The element archive must hold an element core.");
        return new(core, extensions, string.IsNullOrWhiteSpace(metadata) ? null : Located(metadata.Trim()));
    }

    private ArchiveTable ReadTable(string idElement)
    {
        if (_xml.IsEmpty)
            throw Problem("A table names no file.", NeedsFiles);
        var layout = ArchiveLayout.Of(_xml, Problem);
        var (files, fields) = (new List<string>(), new List<ArchiveField>());
        int? id = null;
        var depth = _xml.Depth;
        while (_xml.ReadInside(depth))
        {
            if (!_xml.IsStart)
                continue;
            if (_xml.Element == "location")
                files.Add(Located(_xml.ReadContent().Trim()));
            else if (_xml.Element == idElement)
                id = IndexOf();
            else if (_xml.Element == "field")
                AddField(fields);
        }

        if (files.Count == 0)
            throw Problem("A table names no file.", NeedsFiles);
        return layout with { Files = files, Fields = fields, IdIndex = id };
    }

    private void AddField(List<ArchiveField> fields)
    {
        var field = new ArchiveField(IndexOf(), _xml.Attribute("term")?.Trim() ?? "", _xml.Attribute("default"));
        if (field.ShortName.Length == 0)
            throw Problem($"A field names no term (line {_xml.Line}).", "Each field needs the attribute term.");
        if (fields.Count == RowLimits.Default.Fields)
            throw Problem(Invariant($"A table has more than {RowLimits.Default.Fields:N0} fields."), "Leave out those that hold nothing.");
        if (field.Index is not null || field.Default is not null)
            fields.Add(field);
    }

    private int? IndexOf()
    {
        var text = _xml.Attribute("index");
        if (string.IsNullOrWhiteSpace(text))
            return null;
        return int.TryParse(text, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var index) && index < RowLimits.Default.Fields
            ? index
            : throw Problem($"The index \"{text}\" is no place of a column (line {_xml.Line}).", $"Columns are counted from 0 to {RowLimits.Default.Fields - 1}.");
    }

    /// <summary>A file beside meta.xml. Addresses and ways out of the archive are refused, whatever they point to.</summary>
    private string Located(string location)
    {
        if (location.Contains("://", StringComparison.Ordinal))
            throw Problem($"It names the address \"{location}\"; nothing is fetched from elsewhere.", "Put the file into the archive.");
        var name = location.Replace('\\', '/');
        while (name.StartsWith("./", StringComparison.Ordinal))
            name = name[2..];
        EntryName.Check(name);
        return _folder + name;
    }

    private ImportProblemException Problem(string what, string mend) => ContainerProblem.Of($"{_name} cannot be followed. {what}", $"{_name}, line {_xml.Line}", mend);
}
