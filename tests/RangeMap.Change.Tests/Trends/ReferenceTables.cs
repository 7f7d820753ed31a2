using System.Globalization;

namespace RangeMap.Change.Tests.Trends;

/// <summary>The tables that Reference/reference.R wrote, with R 4.2.2: data drawn at random, and what base R makes of them.</summary>
internal static class ReferenceTables
{
    internal static double Expected(string name) => double.Parse(
        Rows("expected.csv").Single(row => row[0] == name)[1], CultureInfo.InvariantCulture);

    internal static IEnumerable<double[]> Numbers(string table) =>
        Rows(table).Select(row => row.Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray());

    private static IEnumerable<string[]> Rows(string table)
    {
        using var stream = typeof(ReferenceTables).Assembly.GetManifestResourceStream(table) ?? throw new FileNotFoundException(table);
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(','))];
    }
}
