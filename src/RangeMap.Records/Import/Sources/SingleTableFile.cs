namespace RangeMap.Records;

/// <summary>The one table in a zip file or folder that has no description.</summary>
internal sealed class SingleTableFile : RecordFile
{
    private static readonly string[] NoTables = [".xml", ".json", ".md", ".html", ".htm", ".pdf", ".doc", ".docx", ".rtf", ".png", ".jpg", ".jpeg"];
    private static readonly string[] Companions = ["citations.txt", "rights.txt", "readme.txt", "readme", "licence.txt", "license.txt", "license", "licence"];
    private readonly FileBundle _files;
    private readonly string _name;
    private readonly ImportOptions _options;

    /// <param name="stream">What the files are read from; null for a folder.</param>
    /// <param name="files">The files; closed with this.</param>
    /// <param name="options">Encoding and separator.</param>
    /// <exception cref="ImportProblemException">There is no table, or more than one.</exception>
    public SingleTableFile(Stream? stream, FileBundle files, ImportOptions options)
        : base(stream)
    {
        _files = files;
        _options = options;
        RefuseDocuments(files);
        var tables = files.Names.Where(IsTable).ToList();
        _name = tables.Count == 1 ? tables[0] : throw Problem(files, tables);
    }

    /// <inheritdoc/>
    public override FileDescription Description => new(FileKind.DelimitedText, $"delimited text, {_name} in {_files.Name}");

    /// <inheritdoc/>
    public override RowSource Open() => DelimitedRows.Open(OpenTable(), _options.Encoding, _options.Separator, closesStream: true);

    /// <inheritdoc/>
    public override void Dispose()
    {
        _files.Dispose();
        base.Dispose();
    }

    /// <inheritdoc/>
    protected override RowSource OpenAgain() => Open();

    private ReplayedStream OpenTable()
    {
        var stream = _files.Open(_name);
        var first = new byte[FileSignature.Length];
        var count = stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        return FileSignature.Of(first.AsSpan(0, count), out var what, out var mend) == FileForm.Text
            ? new ReplayedStream(first.AsMemory(0, count), stream)
            : throw ContainerProblem.Of($"{_name} is no table. {what}".TrimEnd(), _name, mend.Length > 0 ? mend : "Unpack it and import the table.");
    }

    private static bool IsTable(string name)
    {
        var file = name[(name.LastIndexOf('/') + 1)..];
        return !NoTables.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase) && !Companions.Contains(file, StringComparer.OrdinalIgnoreCase);
    }

    private static void RefuseDocuments(FileBundle files)
    {
        const string mend = "Save the table as .xlsx or as CSV, UTF-8.";
        if (files.Has("mimetype") && files.Has("content.xml"))
            throw ContainerProblem.Of("This is an OpenDocument file, such as .ods.", "content.xml", mend);
        if (files.Has("word/document.xml") || files.Names.Any(n => n.StartsWith("ppt/", StringComparison.Ordinal)))
            throw ContainerProblem.Of("This is a text document or a presentation, not a table.", "zip file", mend);
    }

    private static ImportProblemException Problem(FileBundle files, List<string> tables)
    {
        const string mend = "Import the table that holds the records by itself, or add a meta.xml that tells what each file is.";
        return tables.Count == 0
            ? ContainerProblem.Of($"There is no table in {files.Name}.", $"files: {Listed(files.Names)}", mend)
            : ContainerProblem.Of($"There are several files in {files.Name}, and no meta.xml tells which of them holds the records.", $"files: {Listed(tables)}", mend);
    }

    private static string Listed(IReadOnlyList<string> names) => names.Count == 0 ? "none" : string.Join(", ", names.Take(10)) + (names.Count > 10 ? ", ..." : "");
}
