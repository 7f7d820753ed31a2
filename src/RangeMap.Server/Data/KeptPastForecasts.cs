using System.Globalization;
using System.Text.Json;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>
/// The scores of past forecasts on file, one file a taxon and square size in the data folder: a forecast never stands without them, and a restart need not fit ten models to have them
/// again. They hold for one state of the data and one build of the model, and are made anew for any other.
/// </summary>
public sealed class KeptPastForecasts(string dataFolder)
{
    private readonly string _folder = Path.Combine(dataFolder, "past-forecasts");

    /// <summary>The scores; made and filed where those on file are of another state, or there are none.</summary>
    /// <param name="taxon">Whose forecasts.</param>
    /// <param name="size">Of which squares.</param>
    /// <param name="edition">State of the data.</param>
    /// <param name="make">Makes the scores.</param>
    public IReadOnlyList<HindcastCut> GetOrMake(Taxon taxon, SquareSize size, Store.Edition edition, Func<IReadOnlyList<HindcastCut>> make)
    {
        var file = Path.Combine(_folder, string.Create(CultureInfo.InvariantCulture, $"{taxon.Number}-{size}.json"));
        if (Read(file) is { } kept && kept.State == StateOf(edition))
            return kept.Cuts;
        var made = make();
        Write(file, new(StateOf(edition), made));
        return made;
    }

    private static State StateOf(Store.Edition edition) => new(edition.Number, edition.MadeAt, typeof(Hindcast).Module.ModuleVersionId);

    /// <summary>What is on file; null where nothing is, or nothing that can be read.</summary>
    private static Kept? Read(string file)
    {
        try
        {
            return File.Exists(file) && JsonSerializer.Deserialize<Kept>(File.ReadAllBytes(file), CommandContext.Json) is { State: not null, Cuts: not null } kept ? kept : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or JsonException)
        {
            return null;
        }
    }

    /// <summary>Files them; a folder that cannot be written to costs the next start some seconds and nothing else.</summary>
    private void Write(string file, Kept kept)
    {
        var unfinished = string.Create(CultureInfo.InvariantCulture, $"{file}.{Environment.ProcessId}-{Environment.CurrentManagedThreadId}.part");
        try
        {
            Directory.CreateDirectory(_folder);
            File.WriteAllBytes(unfinished, JsonSerializer.SerializeToUtf8Bytes(kept, CommandContext.Json));
            File.Move(unfinished, file, overwrite: true);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
        }
    }

    private sealed record Kept(State State, IReadOnlyList<HindcastCut> Cuts);

    /// <param name="Edition">Number of the state of the data.</param>
    /// <param name="MadeAt">When that state was committed: numbers begin again in a new folder.</param>
    /// <param name="Model">The build that holds the model.</param>
    private sealed record State(long Edition, string MadeAt, Guid Model);
}
