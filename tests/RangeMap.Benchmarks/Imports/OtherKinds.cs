using System.IO.Compression;
using System.Net;
using nietras.SeparatedValues;

namespace RangeMap.Benchmarks;

/// <summary>Writes a CSV file once more as gzip, as a Darwin Core Archive and as a workbook; kept between runs beside the first.</summary>
internal static class OtherKinds
{
    /// <summary>The kinds with their files.</summary>
    public static IReadOnlyList<(string Kind, string Path)> Of(SimulatedFolder files)
    {
        (string Kind, string Name, Action<string, Stream> Write)[] kinds =
        [
            ("gzip", "records.csv.gz", WriteGzip), ("archive", "records-archive.zip", WriteArchive), ("workbook", "records.xlsx", WriteWorkbook),
        ];
        foreach (var (_, name, write) in kinds)
        {
            if (File.Exists(files.File(name)))
                continue;
            using (var target = File.Create(files.File(name + ".part")))
                write(files.Records, target);
            File.Move(files.File(name + ".part"), files.File(name));
        }

        return [.. kinds.Select(k => (k.Kind, files.File(k.Name)))];
    }

    private static void WriteGzip(string csv, Stream target)
    {
        using var source = File.OpenRead(csv);
        using var gzip = new GZipStream(target, CompressionLevel.Fastest);
        source.CopyTo(gzip);
    }

    private static void WriteArchive(string csv, Stream target)
    {
        using var zip = new ZipArchive(target, ZipArchiveMode.Create);
        string[] header;
        using (var reader = Sep.Reader().FromFile(csv))
            header = [.. reader.Header.ColNames];
        var fields = string.Concat(header.Select((name, i) => $"<field index='{i}' term='http://rs.tdwg.org/dwc/terms/{name}'/>"));
        Write(zip, "meta.xml", w => w.Write($"<archive><core rowType='http://rs.tdwg.org/dwc/terms/Occurrence' ignoreHeaderLines='1'><files><location>occurrence.txt</location></files>{fields}</core></archive>"));
        using var source = File.OpenRead(csv);
        using var entry = zip.CreateEntry("occurrence.txt", CompressionLevel.Fastest).Open();
        source.CopyTo(entry);
    }

    private static void WriteWorkbook(string csv, Stream target)
    {
        using var zip = new ZipArchive(target, ZipArchiveMode.Create);
        Write(zip, "[Content_Types].xml", w => w.Write("<Types/>"));
        Write(zip, "xl/workbook.xml", w => w.Write("<workbook xmlns:r='r'><sheets><sheet name='Records' sheetId='1' r:id='a'/></sheets></workbook>"));
        Write(zip, "xl/_rels/workbook.xml.rels", w => w.Write("<Relationships><Relationship Id='a' Type='x/worksheet' Target='sheet.xml'/><Relationship Id='b' Type='x/sharedStrings' Target='texts.xml'/></Relationships>"));
        var shared = new Dictionary<string, int>();
        Write(zip, "xl/sheet.xml", w => WriteSheet(csv, w, shared));
        Write(zip, "xl/texts.xml", w => w.Write($"<sst>{string.Concat(shared.OrderBy(s => s.Value).Select(s => $"<si><t>{WebUtility.HtmlEncode(s.Key)}</t></si>"))}</sst>"));
    }

    private static void WriteSheet(string csv, StreamWriter sheet, Dictionary<string, int> shared)
    {
        sheet.Write("<worksheet><sheetData>");
        using var reader = Sep.Reader(options => options with { HasHeader = false, Unescape = true }).FromFile(csv);
        foreach (var row in reader)
        {
            sheet.Write($"<row r=\"{row.RowIndex + 1}\">");
            for (var i = 0; i < row.ColCount; i++)
            {
                var cell = row[i].ToString();
                if (cell.Length == 0)
                    continue;
                shared.TryAdd(cell, shared.Count);
                sheet.Write($"<c r=\"{(char)('A' + i)}{row.RowIndex + 1}\" t=\"s\"><v>{shared[cell]}</v></c>");
            }

            sheet.Write("</row>");
        }

        sheet.Write("</sheetData></worksheet>");
    }

    private static void Write(ZipArchive zip, string name, Action<StreamWriter> write)
    {
        using var writer = new StreamWriter(zip.CreateEntry(name, CompressionLevel.Fastest).Open());
        write(writer);
    }
}
