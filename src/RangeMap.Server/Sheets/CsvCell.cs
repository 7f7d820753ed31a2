using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>One cell of a CSV file (RFC 4180), guarded against being taken for a formula by a spreadsheet.</summary>
internal static class CsvCell
{
    public static string Of(string text)
    {
        var guarded = FormulaGuard.Guard(text);
        return guarded.AsSpan().IndexOfAny(",\"\r\n") < 0 ? guarded : $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
