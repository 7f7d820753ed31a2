using System.Buffers;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Writes the one layer of one tile: features first into memory, then everything in order to the output.</summary>
internal sealed class LayerWriter : IDisposable
{
    private readonly SquareTags _tags;
    private readonly TileFrame _frame;
    private readonly RingPen _pen = new();
    private readonly ProtobufBuffer _features = new(16_384);
    private readonly ProtobufBuffer _values = new(4_096);
    private readonly ProtobufBuffer _featureTags = new(256);
    private readonly ProtobufBuffer _geometry = new(256);

    /// <summary>For each shared value its number in this tile plus one; 0 while it has none.</summary>
    private readonly int[] _numbers;

    private int _valueCount;

    public LayerWriter(SquareTags tags, TileFrame frame)
    {
        (_tags, _frame) = (tags, frame);
        _numbers = ArrayPool<int>.Shared.Rent(tags.SharedCount);
        Array.Clear(_numbers, 0, tags.SharedCount);
    }

    /// <summary>Adds a square; nothing is added when no area of it lies in the tile or its buffer.</summary>
    public void Add(int square, ulong id, ReadOnlySpan<EastNorth> outline, bool needsClip)
    {
        _geometry.Clear();
        if (_pen.TryDraw(outline, needsClip, _frame, _geometry))
            AddFeature(square, id, TileFields.Polygon);
    }

    /// <summary>Adds lines; nothing is added when no part of them lies in the tile or its buffer.</summary>
    public void AddLines(int feature, ulong id, EastNorth[][] lines)
    {
        _geometry.Clear();
        if (LinePen.TryDraw(lines, _frame, _geometry))
            AddFeature(feature, id, TileFields.Line);
    }

    /// <summary>Adds a square as an upright box, given in whole tile units.</summary>
    public void AddBox(int square, ulong id, int left, int top, int side)
    {
        _geometry.Clear();
        _geometry.Varint(TileFields.Command(TileFields.MoveTo, 1));
        _geometry.Zigzag(left);
        _geometry.Zigzag(top);
        _geometry.Varint(TileFields.Command(TileFields.LineTo, 3));
        foreach (var step in (ReadOnlySpan<int>)[side, 0, 0, side, -side, 0])
            _geometry.Zigzag(step);
        _geometry.Varint(TileFields.Command(TileFields.ClosePath, 1));
        AddFeature(square, id, TileFields.Polygon);
    }

    /// <summary>Writes the layer under its name (UTF-8); one without squares is no bytes at all.</summary>
    public void Finish(IBufferWriter<byte> output, ReadOnlySpan<byte> name)
    {
        if (_features.Length == 0)
            return;
        using var head = new ProtobufBuffer(64);
        head.NumberField(TileFields.LayerVersion, TileFields.Version);
        head.BytesField(TileFields.LayerName, name);
        using var tail = new ProtobufBuffer(16);
        tail.NumberField(TileFields.LayerExtent, TileFrame.Extent);
        using var start = new ProtobufBuffer(16);
        start.BytesFieldStart(TileFields.TileLayer, head.Length + _features.Length + _tags.KeyBlock.Length + _values.Length + tail.Length);
        output.Write(start.Written);
        output.Write(head.Written);
        output.Write(_features.Written);
        output.Write(_tags.KeyBlock);
        output.Write(_values.Written);
        output.Write(tail.Written);
    }

    public void Dispose()
    {
        ArrayPool<int>.Shared.Return(_numbers);
        _features.Dispose();
        _values.Dispose();
        _featureTags.Dispose();
        _geometry.Dispose();
    }

    private void AddFeature(int square, ulong id, int type)
    {
        WriteTags(square);
        var length = 1 + VarintLength(id) + 1 + VarintLength((uint)_featureTags.Length) + _featureTags.Length
            + 2 + 1 + VarintLength((uint)_geometry.Length) + _geometry.Length;
        _features.BytesFieldStart(TileFields.LayerFeature, length);
        _features.NumberField(TileFields.FeatureId, id);
        _features.BytesField(TileFields.FeatureTags, _featureTags.Written);
        _features.NumberField(TileFields.FeatureType, (ulong)type);
        _features.BytesField(TileFields.FeatureGeometry, _geometry.Written);
    }

    private void WriteTags(int square)
    {
        _featureTags.Clear();
        _featureTags.Varint(0);
        _featureTags.Varint((uint)_valueCount++);
        _values.Raw(_tags.Name(square));
        var pairs = _tags.Pairs(square);
        for (var i = 0; i < pairs.Length; i += 2)
        {
            ref var number = ref _numbers[pairs[i + 1]];
            if (number == 0)
            {
                _values.Raw(_tags.Shared(pairs[i + 1]));
                number = ++_valueCount;
            }

            _featureTags.Varint((uint)pairs[i]);
            _featureTags.Varint((uint)number - 1);
        }
    }

    private static int VarintLength(ulong value) => (70 - System.Numerics.BitOperations.LeadingZeroCount(value | 1)) / 7;
}
