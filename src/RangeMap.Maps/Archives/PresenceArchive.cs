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

    /// <summary>Writes the archive.</summary>
    /// <param name="output">The stream, which stays open.</param>
    /// <param name="scratch">A file that is made for the time being.</param>
    /// <param name="layers">The maps, of one square size; at least one has squares.</param>
    /// <param name="source">Where they come from.</param>
    /// <param name="attribution">Whom to credit, plain text.</param>
    /// <param name="progress">Told the number of tiles looked at, and how many there are.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <returns>How many tiles were written.</returns>
    public static async Task<long> WriteAsync(
        Stream output, string scratch, IReadOnlyList<ArchiveLayer> layers, ExportSource source, string attribution, Action<long, long>? progress = null, CancellationToken cancel = default)
    {
        var drawn = layers.Where(layer => layer.Map.Squares.Count > 0).ToList();
        if (drawn.Count == 0)
            throw new ArgumentException("No map has squares.", nameof(layers));
        var ready = drawn.ConvertAll(layer => new PresenceTiles(layer.Map, Set, layer.Layer));
        var maxZoom = MaxZoom(drawn[0].Map.Size);
        using var archive = new TileArchive(scratch);
        Draw(archive, ready, maxZoom, progress, cancel);
        var box = drawn.SelectMany(layer => layer.Map.Squares).Select(square => DegreeBox.Of(square.Square)).Aggregate((a, b) => a.Union(b));
        await archive.FinishAsync(output, new(Metadata(drawn, source, attribution, maxZoom), 0, maxZoom, box), cancel).ConfigureAwait(false);
        return archive.Tiles;
    }

    private static void Draw(TileArchive archive, List<PresenceTiles> maps, int maxZoom, Action<long, long>? progress, CancellationToken cancel)
    {
        var tiles = Enumerable.Range(0, maxZoom + 1)
            .SelectMany(zoom => maps.SelectMany(map => map.Covering(zoom) is { } range ? range.Tiles() : []).Distinct().Select(tile => (Id: HilbertOrder.IdOf(zoom, tile.Column, tile.Row), Zoom: zoom, tile.Column, tile.Row)))
            .OrderBy(tile => tile.Id).ToList();
        var bytes = new ArrayBufferWriter<byte>(1 << 16);
        for (var i = 0; i < tiles.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            bytes.ResetWrittenCount();
            foreach (var map in maps)
                map.Draw(tiles[i].Zoom, tiles[i].Column, tiles[i].Row, bytes);
            archive.Add(tiles[i].Id, bytes.WrittenSpan);
            progress?.Invoke(i + 1, tiles.Count);
        }
    }

    private static byte[] Metadata(List<ArchiveLayer> layers, ExportSource source, string attribution, int maxZoom)
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
            foreach (var (name, description) in TileJsonDocument.Fields(layer.Map.Periods))
                json.WriteString(name, description);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        return bytes.WrittenSpan.ToArray();
    }
}
