using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>
/// A presence map as a GeoJSON feature collection: a polygon a square, its id the grid reference, properties as in
/// <see cref="PropertyNames"/>. Beside the features stand what was asked and what was left out.
/// </summary>
public static class PresenceGeoJson
{
    /// <summary>Content type of the document.</summary>
    public const string MediaType = GeoJsonWriter.MediaType;

    /// <summary>Writes the map to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, PresenceMap map, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        WriteQuestion(writer.Json, map, caption);
        writer.StartFeatures();
        var periods = Enumerable.Range(0, map.Periods.Count);
        var records = periods.Select(period => JsonEncodedText.Encode(PropertyNames.RecordsIn(period))).ToArray();
        var visits = periods.Select(period => JsonEncodedText.Encode(PropertyNames.VisitsIn(period))).ToArray();
        foreach (var square in map.Squares)
        {
            writer.StartFeature(square.Square, square.Square.ToString());
            WriteSummary(writer.Json, square);
            for (var i = 0; i < records.Length; i++)
                WriteIfAny(writer.Json, records[i], square.PerPeriod[i].Records);
            for (var i = 0; i < visits.Length; i++)
                WriteIfAny(writer.Json, visits[i], square.PerPeriod[i].Visits);
            await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }

    private static void WriteQuestion(Utf8JsonWriter json, PresenceMap map, MapCaption caption)
    {
        json.WriteString("taxon"u8, caption.Taxon);
        json.WriteString("grid"u8, map.Size.ToText());
        json.WriteString("quality"u8, QualityText.Of(map.Quality));
        json.WriteStartArray("periods"u8);
        foreach (var period in map.Periods)
            json.WriteStringValue(period.Text);
        json.WriteEndArray();
        foreach (var (name, value) in caption.Place ?? [])
            json.WriteString(name, value);
        json.WriteStartObject("omitted"u8);
        json.WriteNumber("tooCoarse"u8, map.Omitted.TooCoarse);
        json.WriteNumber("betweenPeriods"u8, map.Omitted.BetweenPeriods);
        json.WriteNumber("belowQuality"u8, map.Omitted.BelowQuality);
        json.WriteEndObject();
        json.WriteString("edition"u8, caption.Edition);
    }

    private static void WriteSummary(Utf8JsonWriter json, PresenceSquare square)
    {
        var summary = SquareSummary.Of(square);
        json.WriteNumber(PropertyNames.First, square.FirstYear);
        json.WriteNumber(PropertyNames.Last, square.LastYear);
        json.WriteNumber(PropertyNames.Records, summary.Records);
        json.WriteNumber(PropertyNames.Period, summary.FirstPeriod);
        json.WriteNumber(PropertyNames.Latest, summary.LatestPeriod);
    }

    private static void WriteIfAny(Utf8JsonWriter json, JsonEncodedText name, int count)
    {
        if (count != 0)
            json.WriteNumber(name, count);
    }
}
