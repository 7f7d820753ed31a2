using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>The front of a spreading taxon in a year.</summary>
/// <param name="Year">The year.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Band">Squares through which the line may run, with 95 % confidence at each place.</param>
public sealed record FrontOfYear(int Year, IReadOnlyList<IReadOnlyList<LatLon>> Lines, IReadOnlyList<Square> Band);

/// <summary>
/// Fronts as a GeoJSON feature collection: for each year one MultiLineString with kind "front", and one MultiPolygon with kind "band"; both say the year and whether
/// it is foretold.
/// </summary>
public static class FrontsGeoJson
{
    /// <summary>Writes the fronts, in the order given, to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="size">Side of the squares that the surface was fitted to.</param>
    /// <param name="fronts">The fronts.</param>
    /// <param name="now">Last year with visits; a front after it is foretold.</param>
    /// <param name="caption">Taxon and edition.</param>
    /// <param name="cancel">Stops the writing.</param>
    public static async Task WriteAsync(Stream output, SquareSize size, IEnumerable<FrontOfYear> fronts, int now, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("taxon"u8, caption.Taxon);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("edition"u8, caption.Edition);
        writer.Json.WriteNumber("now"u8, now);
        writer.StartFeatures();
        foreach (var front in fronts)
        {
            var areas = JoinedSquares.Of(front.Band);
            await WriteAsync(writer, front, "band", areas.Count > 0, () => writer.WriteAreas(areas), now, cancel).ConfigureAwait(false);
            await WriteAsync(writer, front, "front", front.Lines.Count > 0, () => writer.WriteLines(front.Lines), now, cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }

    private static async Task WriteAsync(GeoJsonWriter writer, FrontOfYear front, string kind, bool any, Action geometry, int now, CancellationToken cancel)
    {
        if (!any)
            return;
        writer.StartFeature(FormattableString.Invariant($"{kind}-{front.Year}"), geometry);
        writer.Json.WriteString("kind"u8, kind);
        writer.Json.WriteNumber(PropertyNames.Year, front.Year);
        writer.Json.WriteBoolean("foretold"u8, front.Year > now);
        await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
    }
}
