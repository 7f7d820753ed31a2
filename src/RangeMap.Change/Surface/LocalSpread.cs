namespace RangeMap.Change;

/// <summary>Speed and direction of spread at a square, from the gradient of the arrival surface; not measurable where the surface is too flat or too uncertain.</summary>
/// <param name="Square">Index of the square.</param>
/// <param name="KmPerYear">Speed; null where not measurable.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end.</param>
/// <param name="Bearing">Direction, degrees clockwise from grid north; null where not measurable.</param>
public readonly record struct LocalSpread(int Square, double? KmPerYear, double? Low, double? High, double? Bearing)
{
    /// <summary>The speed at every square that was probably reached by a year.</summary>
    public static IReadOnlyList<LocalSpread> Of(ArrivalFit fit, int year) =>
        [.. Enumerable.Range(0, fit.Sites.Count).Where(i => fit.Reached(i, year) >= 0.5).Select(i => At(fit, i))];

    private static LocalSpread At(ArrivalFit fit, int square)
    {
        var (east, north, ee, en, nn) = fit.Surface.GradientAt(new(fit.Sites[square].X, fit.Sites[square].Y));
        var slowness = Math.Sqrt(east * east + north * north);
        if (!(slowness > 0))
            return new(square, null, null, null, null);
        var error = Math.Sqrt(Math.Max(0, east * east * ee + north * north * nn + 2 * east * north * en)) / slowness;
        var reach = 1.96 * error;
        return slowness - reach > 0
            ? new(square, 1 / slowness, 1 / (slowness + reach), 1 / (slowness - reach), (Math.Atan2(east, north) * 180 / Math.PI + 360) % 360)
            : new(square, null, null, null, null);
    }
}
