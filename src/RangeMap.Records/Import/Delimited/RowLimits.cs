namespace RangeMap.Records;

/// <summary>How much one row may hold; beyond it the row is refused, so that no file can exhaust the memory.</summary>
/// <param name="Characters">Characters of a row.</param>
/// <param name="Lines">Line ends inside the quotes of a row.</param>
/// <param name="Fields">Fields of a row.</param>
/// <param name="KeptCharacters">Characters kept of a row that is too long to keep.</param>
internal sealed record RowLimits(int Characters = 1_000_000, int Lines = 1_000, int Fields = 10_000, int KeptCharacters = 1_000)
{
    public static RowLimits Default { get; } = new();
}
