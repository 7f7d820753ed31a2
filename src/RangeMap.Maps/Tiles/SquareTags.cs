using System.Text;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>
/// The properties of a map's squares, encoded once: keys and values in their tile form, and for each square the numbers
/// of its keys and values. A tile then only renumbers the values that occur in it.
/// </summary>
internal sealed class SquareTags
{
    private readonly List<byte[]> _names = [];
    private readonly List<int[]> _pairs = [];
    private readonly List<byte[]> _shared = [];
    private readonly Dictionary<ulong, int> _sharedNumbers = [];
    private readonly Dictionary<GridId, int> _sharedGrids = [];

    public SquareTags(int periods)
    {
        Keys = [PropertyNames.Square, PropertyNames.Grid, PropertyNames.First, PropertyNames.Last, PropertyNames.Records, PropertyNames.Period, PropertyNames.Latest,
            .. Enumerable.Range(0, periods).Select(PropertyNames.RecordsIn)];
        using var block = new ProtobufBuffer(256);
        foreach (var key in Keys)
            block.BytesField(TileFields.LayerKey, Encoding.UTF8.GetBytes(key));
        KeyBlock = block.Written.ToArray();
    }

    /// <summary>The keys in the order of their numbers; a square's name comes first.</summary>
    public IReadOnlyList<string> Keys { get; }

    /// <summary>The keys as they stand in a layer.</summary>
    public byte[] KeyBlock { get; }

    /// <summary>Values that squares share; names of squares are not among them.</summary>
    public int SharedCount => _shared.Count;

    /// <summary>A shared value as it stands in a layer.</summary>
    public byte[] Shared(int value) => _shared[value];

    /// <summary>The name of a square, as it stands in a layer.</summary>
    public byte[] Name(int square) => _names[square];

    /// <summary>Key, shared value, key, shared value ... of a square, without its name.</summary>
    public int[] Pairs(int square) => _pairs[square];

    public void Add(PresenceSquare square)
    {
        var summary = SquareSummary.Of(square);
        List<int> pairs =
        [
            1, SharedGrid(square.Square.Grid),
            2, SharedNumber((ulong)square.FirstYear),
            3, SharedNumber((ulong)square.LastYear),
            4, SharedNumber((ulong)summary.Records),
            5, SharedNumber((ulong)summary.FirstPeriod),
            6, SharedNumber((ulong)summary.LatestPeriod),
        ];
        for (var i = 0; i < square.PerPeriod.Count; i++)
        {
            if (square.PerPeriod[i].Records != 0)
                pairs.AddRange([7 + i, SharedNumber((ulong)square.PerPeriod[i].Records)]);
        }

        _names.Add(TextEntry(square.Square.ToString()));
        _pairs.Add([.. pairs]);
    }

    private int SharedGrid(GridId grid)
    {
        if (!_sharedGrids.TryGetValue(grid, out var at))
        {
            _sharedGrids.Add(grid, at = _shared.Count);
            _shared.Add(TextEntry(NationalGrid.Get(grid).Code));
        }

        return at;
    }

    private int SharedNumber(ulong number)
    {
        if (!_sharedNumbers.TryGetValue(number, out var at))
        {
            _sharedNumbers.Add(number, at = _shared.Count);
            _shared.Add(Entry(value => value.NumberField(TileFields.ValueUint, number)));
        }

        return at;
    }

    private static byte[] TextEntry(string text) => Entry(value => value.BytesField(TileFields.ValueString, Encoding.UTF8.GetBytes(text)));

    private static byte[] Entry(Action<ProtobufBuffer> writeValue)
    {
        using var value = new ProtobufBuffer(32);
        using var entry = new ProtobufBuffer(32);
        writeValue(value);
        entry.BytesField(TileFields.LayerValue, value.Written);
        return entry.Written.ToArray();
    }
}
