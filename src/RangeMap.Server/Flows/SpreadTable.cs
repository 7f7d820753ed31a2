using System.Globalization;
using nietras.SeparatedValues;
using RangeMap.Change;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Measures spread from a plain table of first records: year,x,y or year,distance.</summary>
public static class SpreadTable
{
    private const double MetresPerKm = 1000;

    /// <summary>Reads the table and measures.</summary>
    /// <param name="table">CSV with a header; other columns are passed over.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <param name="kmPerUnit">Kilometres in one unit of x, y and distance.</param>
    /// <param name="timeUnit">What one step of the column year is.</param>
    /// <param name="size">Side of the squares that the rows stand for.</param>
    /// <exception cref="UserException">The table has not the columns, or a cell is no number.</exception>
    public static SpreadReport Measure(TextReader table, string name, double kmPerUnit, string timeUnit, SquareSize size = SquareSize.Km10)
    {
        var options = new SpreadOptions { TimeUnit = timeUnit, SquareSideKm = (int)size / MetresPerKm };
        try
        {
            using var rows = Sep.Reader(o => o with { Unescape = true, Trim = SepTrim.All, CultureInfo = CultureInfo.InvariantCulture }).From(table);
            return Has(rows, "x") && Has(rows, "y")
                ? Spread.Measure(Points(rows, name, kmPerUnit), options)
                : Spread.MeasureDistances(Distances(rows, name, kmPerUnit), options);
        }
        catch (Exception error) when (error is InvalidDataException or KeyNotFoundException or ArgumentException)
        {
            throw new UserException($"The table cannot be read: {error.Message}", name, "Give a CSV with a header and the columns year,x,y or year,distance.");
        }
    }

    private static List<ArrivalPoint> Points(SepReader rows, string name, double kmPerUnit)
    {
        var points = new List<ArrivalPoint>();
        foreach (var row in rows)
            points.Add(new(Number(row, "x", name) * kmPerUnit, Number(row, "y", name) * kmPerUnit, Number(row, "year", name)));
        return points;
    }

    private static List<ArrivalDistance> Distances(SepReader rows, string name, double kmPerUnit)
    {
        if (!Has(rows, "year") || !Has(rows, "distance"))
            throw new UserException("The table has neither the columns year,x,y nor year,distance.", name, $"Its columns are: {string.Join(", ", rows.Header.ColNames)}.");
        var distances = new List<ArrivalDistance>();
        foreach (var row in rows)
            distances.Add(new(Number(row, "distance", name) * kmPerUnit, Number(row, "year", name)));
        return distances;
    }

    private static double Number(SepReader.Row row, string column, string name)
    {
        var text = row[column].Span;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw new UserException($"'{text}' is no number.", $"{name}, line {row.LineNumberFrom}, column {column}", "Write numbers with a point as decimal sign, and leave rows without a value out.");
    }

    private static bool Has(SepReader rows, string column) => rows.Header.TryIndexOf(column, out _);
}
