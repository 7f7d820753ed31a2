namespace RangeMap.Records;

/// <summary>One sheet of a workbook.</summary>
/// <param name="Name">As its tab says.</param>
/// <param name="Part">The file in the workbook that holds it; null for a chart or another sheet without cells.</param>
/// <param name="IsVisible">False for a hidden sheet.</param>
internal sealed record SheetEntry(string Name, string? Part, bool IsVisible);

/// <summary>
/// A workbook of Office Open XML (ECMA-376): which sheets it has, what its cells share, how it counts days. Namespaces are not looked
/// at, so that the strict and the transitional form are read alike.
/// </summary>
internal sealed class Workbook
{
    private const string UsualPart = "xl/workbook.xml";
    private readonly FileLimits _limits;
    private readonly string _part;

    private Workbook(FileBundle files, FileLimits limits, string part)
    {
        Files = files;
        _limits = limits;
        _part = part;
    }

    /// <summary>The files inside.</summary>
    public FileBundle Files { get; }

    /// <summary>The sheets in the order of their tabs.</summary>
    public IReadOnlyList<SheetEntry> Sheets { get; private set; } = [];

    /// <summary>How numbers count days.</summary>
    public DayCount DayCount { get; private set; } = DayCount.Since1900;

    /// <summary>Texts that cells refer to by number.</summary>
    public IReadOnlyList<string> SharedTexts { get; private set; } = [];

    /// <summary>What the formats of cells make of a number.</summary>
    public IReadOnlyList<CellFormat> Formats { get; private set; } = [];

    /// <summary>True when the files are those of an Office Open XML workbook.</summary>
    public static bool IsWorkbook(FileBundle files) =>
        files.Has("[Content_Types].xml") && (files.Has(UsualPart) || files.Names.Any(n => n.StartsWith("xl/", StringComparison.Ordinal)));

    /// <summary>Reads all but the cells.</summary>
    /// <exception cref="ImportProblemException">The workbook holds macros, is binary or is damaged.</exception>
    public static Workbook Open(FileBundle files, FileLimits limits)
    {
        RefuseOtherKinds(files);
        var part = PartRelations.Of(files, "", limits).FirstOrDefault(r => r.Kind == "officeDocument")?.Target ?? UsualPart;
        if (!files.Has(part))
            throw ContainerProblem.Damaged("The workbook", $"Its part {part} is missing.");
        var workbook = new Workbook(files, limits, part);
        var relations = PartRelations.Of(files, part, limits);
        workbook.ReadSheets(relations);
        if (PartOf(files, relations, "sharedStrings") is { } shared)
            workbook.SharedTexts = SharedTextTable.Read(files, shared, limits);
        if (PartOf(files, relations, "styles") is { } styles)
            workbook.Formats = CellFormatTable.Read(files, styles, limits);
        return workbook;
    }

    private static void RefuseOtherKinds(FileBundle files)
    {
        const string mend = "Save it as a workbook without macros (.xlsx) or as CSV, UTF-8.";
        if (files.Names.Any(n => n.EndsWith("vbaProject.bin", StringComparison.OrdinalIgnoreCase)))
            throw ContainerProblem.Of("This workbook holds macros.", "xl/vbaProject.bin", mend);
        if (files.Names.Any(n => n.StartsWith("xl/workbook", StringComparison.Ordinal) && n.EndsWith(".bin", StringComparison.Ordinal)))
            throw ContainerProblem.Of("This is a binary workbook (.xlsb).", "xl/workbook.bin", mend);
    }

    private static string? PartOf(FileBundle files, IReadOnlyList<PartRelation> relations, string kind) =>
        relations.FirstOrDefault(r => r.Kind == kind && files.Has(r.Target))?.Target;

    private void ReadSheets(IReadOnlyList<PartRelation> relations)
    {
        using var xml = UntrustedXml.Open(Files, _part, _limits, _limits.DescriptionBytes);
        var sheets = new List<SheetEntry>();
        while (xml.ReadStart())
        {
            if (xml.Element == "workbookPr" && xml.Attribute("date1904") is "1" or "true")
                DayCount = DayCount.Since1904;
            if (xml.Element != "sheet")
                continue;
            var relation = relations.FirstOrDefault(r => r.Kind == "worksheet" && r.Id == RelationOf(xml) && Files.Has(r.Target));
            sheets.Add(new(xml.Attribute("name") ?? "", relation?.Target, xml.Attribute("state") is null or "visible"));
        }

        Sheets = sheets;
    }

    /// <summary>The reference of a sheet to its part is the attribute "id" in the namespace of relationships; "sheetId" is another.</summary>
    private static string? RelationOf(UntrustedXmlReader xml) => xml.PrefixedAttribute("id");
}
