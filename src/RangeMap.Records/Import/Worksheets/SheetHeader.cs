namespace RangeMap.Records;

/// <summary>The row of a sheet that names its columns.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="RowsBefore">Rows that the sheet holds above it.</param>
/// <param name="Row">Its number, from 1.</param>
/// <param name="Names">The names, without the empty ones at the end.</param>
/// <param name="IsCertain">True when at least two names are known ones.</param>
internal sealed record SheetHeader(SheetEntry Sheet, int RowsBefore, long Row, IReadOnlyList<string> Names, bool IsCertain)
{
    private const int RowsLookedAt = 50;
    private const int NamesThatMakeSure = 2;

    /// <summary>Chooses the sheet and the row: the sheet that was asked for, else the first visible one in which some row names at least two known columns.</summary>
    /// <exception cref="ImportProblemException">There is no such sheet, or none has any cell.</exception>
    public static SheetHeader Choose(Workbook book, ImportOptions options)
    {
        var headers = Candidates(book, options.Sheet).Select(sheet => Find(book, sheet, options)).OfType<SheetHeader>();
        SheetHeader? first = null;
        foreach (var header in headers)
        {
            if (header.IsCertain)
                return header;
            first ??= header;
        }

        return first ?? throw ContainerProblem.Of("No sheet that was looked at has any cell.", $"sheets: {SheetsOf(book)}", "Name the sheet with --sheet, or save it as CSV, UTF-8.");
    }

    /// <summary>The sheets of a workbook, for messages.</summary>
    public static string SheetsOf(Workbook book) => string.Join(", ", book.Sheets.Select(s => s.IsVisible ? s.Name : $"{s.Name} (hidden)"));

    private static IEnumerable<SheetEntry> Candidates(Workbook book, string? asked)
    {
        if (asked is null)
            return book.Sheets.Where(s => s.IsVisible && s.Part is not null);
        var sheet = book.Sheets.FirstOrDefault(s => s.Part is not null && s.Name.Equals(asked.Trim(), StringComparison.OrdinalIgnoreCase));
        return sheet is null
            ? throw ContainerProblem.Of($"The workbook has no sheet \"{asked}\".", $"sheets: {SheetsOf(book)}", "Name one of them with --sheet.")
            : [sheet];
    }

    private static SheetHeader? Find(Workbook book, SheetEntry sheet, ImportOptions options)
    {
        using var cells = new SheetCells(book, sheet, options.Limits);
        SheetHeader? first = null;
        for (var before = 0; before < RowsLookedAt && cells.ReadRow(); before++)
        {
            if (cells.IsBlank)
                continue;
            var names = NamesOf(cells.Cells);
            var certain = names.Count(n => IsKnown(n, options.Mapping)) >= NamesThatMakeSure;
            if (certain || first is null)
                first = new(sheet, before, cells.Row, names, certain);
            if (certain)
                break;
        }

        return first;
    }

    private static List<string> NamesOf(IReadOnlyList<string> cells)
    {
        var names = cells.Select(c => c.Trim()).ToList();
        while (names.Count > 0 && names[^1].Length == 0)
            names.RemoveAt(names.Count - 1);
        return names.Contains(RefusalColumns.Reason, StringComparer.OrdinalIgnoreCase) ? names.ConvertAll(n => FormulaGuard.Unguard(n).ToString()) : names;
    }

    private static bool IsKnown(string name, MappingFile? mapping) =>
        TermNames.FindOfficial(name) is not null || TermNames.FindPlain(name) is not null || mapping?.Columns.Keys.Contains(name, StringComparer.OrdinalIgnoreCase) == true;
}
