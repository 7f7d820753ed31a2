namespace RangeMap.Grids;

/// <summary>What a data set states about its grid references.</summary>
/// <param name="ChannelIslandsWgs84">True when WA and WV references are on WGS84; else they are read on ED50.</param>
public readonly record struct GridReferenceOptions(bool ChannelIslandsWgs84 = false);
