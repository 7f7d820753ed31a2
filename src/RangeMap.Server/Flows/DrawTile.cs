using System.Buffers;
using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Draws vector tiles of presence maps.</summary>
internal static class DrawTile
{
    /// <summary>A tile; empty where the map has no square.</summary>
    /// <exception cref="UserException">There is no such tile.</exception>
    public static ReadyTile Answer(DataSnapshot data, PresenceQuestion question, TileMatrixSet set, int zoom, int row, int column) =>
        set.Contains(zoom, column, row)
            ? data.Answers.GetOrMake(new TileQuestion(question, set.Id, zoom, row, column), () => new ReadyTile(Tiles(data, question, set).Draw(zoom, column, row)))
            : throw new UserException($"{set.Id} has no tile {zoom}/{row}/{column}.", "tile", "Use a level, row and column of the tile matrix set.", StatusCodes.Status404NotFound);

    /// <summary>A tile of several layers, one after the other; a layer without features there is left out.</summary>
    /// <exception cref="UserException">There is no such tile.</exception>
    public static ReadyTile Answer(DataSnapshot data, PresenceQuestion question, IReadOnlyList<string> layers, TileMatrixSet set, int zoom, int row, int column)
    {
        if (LayerNames.ArePresenceOnly(layers) || !set.Contains(zoom, column, row))
            return Answer(data, question, set, zoom, row, column);
        return data.Answers.GetOrMake((new TileQuestion(question, set.Id, zoom, row, column), string.Join(',', layers)), () =>
        {
            var tile = new ArrayBufferWriter<byte>(4096);
            foreach (var layer in layers)
            {
                if (layer == PresenceTiles.LayerName)
                    Tiles(data, question, set).Draw(zoom, column, row, tile);
                else
                    GatherLayers.Of(data, question, layer, set).Draw(zoom, column, row, tile);
            }

            return new ReadyTile(tile.WrittenSpan.ToArray());
        });
    }

    private static PresenceTiles Tiles(DataSnapshot data, PresenceQuestion question, TileMatrixSet set) =>
        data.Answers.GetOrMake((question, set.Id, "tiles"), () => new PresenceTiles(AnswerPresence.Answer(data, question), set));

    private sealed record TileQuestion(PresenceQuestion Question, string Set, int Zoom, int Row, int Column);
}
