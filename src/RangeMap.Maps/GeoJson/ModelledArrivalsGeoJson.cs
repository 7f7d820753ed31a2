using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>When a spreading taxon reached a square, by the arrival model.</summary>
/// <param name="Square">The square.</param>
/// <param name="FirstFound">Year of the first find; null where it was not found.</param>
/// <param name="Surface">Year that the smooth surface gives for the place, without the square's own visits.</param>
/// <param name="Median">Year that is as likely too early as too late; null where it lies beyond the years told apart.</param>
/// <param name="Low">Lower end of its 95 % interval; null where open.</param>
/// <param name="High">Upper end; null where open.</param>
/// <param name="There">Chance that the taxon is there by the last year with visits; 1 where it was found.</param>
/// <param name="KmPerYear">Local speed of spread; null where not measurable.</param>
/// <param name="SpeedLow">Lower end of its 95 % interval.</param>
/// <param name="SpeedHigh">Upper end.</param>
/// <param name="Bearing">Direction of spread, degrees clockwise from grid north; null where not measurable.</param>
public sealed record ModelledArrival(
    Square Square, int? FirstFound, double Surface, int? Median, int? Low, int? High, double There, double? KmPerYear, double? SpeedLow, double? SpeedHigh, double? Bearing);

/// <summary>Arrivals by the arrival model as a GeoJSON feature collection: a polygon a square.</summary>
public static class ModelledArrivalsGeoJson
{
    /// <summary>Writes the squares, in the order given, to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, SquareSize size, IEnumerable<ModelledArrival> arrivals, MapCaption caption, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("taxon"u8, caption.Taxon);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("edition"u8, caption.Edition);
        writer.StartFeatures();
        foreach (var arrival in arrivals)
        {
            writer.StartFeature(arrival.Square, arrival.Square.ToString());
            writer.WriteNumber("year", arrival.FirstFound, 0);
            writer.WriteNumber("surface", arrival.Surface, 2);
            writer.WriteNumber("reached", arrival.Median, 0);
            writer.WriteNumber("reachedLow", arrival.Low, 0);
            writer.WriteNumber("reachedHigh", arrival.High, 0);
            writer.WriteNumber("there", arrival.There, 3);
            writer.WriteNumber("kmPerYear", arrival.KmPerYear, 2);
            writer.WriteNumber("kmPerYearLow", arrival.SpeedLow, 2);
            writer.WriteNumber("kmPerYearHigh", arrival.SpeedHigh, 2);
            writer.WriteNumber("bearing", arrival.Bearing, 0);
            await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }
}
