using System.Globalization;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO.VectorTiles.Mapbox;
using WholeTile = NetTopologySuite.IO.VectorTiles.Tiles.Tile;

namespace RangeMap.Maps.Tests;

/// <summary>One square as an independent reader finds it in a tile; coordinates in units of the tile, y down.</summary>
internal sealed record ReadSquare(ulong Id, string Name, Polygon Polygon, IReadOnlyDictionary<string, object> Properties);

/// <summary>Reads tiles with NetTopologySuite's vector tile reader.</summary>
internal static class TileReading
{
    // Any tile in the middle of the world will do: at the rim of the world the reader cuts the buffer off.
    private const int Zoom = 4;
    private const int Middle = 8;
    private const double World = 4096 << Zoom;

    public static IReadOnlyList<ReadSquare> Read(byte[] tile)
    {
        if (tile.Length == 0)
            return [];
        using var stream = new MemoryStream(tile);
        var read = new MapboxTileReader().Read(stream, new WholeTile(Middle, Middle, Zoom), "the id");
        var layer = Assert.Single(read.Layers);
        Assert.Equal("presence", layer.Name);
        return [.. layer.Features.Select(feature =>
        {
            var properties = feature.Attributes.GetNames().ToDictionary(name => name, name => feature.Attributes[name]);
            return new ReadSquare(Convert.ToUInt64(properties["the id"], CultureInfo.InvariantCulture), (string)properties["square"], InUnits((Polygon)feature.Geometry), properties);
        })];
    }

    /// <summary>The reader gives degrees, as if the tile lay in Web Mercator; this undoes that.</summary>
    private static Polygon InUnits(Polygon polygon)
    {
        var copy = (Polygon)polygon.Copy();
        copy.Apply(new Undo());
        return copy;
    }

    private sealed class Undo : ICoordinateSequenceFilter
    {
        public bool Done => false;

        public bool GeometryChanged => true;

        public void Filter(CoordinateSequence seq, int i)
        {
            var latitude = seq.GetY(i) * Math.PI / 180;
            seq.SetX(i, Math.Round((seq.GetX(i) + 180) / 360 * World) - Middle * 4096);
            seq.SetY(i, Math.Round((1 - Math.Asinh(Math.Tan(latitude)) / Math.PI) / 2 * World) - Middle * 4096);
        }
    }
}
