namespace RangeMap.Change;

/// <summary>
/// A smooth random surface over the plane, values in [0, 1]: random heights at the corners of a lattice, blended by
/// the cubic 3u^2 - 2u^3 between them, in two layers of which the finer has half the weight and a third of the spacing.
/// </summary>
/// <param name="seed">The same seed gives the same surface.</param>
/// <param name="spacingKm">Distance between corners of the coarser layer, km.</param>
internal readonly struct SmoothField(ulong seed, double spacingKm)
{
    public double At(double x, double y) =>
        (2 * Layer(seed, x / spacingKm, y / spacingKm) + Layer(seed + 1, 3 * x / spacingKm, 3 * y / spacingKm)) / 3;

    private static double Layer(ulong seed, double x, double y)
    {
        double west = Math.Floor(x), south = Math.Floor(y);
        double u = Blend(x - west), v = Blend(y - south);
        var lower = Corner(seed, west, south) * (1 - u) + Corner(seed, west + 1, south) * u;
        var upper = Corner(seed, west, south + 1) * (1 - u) + Corner(seed, west + 1, south + 1) * u;
        return lower * (1 - v) + upper * v;
    }

    private static double Blend(double u) => u * u * (3 - 2 * u);

    private static double Corner(ulong seed, double x, double y)
    {
        var chance = new Pcg(seed, ((ulong)(uint)(int)x << 31) ^ (uint)(int)y);
        chance.NextUInt();
        return chance.NextUnit();
    }
}
