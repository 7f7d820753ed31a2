using System.Globalization;
using System.Runtime.CompilerServices;

namespace RangeMap.Server.Tests;

/// <summary>A farm as the source gives it; see SOURCE.md.</summary>
/// <param name="IsCase">True for an infected farm.</param>
/// <param name="X">Easting, km.</param>
/// <param name="Y">Northing, km.</param>
/// <param name="Day">Day of infection; of a control, the last day of any case.</param>
internal sealed record OutbreakFarm(bool IsCase, double X, double Y, int Day)
{
    /// <summary>The square of a size that the farm stands in, counted from the grid's origin: no code of RangeMap has a part in it.</summary>
    public (int East, int North) Cell(int sideKm) => ((int)Math.Floor(X / sideKm), (int)Math.Floor(Y / sideKm));

    /// <summary>All farms.</summary>
    public static IReadOnlyList<OutbreakFarm> ReadAll() => [.. File.ReadLines(FileOf("points.csv")).Skip(1).Select(Parse)];

    /// <summary>The path of a file that the fetching script made; skips the test where it was not run.</summary>
    public static string FileOf(string name)
    {
        var path = Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", "real-data", "fetched", name);
        Assert.SkipUnless(File.Exists(path), "The real data are not here: their licence keeps them out of the repository. Run tests/real-data/fetch.sh.");
        return path;
    }

    private static OutbreakFarm Parse(string row)
    {
        var cells = row.Split(',');
        var numbers = cells[1..].Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray();
        return new(cells[0] == "case", numbers[0], numbers[1], (int)numbers[2]);
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
