using System.Globalization;

namespace RangeMap.Grids.Tests;

/// <summary>A comma-separated table of reference values that is embedded in this project; its quoted last column is never read.</summary>
internal static class PublishedTable
{
    /// <summary>The rows of a table, each by column name.</summary>
    public static IReadOnlyList<PublishedRow> Read(string file)
    {
        using var stream = typeof(PublishedTable).Assembly.GetManifestResourceStream(file) ?? throw new FileNotFoundException(file);
        using var reader = new StreamReader(stream);
        var names = reader.ReadLine()!.Split(',');
        var rows = new List<PublishedRow>();
        while (reader.ReadLine() is { } line)
            rows.Add(new(names, line.Split(',')));
        return rows;
    }
}

/// <summary>One row.</summary>
internal sealed class PublishedRow(string[] names, string[] cells)
{
    public string Name => cells[0];

    public bool Has(string column) => cells[Array.IndexOf(names, column)].Length > 0;

    public double Number(string column) => double.Parse(cells[Array.IndexOf(names, column)], CultureInfo.InvariantCulture);
}
