using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>The chance that a taxon is in a square where it was never found.</summary>
/// <param name="Square">The square.</param>
/// <param name="Now">Chance that it is there already.</param>
/// <param name="ByYear">Chance that it is there by the end of the year that is foretold.</param>
/// <param name="Search">Place in the list of squares to search, from 1; null where not in it.</param>
public readonly record struct ForetoldSquare(Square Square, double Now, double ByYear, int? Search);

/// <summary>A forecast as a GeoJSON feature collection: a polygon for each square where the taxon was never found and may be by the year.</summary>
public static class ForecastGeoJson
{
    /// <summary>Squares of a lesser chance are left out.</summary>
    public const double LeastChance = 0.01;

    /// <summary>Writes the squares, in the order given, to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, SquareSize size, int now, int year, IEnumerable<ForetoldSquare> squares, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("taxon"u8, caption.Taxon);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("edition"u8, caption.Edition);
        writer.Json.WriteNumber("now"u8, now);
        writer.Json.WriteNumber("year"u8, year);
        writer.StartFeatures();
        foreach (var square in squares)
        {
            if (square.ByYear < LeastChance)
                continue;
            writer.StartFeature(square.Square, square.Square.ToString());
            writer.WriteNumber("now", square.Now, 3);
            writer.WriteNumber("byYear", square.ByYear, 3);
            writer.WriteNumber("search", square.Search, 0);
            await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }
}
