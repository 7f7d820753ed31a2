using System.IO.Compression;
using System.Text;

namespace RangeMap.Server.Tests.Commands;

/// <summary>An archive with extensions is kept whole, so that nothing that was sent is lost.</summary>
public sealed class KeptArchiveTests
{
    private const string Meta = """
        <archive xmlns="http://rs.tdwg.org/dwc/text/">
          <core encoding="UTF-8" fieldsTerminatedBy="," linesTerminatedBy="\n" ignoreHeaderLines="1" rowType="http://rs.tdwg.org/dwc/terms/Occurrence">
            <files><location>occurrence.csv</location></files><id index="0"/>
            <field index="1" term="http://rs.tdwg.org/dwc/terms/scientificName"/><field index="2" term="http://rs.tdwg.org/dwc/terms/eventDate"/>
            <field index="3" term="http://rs.tdwg.org/dwc/terms/decimalLatitude"/><field index="4" term="http://rs.tdwg.org/dwc/terms/decimalLongitude"/>
          </core>
          <extension encoding="UTF-8" fieldsTerminatedBy="," linesTerminatedBy="\n" ignoreHeaderLines="1" rowType="http://rs.gbif.org/terms/1.0/Multimedia">
            <files><location>media.csv</location></files><coreid index="0"/><field index="1" term="http://purl.org/dc/terms/identifier"/>
          </extension>
        </archive>
        """;

    private const string Rows = "id,name,date,lat,lon\n1,Inventa prima,2005-06-01,54.9650,-1.6010\n";

    private const string Media = "id,link\n1,https://example.org/invented.jpg\n";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task TheWholeArchiveIsKeptAndTold(bool asFolder)
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var report = (await data.ImportAsync(asFolder ? Folder(data) : Zip(data), "--json")).Json;
        Assert.Equal((1, 1, 1), (report.Int("accepted"), report["kept"]![0]!.Int("rows"), report["kept"]![0]!.Int("used")));
        Assert.Contains("media.csv: 1 row of Multimedia, 1 filled a record, 0 left in the archive.", report["notes"]!.AsArray().Select(note => (string?)note));
        using var kept = ZipFile.OpenRead(Path.Combine(data.Data, report.Text("keptAs")));
        using var media = new StreamReader(kept.GetEntry("media.csv")!.Open());
        Assert.Equal(Media, await media.ReadToEndAsync());
        Assert.Single(Directory.EnumerateFiles(Path.Combine(data.Data, "kept")));
    }

    [Fact]
    public async Task ADryRunKeepsNothing()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        Assert.Null((await data.ImportAsync(Zip(data), "--json", "--dry-run")).Json["keptAs"]);
        Assert.False(Directory.Exists(Path.Combine(data.Data, "kept")));
    }

    private static string Zip(DataDirectory data)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in Files())
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return data.Write("archive.zip", bytes.ToArray());
    }

    private static string Folder(DataDirectory data)
    {
        var folder = Directory.CreateDirectory(data.Beside("archive")).FullName;
        foreach (var (name, text) in Files())
            File.WriteAllText(Path.Combine(folder, name), text);
        return folder;
    }

    private static IEnumerable<(string Name, string Text)> Files() => [("meta.xml", Meta), ("occurrence.csv", Rows), ("media.csv", Media)];
}
