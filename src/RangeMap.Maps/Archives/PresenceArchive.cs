using System.Buffers;
using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>One layer of an archive of tiles.</summary>
/// <param name="Layer">Its name in the tiles.</param>
/// <param name="Description">What it shows.</param>
/// <param name="Map">The presence map.</param>
public sealed record ArchiveLayer(string Layer, string Description, PresenceMap Map);

/// <summary>Presence maps as one archive of vector tiles in WebMercatorQuad, a layer a taxon.</summary>
public static class PresenceArchive
{
    /// <summary>Media type of the archive.</summary>
    public const string MediaType = "application/vnd.pmtiles";

    /// <summary>At this level a unit of a tile is some 20 m on the ground in Britain: enough for squares of 10 km, which maps enlarge further.</summary>
    private const int ZoomOfHectads = 8;

    private static readonly TileMatrixSet Set = TileMatrixSet.WebMercatorQuad;

    /// <summary>The finest level that squares of a size need; maps enlarge it for closer looks.</summary>
    public static int MaxZoom(SquareSize size) => size switch
    {
        SquareSize.Km100 or SquareSize.Km10 => ZoomOfHectads,
        SquareSize.Km5 => 9,
        SquareSize.Km2 => 10,
        SquareSize.Km1 => 11,
        _ => 13,
    };

    /// <summary>Writes the archive. Memory holds one map and one tile at a time, however many maps there are.</summary>
    /// <param name="output">The stream, which stays open.</param>
    /// <param name="scratch">Beginning of the names of files that are made for the time being.</param>
    /// <param name="layers">The maps, of one square size, read once, each let go when it is drawn; those without squares are left out.</param>
    /// <param name="source">Where they come from.</param>
    /// <param name="attribution">Whom to credit, plain text.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <returns>How many tiles were written; 0 where no map has squares, and then the stream has no bytes.</returns>
    public static async Task<long> WriteAsync(Stream output, string scratch, IEnumerable<ArchiveLayer> layers, ExportSource source, string attribution, CancellationToken cancel = default)
    {
        using var spill = new LayerSpill(scratch + ".layers");
        var (drawn, box) = Draw(spill, layers, cancel);
        if (box is not { } around)
            return 0;
        var maxZoom = drawn[0].MaxZoom;
        using var archive = new TileArchive(scratch + ".tiles");
        foreach (var (id, bytes) in spill.Tiles())
        {
            cancel.ThrowIfCancellationRequested();
            archive.Add(id, bytes.Span);
        }

        await archive.FinishAsync(output, new(Metadata(drawn, source, attribution, maxZoom), 0, maxZoom, around), cancel).ConfigureAwait(false);
        return archive.Tiles;
    }

    /// <summary>Draws every tile of every map to the spill.</summary>
    private static (List<DrawnLayer> Layers, DegreeBox? Box) Draw(LayerSpill spill, IEnumerable<ArchiveLayer> layers, CancellationToken cancel)
    {
        var (drawn, box) = (new List<DrawnLayer>(), default(DegreeBox?));
        var bytes = new ArrayBufferWriter<byte>(1 << 16);
        foreach (var layer in layers.Where(layer => layer.Map.Squares.Count > 0))
        {
            var maxZoom = MaxZoom(layer.Map.Size);
            var tiles = new PresenceTiles(layer.Map, Set, layer.Layer);
            foreach (var (zoom, tile) in Enumerable.Range(0, maxZoom + 1).SelectMany(zoom => tiles.Drawn(zoom)!.Value.Tiles().Select(tile => (zoom, tile))))
            {
                cancel.ThrowIfCancellationRequested();
                bytes.ResetWrittenCount();
                tiles.Draw(zoom, tile.Column, tile.Row, bytes);
                spill.Add(HilbertOrder.IdOf(zoom, tile.Column, tile.Row), bytes.WrittenSpan);
            }

            drawn.Add(new(layer.Layer, layer.Description, layer.Map.Periods, maxZoom));
            box = layer.Map.Squares.Select(square => DegreeBox.Of(square.Square)).Aggregate(box, (whole, one) => whole?.Union(one) ?? one);
        }

        return (drawn, box);
    }

    private static byte[] Metadata(List<DrawnLayer> layers, ExportSource source, string attribution, int maxZoom)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(bytes);
        json.WriteStartObject();
        json.WriteString("name"u8, layers is [var only] ? only.Description : source.Title);
        json.WriteString("description"u8, source.Citation);
        json.WriteString("attribution"u8, System.Net.WebUtility.HtmlEncode(attribution));
        json.WriteString("type"u8, "overlay"u8);
        json.WriteString("edition"u8, source.Edition);
        json.WriteString("state"u8, source.StateWord);
        json.WriteStartArray("vector_layers"u8);
        foreach (var layer in layers)
        {
            json.WriteStartObject();
            json.WriteString("id"u8, layer.Layer);
            json.WriteString("description"u8, layer.Description);
            json.WriteNumber("minzoom"u8, 0);
            json.WriteNumber("maxzoom"u8, maxZoom);
            json.WriteStartObject("fields"u8);
            foreach (var (name, description) in TileJsonDocument.Fields(layer.Periods))
                json.WriteString(name, description);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>What is told of a layer once its map is let go.</summary>
    private sealed record DrawnLayer(string Layer, string Description, IReadOnlyList<Period> Periods, int MaxZoom);
}
