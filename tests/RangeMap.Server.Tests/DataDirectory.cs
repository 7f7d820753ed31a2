using System.Text;
using System.Text.Json.Nodes;
using RangeMap.Maps;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests;

/// <summary>A data folder of its own, with the command line to fill and question it; gone when the test is over.</summary>
internal sealed class DataDirectory : IDisposable
{
    /// <summary>A pair that is hard to tell apart, with their aggregate; a plain species with a synonym; a sensitive species in an aggregate. All invented.</summary>
    public const string TaxonList = """
        taxonID,scientificName,vernacularName,taxonRank,acceptedNameUsageID,group,aggregate,generaliseTo
        gemella-agg,Inventa gemella agg.,twin inventas,aggregate,,inventas,,
        prima,Inventa prima,first inventa,species,,inventas,gemella-agg,
        secunda,Inventa secunda,second inventa,species,,inventas,gemella-agg,
        tertia,Inventa tertia,third inventa,species,,inventas,,
        trina,Inventa trina,,species,tertia,,,
        occulta-agg,Inventa occulta agg.,shy inventas,aggregate,,inventas,,
        secreta,Inventa secreta,hidden inventa,species,,inventas,occulta-agg,10km
        aperta,Inventa aperta,open inventa,species,,inventas,occulta-agg,
        """;

    private readonly TemporaryFolder _folder = new();

    /// <summary>The data folder.</summary>
    public string Data => _folder.File("data");

    /// <summary>A data folder with the taxon list loaded.</summary>
    public static async Task<DataDirectory> WithTaxaAsync()
    {
        var made = new DataDirectory();
        Assert.Equal(0, (await made.RunAsync("taxa", made.Write("taxa.csv", TaxonList))).Exit);
        return made;
    }

    /// <summary>Writes a text file beside the data folder and gives its path.</summary>
    public string Write(string name, string text) => _folder.Write(name, text);

    /// <summary>Writes a file beside the data folder and gives its path.</summary>
    public string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(_folder.File(name), bytes);
        return _folder.File(name);
    }

    /// <summary>The path of a file beside the data folder.</summary>
    public string Beside(string name) => _folder.File(name);

    /// <summary>Runs a command on the data folder.</summary>
    public Task<CommandRun> RunAsync(params string[] arguments) => CommandRun.OfAsync([.. arguments, "--data", Data]);

    /// <summary>Imports a file into the data set "test".</summary>
    public Task<CommandRun> ImportAsync(string file, params string[] more) => RunAsync(["import", file, "--dataset", "test", .. more]);

    /// <summary>Imports a table and gives the machine output.</summary>
    public async Task<JsonNode> ImportTableAsync(string table, params string[] more) =>
        (await ImportAsync(Write("records.csv", table), ["--json", .. more])).Json;

    /// <summary>What the maps of every taxon show, for a comparison before and after.</summary>
    public async Task<string> AllMapsAsync()
    {
        var data = new CurrentData(Open().Database, FixedClock.Winter2026).Now();
        using var all = new MemoryStream();
        foreach (var taxon in data.Taxa)
        {
            foreach (var grid in (string[])["10km", "1km"])
            {
                foreach (var quality in (string[])["usable", "all"])
                    await PresenceCsv.WriteAsync(all, AnswerPresence.Answer(data, PresenceQuestion.Of(data, taxon.Id, grid, "../2004,2005/..", quality)));
            }
        }

        return Encoding.UTF8.GetString(all.ToArray());
    }

    /// <summary>The records column of a presence table, by square and period.</summary>
    public async Task<Dictionary<(string Square, string Period), int>> CountsAsync(string taxon, string grid, string periods = "", string quality = "usable")
    {
        var run = await RunAsync("presence", taxon, "--grid", grid, "--periods", periods, "--quality", quality);
        Assert.Equal(0, run.Exit);
        return run.Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(','))
            .ToDictionary(cells => (cells[0], cells[3]), cells => int.Parse(cells[4], System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>Opens the data folder in-process.</summary>
    public DataFolder Open() => DataFolder.Open(Data);

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
