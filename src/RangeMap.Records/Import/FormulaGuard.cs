using System.Buffers;

namespace RangeMap.Records;

/// <summary>
/// Keeps a spreadsheet from running cells as formulas: a cell that begins with = + - @, tab or carriage return gets an
/// apostrophe in front. A cell that already has apostrophes there gets one more, so that taking one off restores every
/// cell. Plain numbers, negative ones included, stay numbers.
/// </summary>
public static class FormulaGuard
{
    private static readonly SearchValues<char> OfNumbers = SearchValues.Create("0123456789.");

    /// <summary>The cell as it is written into a download for spreadsheets.</summary>
    public static string Guard(ReadOnlySpan<char> cell) =>
        BeginsLikeFormula(cell.TrimStart('\'')) && !IsNumber(cell) ? $"'{cell}" : cell.ToString();

    /// <summary>The cell as it was before <see cref="Guard"/>.</summary>
    public static ReadOnlySpan<char> Unguard(ReadOnlySpan<char> cell) =>
        cell.Length > 0 && cell[0] == '\'' && BeginsLikeFormula(cell.TrimStart('\'')) ? cell[1..] : cell;

    private static bool BeginsLikeFormula(ReadOnlySpan<char> text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r';

    private static bool IsNumber(ReadOnlySpan<char> text) =>
        text.Length > 1 && text[0] is '-' or '+' && !text[1..].ContainsAnyExcept(OfNumbers) && text[1..].Count('.') <= 1;
}
