using System.Text;
using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The regions that the taxon list may name: the nations of gis-data and those that the user loaded, read when first asked for.</summary>
internal sealed class KnownRegions : IKnownAreas
{
    private readonly Lazy<NamedAreas> _areas;

    public KnownRegions(IReadOnlyList<StoredRegion> loaded) => _areas = new(() => loaded.Aggregate(BaseGeography.Nations, (areas, region) => areas.With(Read(region))));

    public double? KmOutside(string area, Square square) => _areas.Value.KmOutside(area, square);

    public bool? Covers(string area, Square square) => _areas.Value.Covers(area, square);

    private static NamedAreas Read(StoredRegion region) => NamedAreas.Read(new MemoryStream(Encoding.UTF8.GetBytes(region.GeoJson)), RegionStore.NameProperty);
}
