namespace RangeMap.Server;

/// <summary>What somebody may do beyond looking at what is public.</summary>
[Flags]
public enum Right
{
    /// <summary>Nothing more.</summary>
    None = 0,

    /// <summary>Send files, take imports back, accept names.</summary>
    Import = 1,

    /// <summary>See records in full, sensitive places included, and decide on them.</summary>
    Review = 2,

    /// <summary>Freeze editions and change the settings of the scheme.</summary>
    Organise = 4,
}

/// <summary>The words for rights.</summary>
public static class RightText
{
    /// <summary>Every right by its word.</summary>
    public static IReadOnlyDictionary<string, Right> All { get; } = new Dictionary<string, Right>(StringComparer.OrdinalIgnoreCase)
    {
        ["import"] = Right.Import,
        ["review"] = Right.Review,
        ["organise"] = Right.Organise,
    };

    /// <summary>The rights of words with spaces between; a word that is not known gives no right.</summary>
    public static Right Parse(string words) =>
        words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Aggregate(Right.None, (rights, word) => rights | All.GetValueOrDefault(word));

    /// <summary>The words of rights.</summary>
    public static IReadOnlyList<string> Words(Right rights) => [.. All.Where(pair => rights.HasFlag(pair.Value)).Select(pair => pair.Key)];
}
