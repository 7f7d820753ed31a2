namespace RangeMap.Records;

/// <summary>One cell of a CSV file after RFC 4180.</summary>
public static class CsvCell
{
    /// <summary>The cell, in quotation marks where it needs them.</summary>
    public static string Of(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    /// <summary>The cell for a file that people open in a spreadsheet, which must not take it for a formula; see <see cref="FormulaGuard"/>.</summary>
    public static string Guarded(string text) => Of(FormulaGuard.Guard(text));
}
