namespace RangeMap.Records;

/// <summary>What ends a row and encloses a field.</summary>
/// <param name="Quote">The quotation mark, doubled inside a field; null where quotation marks are text like any other.</param>
/// <param name="LineEnd">
/// The one character that ends a row, so that others may stand in a field; null for any of LF, CRLF and CR. A carriage return
/// before a LF that ends a row belongs to the line end.
/// </param>
internal sealed record RowDialect(char? Quote, char? LineEnd)
{
    /// <summary>RFC 4180 with any line end.</summary>
    public static RowDialect Csv { get; } = new('"', null);
}
