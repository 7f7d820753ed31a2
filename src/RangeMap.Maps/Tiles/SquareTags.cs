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
    private readonly Dictionary<(ExportKind, string?, double, long), int> _sharedOthers = [];

    /// <summary>Tags with the keys of a presence map.</summary>
    public SquareTags(int periods)
        : this([PropertyNames.Square, PropertyNames.Grid, PropertyNames.First, PropertyNames.Last, PropertyNames.Records, PropertyNames.Period, PropertyNames.Latest,
            .. Enumerable.Range(0, periods).Select(PropertyNames.RecordsIn)])
    {
    }

    /// <summary>Tags with other keys, of which the first is each feature's name.</summary>
    public SquareTags(IReadOnlyList<string> keys)
    {
        Keys = keys;
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

    /// <summary>Adds a feature by its values, one a key; the first is its name, and empty ones are left out.</summary>
    public void Add(IReadOnlyList<ExportColumn> fields, ReadOnlySpan<ExportValue> values)
    {
        var pairs = new List<int>();
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i].HasValue)
                pairs.AddRange([i, SharedOf(fields[i].Kind, values[i])]);
        }

        _names.Add(TextEntry(values[0].Text!));
        _pairs.Add([.. pairs]);
    }

    private int SharedOf(ExportKind kind, ExportValue shared)
    {
        if (kind == ExportKind.Whole)
            return SharedNumber((ulong)shared.Whole);
        if (!_sharedOthers.TryGetValue((kind, shared.Text, shared.Number, shared.Whole), out var at))
        {
            _sharedOthers.Add((kind, shared.Text, shared.Number, shared.Whole), at = _shared.Count);
            _shared.Add(kind switch
            {
                ExportKind.Number => Entry(value => value.FractionField(TileFields.ValueDouble, shared.Number)),
                ExportKind.Truth => Entry(value => value.NumberField(TileFields.ValueTruth, (ulong)shared.Whole)),
                _ => TextEntry(shared.Text!),
            });
        }

        return at;
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
