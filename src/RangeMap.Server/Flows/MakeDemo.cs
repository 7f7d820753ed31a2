using RangeMap.Change;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Makes the demo: invents a world, imports it, and marks the folder as invented.</summary>
public static class MakeDemo
{
    /// <summary>Title of the demo's data.</summary>
    public const string Title = "Ember-wing and glimmer recording scheme";

    /// <summary>True when the folder holds a finished demo.</summary>
    public static bool IsMade(DataFolder folder) => new Settings(folder.Database).Read(SettingNames.Demo) == "made";

    /// <summary>Makes the demo where it is not made yet; what an interrupted start left is completed.</summary>
    /// <param name="folder">An empty folder, or one of an interrupted demo.</param>
    /// <param name="options">What the world is like.</param>
    /// <param name="clock">Tells the time.</param>
    /// <param name="progress">Hears of rows; first of those invented, then of those imported.</param>
    /// <param name="cancel">Stops the making.</param>
    public static async Task<ImportAnswer> RunAsync(
        DataFolder folder, SimulatedOptions options, TimeProvider clock, IProgress<ImportProgress>? progress = null, CancellationToken cancel = default)
    {
        var settings = new Settings(folder.Database);
        if (settings.Read(SettingNames.Demo) is null && new TaxonStore(folder.Database, clock).ReadTaxa().Count > 0)
            throw new UserException("This data folder holds data that are not the demo's.", folder.Path, "Name another folder with --data, so that invented records do not mix with real ones.");
        settings.Write(SettingNames.Demo, "begun");
        settings.Write(SettingNames.Title, Title);
        settings.Write(SettingNames.Notice, WriteSimulation.Notice);
        var files = WriteSimulation.Run(Path.Combine(folder.Path, "invented"), options, progress, cancel);
        LoadTaxonList.Run(folder, files.Taxa, clock);
        var answer = await ImportFile.RunAsync(folder, new ImportRequest(files.Records, "invented"), clock, progress, cancel);
        ImportAftercare.Run(folder.Database);
        settings.Write(SettingNames.Demo, "made");
        return answer;
    }
}
