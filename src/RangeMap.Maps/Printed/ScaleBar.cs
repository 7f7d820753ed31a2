using System.Globalization;

namespace RangeMap.Maps;

/// <summary>Draws a bar of a round length in kilometres.</summary>
internal static class ScaleBar
{
    private const double MetresPerKm = 1000, LineMm = 0.3, TickMm = 1.2;

    private static readonly int[] RoundKm = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    /// <summary>Draws the bar with its length above.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="frame">The map whose scale is shown.</param>
    /// <param name="at">The lower left end of the bar.</param>
    /// <param name="mostMm">The greatest length on paper.</param>
    /// <param name="style">The paper.</param>
    public static void Draw(IMapPen pen, MapFrame frame, PaperPoint at, double mostMm, SheetStyle style)
    {
        var (km, length) = (Km(frame, mostMm), LengthMm(frame, mostMm));
        pen.StartGroup("scale", new(null, MapInks.Text, LineMm));
        pen.Shape([new([new(at.X, at.Y - TickMm), at, new(at.X + length, at.Y), new(at.X + length, at.Y - TickMm)], false)]);
        pen.EndGroup();
        var text = string.Create(CultureInfo.InvariantCulture, $"{km} km");
        pen.Text(new(at.X + length / 2, at.Y - TickMm * 0.8), text, new(Face.Regular, style.SmallPoints, MapInks.Text, TextAnchor.Middle, MapInks.Paper));
    }

    /// <summary>Length of the bar on paper.</summary>
    public static double LengthMm(MapFrame frame, double mostMm) => Km(frame, mostMm) * MetresPerKm * frame.MmPerMetre;

    /// <summary>The longest round length that fits.</summary>
    private static int Km(MapFrame frame, double mostMm) =>
        RoundKm.LastOrDefault(km => km * MetresPerKm * frame.MmPerMetre <= mostMm, RoundKm[0]);
}
