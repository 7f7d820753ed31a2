namespace RangeMap.Server;

/// <summary>What was stated about the columns of a file, as it is kept for the next file of the kind.</summary>
/// <param name="Columns">Term of each header; null for a column that is kept and not used.</param>
/// <param name="Defaults">What a term says where its column is missing or its cell is empty.</param>
internal sealed record MappingFileShape(IReadOnlyDictionary<string, string?> Columns, IReadOnlyDictionary<string, string> Defaults)
{
    /// <summary>Order of days and months; absent where it is not stated.</summary>
    [Words("dmy", "mdy")]
    public string DateOrder { get; init; } = "";
}
