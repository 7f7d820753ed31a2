namespace RangeMap.Grids;

/// <summary>What a data set, or one row of it, states about its grid references.</summary>
/// <param name="ChannelIslandsWgs84">True when WA and WV references are on WGS84; else they are read on ED50.</param>
/// <param name="System">The only grid that references may be on; eastings and northings without letters are read on it. Null when none is stated.</param>
/// <param name="Country">
/// ISO 3166-1 two-letter code of the country, any case, which tells the grid of eastings and northings without letters (GB, IM, IE, GG, JE, NL); empty or null when not stated. It
/// does not bind references that name their own grid.
/// </param>
public readonly record struct GridReferenceOptions(bool ChannelIslandsWgs84 = false, GridId? System = null, string? Country = null);
