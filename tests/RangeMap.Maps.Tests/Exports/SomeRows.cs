using RangeMap.Grids;

namespace RangeMap.Maps.Tests.Exports;

/// <summary>Invented rows of the records table, with empty cells, quotes, formulas and letters beyond ASCII.</summary>
internal static class SomeRows
{
    private static readonly string?[] Sites = [null, "Plain", "Comma, \"quote\"", "=SUM(A1)", "Été 🐝", "-5", "line\r\nbreak", "@name", "'+1"];

    public static ExportSource Source { get; } = new(
        "Invented scheme", "7", IsFrozen: false, "2026-11-25T12:00:00Z", "Invented scheme, live state 7.", [new("inv", "Invented set", "CC0 1.0", "https://creativecommons.org/publicdomain/zero/1.0/", 9)], [new("what", "records")]);

    public static IEnumerable<ExportRow> Of(ExportTable table, int count)
    {
        var row = new ExportRow(table.Columns.Count);
        for (var i = 0; i < count; i++)
        {
            row.Square = new(i % 3 == 0 ? GridId.Irish : GridId.British, SquareSize.Km10, 200_000 + i % 20 * 10_000, 200_000 + i / 20 % 20 * 10_000);
            row.Point = NationalGrid.Get(row.Square.Grid).ToLatLon(row.Square.Centre);
            for (var column = 0; column < table.Columns.Count; column++)
                row.Values[column] = Cell(table.Columns[column], i, column);
            yield return row;
        }
    }

    private static ExportValue Cell(ExportColumn column, int row, int at) => column.Kind switch
    {
        ExportKind.Whole => column.Required || row % 2 == 0 ? ExportValue.Of((long?)(row * 1000L - at)) : default,
        ExportKind.Number => column.Required || row % 3 == 0 ? ExportValue.Of((double?)(row / 8.0 - at)) : default,
        ExportKind.Day => ExportValue.Of(new DateOnly(1900, 1, 1).AddDays(row * 37)),
        ExportKind.Truth => ExportValue.Of((row + at) % 2 == 0),
        _ => column.Required ? ExportValue.Of(FormattableString.Invariant($"t{row}-{at}")) : ExportValue.Of(Sites[(row + at) % Sites.Length]),
    };
}
