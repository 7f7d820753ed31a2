namespace RangeMap.Change;

/// <summary>
/// How much of the circle round the origin is land, as an angle: that of the sector which has the area of all land within reach. It puts the coast in its place in the radius that
/// an area stands for (docs/methods/spread.md, eq. 1).
/// </summary>
internal static class LandAngle
{
    // As far as the species has come, without the few that went farthest.
    private const double Reach = 0.95;
    private const double LeastReachSquares = 3;

    /// <summary>Radians in (0, 2 pi]; the whole circle where neither angle nor land are given, or no land lies within reach.</summary>
    public static double Of(FirstRecords records, SpreadOptions options)
    {
        if (options.OpenAngle is { } given)
            return given;
        if (options.Land is not { } land || records.Origin is not { } origin)
            return 2 * Math.PI;
        var far = records.Distances.Order().ElementAt((int)(Reach * (records.Count - 1)));
        var reach = Math.Max(far, LeastReachSquares * options.SquareSideKm);
        // A square counts whole where its centre is within reach, as a found square counts whole in the area.
        var squares = land.Count(square => origin.To(square.X, square.Y).Km <= reach);
        return squares == 0 ? 2 * Math.PI : Math.Min(2 * Math.PI, 2 * squares * options.SquareSideKm * options.SquareSideKm / (reach * reach));
    }
}
