using System.Globalization;
using System.Text;
using RangeMap.Change;

namespace RangeMap.Server;

/// <summary>Writes the invented world to files: a taxon list, records as recorders would send them, and the truth beside them.</summary>
public static class WriteSimulation
{
    /// <summary>What must be said wherever these data show.</summary>
    public const string Notice = "Invented data: no such species, recorders or records exist.";

    private const int ReportEvery = 10_000;

    /// <summary>Writes the files of a world to a folder, which is made where it is absent.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="options">What the world is like.</param>
    /// <param name="progress">Hears of the rows written so far.</param>
    /// <param name="cancel">Stops the writing.</param>
    public static SimulationFiles Run(string folder, SimulatedOptions options, IProgress<ImportProgress>? progress = null, CancellationToken cancel = default)
    {
        Directory.CreateDirectory(folder);
        var world = new SimulatedWorld(BaseLand.Read(), options);
        var files = new SimulationFiles(Path.Combine(folder, "taxa.csv"), Path.Combine(folder, "records.csv"), Path.Combine(folder, "truth.csv"));
        Write(files.Taxa, writer => InventedTaxonList.Write(writer, world));
        Write(files.Truth, writer => InventedTruth.Write(writer, world));
        Write(files.Records, writer => WriteRecords(writer, world, progress, cancel));
        Write(Path.Combine(folder, "READ-ME.txt"), writer => writer.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{Notice}\nMade by rangemap simulate with seed {options.Seed}; truth.csv tells what is true in this world.")));
        return files;
    }

    private static void WriteRecords(StreamWriter writer, SimulatedWorld world, IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        var rows = new InventedRecordWriter(writer, world);
        long count = 0;
        foreach (var observation in world.Observations())
        {
            rows.Write(observation, ++count);
            if (count % ReportEvery != 0)
                continue;
            cancel.ThrowIfCancellationRequested();
            progress?.Report(new(count, 0, 0, null));
        }
    }

    private static void Write(string path, Action<StreamWriter> write)
    {
        using var writer = new StreamWriter(path, append: false, new UTF8Encoding(false), bufferSize: 1 << 16);
        write(writer);
    }
}

/// <summary>The files of an invented world.</summary>
/// <param name="Taxa">The taxon list.</param>
/// <param name="Records">The records.</param>
/// <param name="Truth">What is true: when each spreading species reached each square.</param>
public sealed record SimulationFiles(string Taxa, string Records, string Truth);
