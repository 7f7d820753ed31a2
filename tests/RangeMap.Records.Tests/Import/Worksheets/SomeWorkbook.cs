namespace RangeMap.Records.Tests;

/// <summary>Writes the XML of a workbook by hand, so that every oddity can be made.</summary>
internal sealed record SomeWorkbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>The rows of each sheet as XML.</summary>
    public IReadOnlyList<(string Name, string State, string Rows)> Sheets { get; init; } = [];

    /// <summary>The children of sst.</summary>
    public string SharedTexts { get; init; } = "";

    /// <summary>The children of styleSheet.</summary>
    public string Styles { get; init; } = "";

    public bool Has1904 { get; init; }

    public static SomeWorkbook Of(string rows) => new() { Sheets = [("Records", "visible", rows)] };

    public IReadOnlyList<(string Name, string Content)> Parts() =>
    [
        ("[Content_Types].xml", "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'/>"),
        ("_rels/.rels", RelationsOf([("r1", "officeDocument", "xl/workbook.xml")])),
        ("xl/workbook.xml", $"<workbook xmlns='{Main}' xmlns:r='{Relations}'><workbookPr date1904='{(Has1904 ? 1 : 0)}'/><sheets>"
            + string.Concat(Sheets.Select((s, i) => $"<sheet name='{s.Name}' sheetId='{i + 1}' state='{s.State}' r:id='s{i + 1}'/>")) + "</sheets></workbook>"),
        ("xl/_rels/workbook.xml.rels", RelationsOf([.. Sheets.Select((_, i) => ($"s{i + 1}", "worksheet", $"worksheets/sheet{i + 1}.xml")), ("t", "sharedStrings", "sharedStrings.xml"), ("f", "styles", "/xl/styles.xml")])),
        ("xl/sharedStrings.xml", $"<sst xmlns='{Main}'>{SharedTexts}</sst>"),
        ("xl/styles.xml", $"<styleSheet xmlns='{Main}'>{Styles}</styleSheet>"),
        .. Sheets.Select((s, i) => ($"xl/worksheets/sheet{i + 1}.xml", $"<worksheet xmlns='{Main}'><sheetData>{s.Rows}</sheetData></worksheet>")),
    ];

    public MemoryStream ToStream() => SomeZip.Of([.. Parts()]);

    /// <summary>A row of cells that hold their own text; a cell that begins with a less-than sign is XML already.</summary>
    public static string Row(int number, params string[] cells) =>
        $"<row r='{number}'>" + string.Concat(cells.Select(c => c.StartsWith('<') ? c : $"<c t='inlineStr'><is><t xml:space='preserve'>{c}</t></is></c>")) + "</row>";

    private static string RelationsOf((string Id, string Kind, string Target)[] relations) =>
        "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>"
        + string.Concat(relations.Select(r => $"<Relationship Id='{r.Id}' Type='{Relations}/{r.Kind}' Target='{r.Target}'/>")) + "</Relationships>";
}
