using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>The first certain year of a taxon in a square.</summary>
/// <param name="Square">The square.</param>
/// <param name="Year">The first year by whose end the taxon was certainly there.</param>
public readonly record struct SquareArrival(Square Square, int Year);

/// <summary>First arrivals as a GeoJSON feature collection: a polygon a square, with the properties square, grid and year.</summary>
public static class ArrivalsGeoJson
{
    /// <summary>Writes the arrivals, in the order given, to a stream, which stays open.</summary>
    public static async Task WriteAsync(
        Stream output, SquareSize size, IEnumerable<SquareArrival> arrivals, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("taxon"u8, caption.Taxon);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("edition"u8, caption.Edition);
        writer.StartFeatures();
        foreach (var (square, year) in arrivals)
        {
            writer.StartFeature(square, square.ToString());
            writer.Json.WriteNumber(PropertyNames.Year, year);
            await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }
}
