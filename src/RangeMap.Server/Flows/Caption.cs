using RangeMap.Maps;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Captions of maps.</summary>
internal static class Caption
{
    public static MapCaption Of(DataSnapshot data, Taxon taxon) => new(taxon.ScientificName, data.StateName);

    /// <summary>The caption of a map of a part of the land.</summary>
    public static MapCaption Of(DataSnapshot data, PresenceQuestion question) => Of(data, question.Taxon) with { Place = question.PlaceWords() };
}
