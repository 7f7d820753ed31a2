using System.Globalization;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>One collection of features (OGC API - Features, Part 1): a table of exports, its rows and their time.</summary>
/// <param name="Table">The table: columns become properties, each of which can be filtered by.</param>
/// <param name="Rows">The rows of a question.</param>
/// <param name="First">Column of a row's first day or year.</param>
/// <param name="Last">Column of its last day or year.</param>
internal sealed record OgcCollection(ExportTable Table, Func<DataFolder, ExportQuestion, IEnumerable<ExportRow>> Rows, string First, string Last)
{
    /// <summary>Stands between the parts of a feature's identifier.</summary>
    public const char Between = '~';

    /// <summary>All collections.</summary>
    public static IReadOnlyList<OgcCollection> All { get; } =
    [
        new(ExportTables.Presence, ExportRows.Presence, "firstDay", "lastDay"),
        new(ExportTables.Arrivals, ArrivalRows.Arrivals, "year", "year"),
        new(ExportTables.Fronts, FrontRows.Of, "year", "year"),
        new(ExportTables.Effort, ExportRows.Effort, "year", "year"),
        new(ExportTables.Squares, ArrivalRows.Squares, "firstYear", "lastYear"),
        new(ExportTables.Records, RecordRows.Of, "eventDate", "eventDate"),
    ];

    /// <summary>Its identifier.</summary>
    public string Id => Table.Name;

    /// <summary>The collection of an identifier.</summary>
    /// <exception cref="UserException">There is none.</exception>
    public static OgcCollection Find(string id) => All.FirstOrDefault(collection => collection.Id == id)
        ?? throw new UserException($"There is no collection '{id}'.", "collectionId", "/ogc/collections lists them.", StatusCodes.Status404NotFound);

    /// <summary>The column of a name; -1 where there is none.</summary>
    public int ColumnOf(string name) => Table.Columns.ToList().FindIndex(column => column.Name == name);

    /// <summary>A row's identifier: the cells of its key, which no import changes but where it changes the row.</summary>
    public string IdOf(ExportRow row) => string.Join(Between, Table.Key.Select(name => TextOf(row, ColumnOf(name))));

    /// <summary>A cell as text.</summary>
    public string TextOf(ExportRow row, int column)
    {
        var value = row.Values[column];
        if (!value.HasValue)
            return "";
        return Table.Columns[column].Kind switch
        {
            ExportKind.Whole => value.Whole.ToString(CultureInfo.InvariantCulture),
            ExportKind.Number => value.Number.ToString(CultureInfo.InvariantCulture),
            ExportKind.Day => DateOnly.FromDayNumber((int)value.Whole).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ExportKind.Truth => value.Whole == 0 ? "false" : "true",
            _ => value.Text!,
        };
    }

    /// <summary>The days of a row: days as they stand, years from their first to their last day.</summary>
    public (DateOnly First, DateOnly Last) DaysOf(ExportRow row)
    {
        var (first, last) = (TextOf(row, ColumnOf(First)), TextOf(row, ColumnOf(Last)));
        return (DayOf(first.Split('/')[0], first: true), DayOf(last.Split('/')[^1], first: false));
    }

    private static DateOnly DayOf(string text, bool first) => text.Length == 4
        ? new(int.Parse(text, CultureInfo.InvariantCulture), first ? 1 : 12, first ? 1 : 31)
        : DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
