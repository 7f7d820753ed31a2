using System.Text;

namespace RangeMap.Records.Tests;

/// <summary>A sound file in its parts, so that a part can be changed and the whole packed again.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Parts">The files inside; one for text and gzip.</param>
/// <param name="Pack">Makes the file of its parts.</param>
internal sealed record FuzzSeed(string Kind, IReadOnlyList<(string Name, byte[] Content)> Parts, Func<IReadOnlyList<(string Name, byte[] Content)>, byte[]> Pack);

/// <summary>Sound files of every kind that is read.</summary>
internal static class FuzzSeeds
{
    private const string Rows =
        "occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,recordedBy,individualCount,locality\n" +
        "a1,Fictus ruber,1998-06-03,TQ308801,,,A. Nobody,3,\"A wood, by the water\"\n" +
        "a2,Fictus albus,winter 1998/99,,52.657977,1.716038,B. Nobody,,\"The \"\"old\"\" mill\nwith a line end\"\n" +
        "a3,Fictus cf. ruber,25/06/1998,SP10NE,52.6,1.7,C. Nobody,0,Caf\u00e9\n";

    public static IReadOnlyList<FuzzSeed> All { get; } =
    [
        OfText("csv", Encoding.UTF8.GetBytes(Rows)),
        OfText("tsv", Encoding.Unicode.GetBytes('\uFEFF' + Rows.Replace(',', '\t'))),
        new("gz", [("", Encoding.UTF8.GetBytes(Rows))], parts => SomeZip.Gzip(parts[0].Content)),
        new("zip", [("records.csv", Encoding.UTF8.GetBytes(Rows)), ("readme.md", "none"u8.ToArray())], Zip),
        new("xlsx", [.. Workbook().Parts().Select(p => (p.Name, Encoding.UTF8.GetBytes(p.Content)))], Zip),
        new("archive", [.. Archive().Select(p => (p.Name, Encoding.UTF8.GetBytes(p.Content)))], Zip),
    ];

    private static FuzzSeed OfText(string kind, byte[] text) => new(kind, [("", text)], parts => parts[0].Content);

    private static byte[] Zip(IReadOnlyList<(string Name, byte[] Content)> parts) => SomeZip.OfBytes([.. parts]).ToArray();

    private static SomeWorkbook Workbook() => new()
    {
        Sheets =
        [
            ("Notes", "visible", SomeWorkbook.Row(1, "An invented list")),
            ("Records", "visible", SomeWorkbook.Row(2, "species", "date", "gridref", "count") + SomeWorkbook.Row(3, "<c r='A3' t='s'><v>0</v></c>", "<c r='B3' s='1'><v>35949.25</v></c>", "TQ38", "<c r='D3'><v>1E2</v></c>")
                + SomeWorkbook.Row(9, "<c r='A9' t='s'><v>1</v></c>", "25/6/1998", "<c r='C9' t='str'><f>B1</f><v>TQ39</v></c>", "<c r='D9' t='e'><v>#N/A</v></c>")),
        ],
        SharedTexts = "<si><t>Fictus ruber</t></si><si><r><t>Fictus </t></r><r><t>albus_x000A_</t></r></si>",
        Styles = "<numFmts><numFmt numFmtId='170' formatCode='dd/mm/yyyy'/></numFmts><cellXfs><xf numFmtId='0'/><xf numFmtId='170'/></cellXfs>",
    };

    private static (string Name, string Content)[] Archive() =>
    [
        ("meta.xml", SomeArchive.Meta(
            SomeArchive.Core(@"fieldsTerminatedBy='\t' ignoreHeaderLines='1'", "<id index='0'/><field index='1' term='http://rs.tdwg.org/dwc/terms/eventDate'/><field index='2' term='x/gridReference' default='TQ38'/>", SomeArchive.Event, "event.txt"),
            SomeArchive.Extension("", "<coreid index='0'/><field index='1' term='http://rs.tdwg.org/dwc/terms/scientificName'/>", SomeArchive.Occurrence, "occurrence.txt"),
            SomeArchive.Extension("", "<coreid index='0'/><field index='1' term='x/identifier'/>", "x/Multimedia", "media.txt"))),
        ("event.txt", "id\tdate\tplace\ne1\t1998-06-03\tTQ308801\ne2\t3/6/1998\t\n"),
        ("occurrence.txt", "e1,Fictus ruber\ne2,\"Fictus albus\"\ne9,Fictus ruber\n"),
        ("media.txt", "e1,a.jpg\n"),
        ("eml.xml", "<eml packageId='1'><dataset><title>Invented</title><creator><organizationName>Nobody</organizationName></creator></dataset></eml>"),
    ];
}
