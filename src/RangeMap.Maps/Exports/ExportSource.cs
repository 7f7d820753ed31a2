namespace RangeMap.Maps;

/// <summary>Where the rows of an export came from; carried into every file. There is no date of making: the same question to the same edition gives the same bytes.</summary>
/// <param name="Title">Title of the data.</param>
/// <param name="Edition">The frozen edition's identifier, or the number of the live state.</param>
/// <param name="IsFrozen">True for a frozen edition, which answers for good; false for a live state, which the next import replaces.</param>
/// <param name="Published">When the state was made, ISO 8601 in UTC; empty for a folder without data.</param>
/// <param name="Citation">How to cite it, a sentence.</param>
/// <param name="Licences">Licences of the data sets, each with the number of its records.</param>
/// <param name="Question">What was asked, by name.</param>
public sealed record ExportSource(
    string Title, string Edition, bool IsFrozen, string Published, string Citation, IReadOnlyList<LicenceShare> Licences, IReadOnlyList<KeyValuePair<string, string>> Question)
{
    /// <summary>The kind of state in a word: edition or live.</summary>
    public string StateWord => IsFrozen ? "edition" : "live";
}

/// <summary>A data set's licence.</summary>
/// <param name="Dataset">The data set.</param>
/// <param name="Title">Its title as it was sent; null where none was.</param>
/// <param name="Licence">Its licence as it was sent; null where none was stated, which permits nothing.</param>
/// <param name="Url">Address of the licence.</param>
/// <param name="Records">Its records.</param>
public sealed record LicenceShare(string Dataset, string? Title, string? Licence, string? Url, long Records);
