using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>An answer that cannot be given for want of data: an empty feature collection with the reason in its member refused.</summary>
public static class RefusedGeoJson
{
    /// <summary>Writes it to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, SquareSize size, string refused, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("taxon"u8, caption.Taxon);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("edition"u8, caption.Edition);
        writer.Json.WriteString("refused"u8, refused);
        writer.StartFeatures();
        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }
}
