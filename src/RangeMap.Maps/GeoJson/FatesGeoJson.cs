using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>What became of a square between two periods, as the word that outputs give it.</summary>
/// <param name="Square">The square.</param>
/// <param name="Fate">gained, lost, kept, not-surveyed-before or not-surveyed-after.</param>
public readonly record struct SquareChange(Square Square, string Fate);

/// <summary>Gains and losses as a GeoJSON feature collection: a polygon a square, with the properties square, grid and change.</summary>
public static class FatesGeoJson
{
    /// <summary>Writes the squares, in the order given, to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="size">Side of the squares.</param>
    /// <param name="from">The earlier period.</param>
    /// <param name="to">The later period.</param>
    /// <param name="squares">The squares.</param>
    /// <param name="caption">Taxon and edition.</param>
    /// <param name="cancel">Stops the writing.</param>
    public static async Task WriteAsync(
        Stream output, SquareSize size, string from, string to, IEnumerable<SquareChange> squares, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("taxon"u8, caption.Taxon);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("from"u8, from);
        writer.Json.WriteString("to"u8, to);
        writer.Json.WriteString("edition"u8, caption.Edition);
        writer.StartFeatures();
        foreach (var (square, fate) in squares)
        {
            writer.StartFeature(square, square.ToString());
            writer.Json.WriteString(PropertyNames.Change, fate);
            await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }
}
