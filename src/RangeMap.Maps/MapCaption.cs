namespace RangeMap.Maps;

/// <summary>What a map is of, and the state of the data that it was made from. There is no date of making: the same question to the same edition gives the same bytes.</summary>
/// <param name="Taxon">The taxon's scientific name.</param>
/// <param name="Edition">The identifier of the edition.</param>
/// <param name="Place">Where squares were asked for, by name: region, or a box under the name within. Null for everywhere.</param>
public sealed record MapCaption(string Taxon, string Edition, IReadOnlyList<KeyValuePair<string, string>>? Place = null);
