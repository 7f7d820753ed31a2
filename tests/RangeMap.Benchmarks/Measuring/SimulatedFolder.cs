using System.Globalization;
using RangeMap.Change;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>Files of the invented world with a number of records, and a data folder made of them; kept between runs in the system's temporary folder.</summary>
/// <param name="Path">Where they are.</param>
/// <param name="Rows">Number of records.</param>
internal sealed record SimulatedFolder(string Path, long Rows)
{
    public string Taxa => File("taxa.csv");

    public string Records => File("records.csv");

    public string Data => File("data");

    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Makes the files unless an earlier run did.</summary>
    public static SimulatedFolder Of(long rows)
    {
        var folder = new SimulatedFolder(
            System.IO.Path.Combine(System.IO.Path.GetTempPath(), "rangemap-benchmarks", rows.ToString(CultureInfo.InvariantCulture)), rows);
        if (System.IO.File.Exists(folder.File("READ-ME.txt")))
            return folder;
        Console.WriteLine($"Inventing {rows} records in {folder.Path} ...");
        WriteSimulation.Run(folder.Path, new SimulatedOptions { Rows = rows });
        return folder;
    }

    /// <summary>The data of the records, imported unless an earlier run did.</summary>
    public async Task<DataSnapshot> OpenAsync()
    {
        if (!DataFolder.Exists(Data))
            await ImportAsync(Data);
        return new CurrentData(DataFolder.Open(Data).Database, TimeProvider.System).Now();
    }

    /// <summary>Imports the records into a fresh folder.</summary>
    public async Task<ImportAnswer> ImportAsync(string data)
    {
        var folder = DataFolder.Open(data);
        LoadTaxonList.Run(folder, Taxa, TimeProvider.System);
        return await ImportFile.RunAsync(folder, new(Records, "invented"), TimeProvider.System);
    }
}
