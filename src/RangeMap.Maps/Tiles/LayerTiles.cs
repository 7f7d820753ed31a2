using System.Buffers;
using System.Text;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// A layer made ready to be drawn as vector tiles of one tile matrix set, by the rules of <see cref="PresenceTiles"/>. Where squares are smaller than a pixel
/// the first in order stands for all of it. Made once, drawn from many threads at once.
/// </summary>
public sealed class LayerTiles
{
    private readonly byte[] _name;
    private readonly TileMatrixSet _set;
    private readonly TileFeature[] _features;
    private readonly EastNorth[][][] _shapes;
    private readonly PlaneBounds[] _boxes;
    private readonly SquareIndex _index;
    private readonly SquareTags _tags;
    private readonly double _largestSide;

    /// <summary>Makes a layer ready.</summary>
    /// <param name="layer">What it is.</param>
    /// <param name="set">The tile matrix set.</param>
    /// <param name="features">Its features; those of most weight first.</param>
    public LayerTiles(TileLayer layer, TileMatrixSet set, IReadOnlyList<TileFeature> features)
    {
        (Layer, _set, _name) = (layer, set, Encoding.UTF8.GetBytes(layer.Name));
        var store = Outlines.On(set);
        _features = [.. features];
        _shapes = Array.ConvertAll(_features, feature => feature.Lines is { } lines ? OnPlane(lines, set) : [store.Of(feature.Square)]);
        _boxes = Array.ConvertAll(_shapes, shape => shape.Select(points => PlaneBounds.Around(points)).Aggregate((a, b) => a.Union(b)));
        _index = new SquareIndex(_boxes);
        _tags = new SquareTags([.. layer.Fields.Select(field => field.Name)]);
        foreach (var feature in _features)
            _tags.Add(layer.Fields, feature.Values);
        _largestSide = _boxes.Where((_, i) => _features[i].Lines is null).Select(box => box.LongerSide()).DefaultIfEmpty(0).Max();
        Box = _features.Length == 0 ? null : _features.Select(BoxOf).Aggregate((a, b) => a.Union(b));
    }

    /// <summary>What the layer is.</summary>
    public TileLayer Layer { get; }

    /// <summary>The smallest box round all features, degrees; null without features.</summary>
    public DegreeBox? Box { get; }

    /// <summary>Draws the layer of a tile to an output; nothing where the tile has no feature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The set has no such tile.</exception>
    public void Draw(int zoom, int column, int row, IBufferWriter<byte> output)
    {
        if (!_set.Contains(zoom, column, row))
            throw new ArgumentOutOfRangeException(nameof(zoom), (zoom, column, row), $"{_set.Id} has no tile of this zoom, column and row.");
        if (_features.Length == 0)
            return;
        var side = _set.TileSide(zoom);
        var frame = new TileFrame(_set.TopLeft.Easting + column * side, _set.TopLeft.Northing - row * side, TileFrame.Extent / side);
        var found = Overlapping(frame.Drawn);
        using var writer = new LayerWriter(_tags, frame);
        if (_largestSide * frame.UnitsPerMetre < PixelThinning.Side && _largestSide > 0)
            DrawPixels(found, frame, writer);
        else
            DrawShapes(found, frame, writer);
        writer.Finish(output, _name);
    }

    /// <summary>The numbers of the features whose boxes meet an area, in order.</summary>
    private List<int> Overlapping(PlaneBounds area)
    {
        var found = new List<int>();
        foreach (var (from, to) in _index.Rows(area))
        {
            for (var i = from; i < to; i++)
            {
                if (area.Overlaps(_boxes[_index.Order[i]]))
                    found.Add(_index.Order[i]);
            }
        }

        found.Sort();
        return found;
    }

    private void DrawShapes(List<int> found, in TileFrame frame, LayerWriter writer)
    {
        var drawn = frame.Drawn;
        foreach (var i in found)
        {
            if (_features[i].Lines is null)
                writer.Add(i, (ulong)_features[i].Square.Code, _shapes[i][0], !drawn.Covers(_boxes[i]));
            else
                writer.AddLines(i, (ulong)i + 1, _shapes[i]);
        }
    }

    private void DrawPixels(List<int> found, in TileFrame frame, LayerWriter writer)
    {
        const int perSide = TileFrame.Extent / PixelThinning.Side;
        var taken = new HashSet<(int, int)>();
        foreach (var i in found)
        {
            var middle = frame.ToTile(_boxes[i].Middle());
            var (x, y) = ((int)Math.Floor(middle.X / PixelThinning.Side), (int)Math.Floor(middle.Y / PixelThinning.Side));
            if (x is >= 0 and < perSide && y is >= 0 and < perSide && taken.Add((x, y)))
                writer.AddBox(i, (ulong)_features[i].Square.Code, x * PixelThinning.Side, y * PixelThinning.Side, PixelThinning.Side);
        }
    }

    private static EastNorth[][] OnPlane(IReadOnlyList<IReadOnlyList<LatLon>> lines, TileMatrixSet set) =>
        [.. lines.Select(line => line.Select(point => set.Plane.FromLatLon(point)).ToArray())];

    private static DegreeBox BoxOf(TileFeature feature)
    {
        if (feature.Lines is not { } lines)
            return DegreeBox.Of(feature.Square);
        var points = lines.SelectMany(line => line).ToList();
        return new(points.Min(point => point.Longitude), points.Min(point => point.Latitude), points.Max(point => point.Longitude), points.Max(point => point.Latitude));
    }
}
