using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Captions of maps.</summary>
internal static class Caption
{
    public static MapCaption Of(DataSnapshot data, Taxon taxon) => new(taxon.ScientificName, data.StateName);
}
