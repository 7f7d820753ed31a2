using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// A point that is exactly the centre of a town, from that many records of the file on: a place found by the town's name rather
/// than on the ground. The records before are not in doubt, for so few may have been there.
/// </summary>
internal sealed class PlaceDefault(TownAt town, int fromRecords)
{
    private readonly Dictionary<string, int> _records = new(StringComparer.Ordinal);

    /// <summary>Counts a record at a point.</summary>
    public Doubts Add(LatLon point)
    {
        if (town(point) is not { } name)
            return Doubts.None;
        ref var count = ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(_records, name, out _);
        return ++count >= fromRecords ? Doubts.PlaceDefault : Doubts.None;
    }
}
