using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Effort in one square and period.</summary>
/// <param name="Visits">Visits.</param>
/// <param name="Recorders">Different recorders that are named.</param>
/// <param name="Taxa">Taxa found.</param>
/// <param name="Coverage">Sample coverage of the lists, 0 to 1.</param>
/// <param name="WellSurveyed">True where visits and coverage reach their thresholds.</param>
public readonly record struct EffortCount(int Visits, int Recorders, int Taxa, double Coverage, bool WellSurveyed);

/// <summary>Effort in a square in two periods, and how alike what was found is.</summary>
/// <param name="Square">The square.</param>
/// <param name="Before">Effort in the earlier period.</param>
/// <param name="After">Effort in the later period.</param>
/// <param name="Gained">Taxa found in the later period only.</param>
/// <param name="Lost">Taxa found in the earlier period only.</param>
/// <param name="Similarity">Sorensen's similarity, 0 to 1; null unless the square is well surveyed in both.</param>
/// <param name="Turnover">The part of the difference that comes of taxa in place of others; null likewise.</param>
public sealed record SquareRecording(Square Square, EffortCount Before, EffortCount After, int Gained, int Lost, double? Similarity, double? Turnover);

/// <summary>Recording effort as a GeoJSON feature collection: a polygon a square, with the effort of two periods.</summary>
public static class EffortGeoJson
{
    private const int Decimals = 3;

    /// <summary>Writes the squares, in the order given, to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="size">Side of the squares.</param>
    /// <param name="from">The earlier period.</param>
    /// <param name="to">The later period.</param>
    /// <param name="squares">The squares.</param>
    /// <param name="group">The group whose recording it is; null for taxa without one.</param>
    /// <param name="edition">The edition of the data.</param>
    /// <param name="cancel">Stops the writing.</param>
    public static async Task WriteAsync(
        Stream output, SquareSize size, string from, string to, IEnumerable<SquareRecording> squares, string? group, string edition, CancellationToken cancel = default)
    {
        var writer = new GeoJsonWriter(output);
        await using var _ = writer.ConfigureAwait(false);
        writer.StartCollection();
        writer.Json.WriteString("group"u8, group);
        writer.Json.WriteString("grid"u8, size.ToText());
        writer.Json.WriteString("from"u8, from);
        writer.Json.WriteString("to"u8, to);
        writer.Json.WriteString("edition"u8, edition);
        writer.StartFeatures();
        foreach (var square in squares)
        {
            writer.StartFeature(square.Square, square.Square.ToString());
            Write(writer, "Before", square.Before);
            Write(writer, "After", square.After);
            writer.Json.WriteNumber("gained"u8, square.Gained);
            writer.Json.WriteNumber("lost"u8, square.Lost);
            writer.WriteNumber("similarity", square.Similarity, Decimals);
            writer.WriteNumber("turnover", square.Turnover, Decimals);
            await writer.EndFeatureAsync(cancel).ConfigureAwait(false);
        }

        await writer.EndCollectionAsync(cancel).ConfigureAwait(false);
    }

    private static void Write(GeoJsonWriter writer, string when, EffortCount effort)
    {
        writer.Json.WriteNumber($"visits{when}", effort.Visits);
        writer.Json.WriteNumber($"recorders{when}", effort.Recorders);
        writer.Json.WriteNumber($"taxa{when}", effort.Taxa);
        writer.Json.WriteNumber($"coverage{when}", Math.Round(effort.Coverage, Decimals));
        writer.Json.WriteBoolean($"wellSurveyed{when}", effort.WellSurveyed);
    }
}
