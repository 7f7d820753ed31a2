using System.Runtime.InteropServices;
using RangeMap.Presence;

namespace RangeMap.Store;

/// <summary>Segments ready to be written.</summary>
/// <param name="Cubes">One a taxon.</param>
/// <param name="Visits">Of all taxa.</param>
internal sealed record PackedChange(IReadOnlyList<(int Taxon, PackedSegment Segment)> Cubes, PackedSegment Visits)
{
    /// <summary>Gathers and packs; the lists are sorted in place.</summary>
    public static PackedChange Of(Dictionary<int, List<CubeCell>> cells, List<VisitEntry> visits) => new(
        [.. cells.Where(pair => pair.Value.Count > 0).Select(pair => (pair.Key, PackedSegment.OfCells(CollectionsMarshal.AsSpan(pair.Value))))],
        PackedSegment.OfVisits(CollectionsMarshal.AsSpan(visits)));
}

/// <summary>A packed cube or visit log.</summary>
/// <param name="Entries">Cells or visits in it; 0 for nothing to write.</param>
/// <param name="Data">The packed form.</param>
internal readonly record struct PackedSegment(int Entries, byte[] Data)
{
    public static PackedSegment OfCells(Span<CubeCell> cells)
    {
        var data = CubeCodec.PackSum(cells, out var count);
        return new(count, data);
    }

    public static PackedSegment OfVisits(Span<VisitEntry> visits)
    {
        var data = VisitLog.PackSum(visits, out var count);
        return new(count, data);
    }

    public static PackedSegment Of(TaxonCube cube) => new(cube.Cells.Length, CubeCodec.Pack(cube));

    public static PackedSegment Of(VisitLog log) => new(log.Entries.Length, log.Pack());
}
