namespace RangeMap.Change;

/// <summary>
/// Spread by growth and random movement: the theory behind a front of steady speed, for judging simulators and estimators
/// (Fisher 1937, Annals of Eugenics 7:355-369; Skellam 1951, Biometrika 38:196-218; volumes and pages from memory, not verified).
/// </summary>
/// <param name="Growth">r, increase of a sparse population a year, per head; above 0.</param>
/// <param name="Diffusion">D, km² a year: over a plane, the mean squared displacement in a year divided by 4; above 0.</param>
public sealed record ReactionDiffusion(double Growth, double Diffusion)
{
    // Beyond the front the population falls by a factor e in sqrt(D / r): this many of those lengths ahead of it there is nothing left to hold up.
    private const double LengthsAhead = 20;

    /// <summary>Speed that the front approaches in the end, 2 sqrt(r D), km a year.</summary>
    public double LimitSpeed => 2 * Math.Sqrt(Growth * Diffusion);

    /// <summary>
    /// Speed of a front of logistic growth along a line, from a start of limited size: 2 sqrt(r D) - (3 / 2) sqrt(D / r) / t, km a year. So a front is always
    /// slower than the limit. An expansion for late times, not valid in the first few 1 / r.
    /// </summary>
    /// <param name="years">t, years since the start; above 0.</param>
    public double SpeedAfter(double years) => LimitSpeed - 1.5 * Math.Sqrt(Diffusion / Growth) / years;

    /// <summary>
    /// Radius, km, within which a population that grows without limit and spreads over a plane from one point is dense enough to be seen:
    /// R² = 4 D t (r t + ln(N / (4 pi D t c))). Null where it is that dense nowhere.
    /// </summary>
    /// <param name="individuals">N, individuals at the point at the start; above 0.</param>
    /// <param name="density">c, individuals a km² from which on the species is seen; above 0.</param>
    /// <param name="years">t, years since the start; above 0.</param>
    public double? RadiusAfter(double individuals, double density, double years)
    {
        var spread = 4 * Diffusion * years;
        var square = spread * (Growth * years + Math.Log(individuals / (Math.PI * spread * density)));
        return square >= 0 ? Math.Sqrt(square) : null;
    }

    /// <summary>
    /// Simulates logistic growth along a line from a reflecting end, du/dt = D d²u/dx² + r u (1 - u), by explicit finite differences, and gives the farthest place
    /// where the land is half full (u = 1/2), km from the end, at the end of each year from 0 on.
    /// </summary>
    /// <param name="years">Number of years; at least 1.</param>
    /// <param name="settledKm">Length of land, from the end on, that is full at the start; at least one cell.</param>
    /// <param name="cellKm">Length of a cell, km; the first one lies at the end.</param>
    /// <param name="stepsPerYear">Steps of time a year.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value lies outside its range, or the steps are too long for the cells: D step / cell² must not exceed 1/2, above which the differences do not settle.
    /// </exception>
    public IReadOnlyList<double> FrontByYear(int years, double settledKm = 5, double cellKm = 0.5, int stepsPerYear = 200)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(years, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(settledKm, cellKm);
        var exchange = Diffusion / stepsPerYear / (cellKm * cellKm);
        if (!(exchange is > 0 and <= 0.5))
            throw new ArgumentOutOfRangeException(nameof(stepsPerYear), stepsPerYear, "Steps are too long for cells of this length.");
        var reach = settledKm + LimitSpeed * years + LengthsAhead * Math.Sqrt(Diffusion / Growth);
        var (now, next) = (new double[(int)Math.Ceiling(reach / cellKm)], new double[(int)Math.Ceiling(reach / cellKm)]);
        now.AsSpan(0, (int)(settledKm / cellKm)).Fill(1);
        var fronts = new List<double> { FrontOf(now, cellKm) };
        for (var year = 1; year <= years; year++)
        {
            for (var step = 0; step < stepsPerYear; step++)
            {
                Step(now, next, exchange, Growth / stepsPerYear);
                (now, next) = (next, now);
            }

            fronts.Add(FrontOf(now, cellKm));
        }

        return fronts;
    }

    private static void Step(double[] now, double[] next, double exchange, double growth)
    {
        for (var i = 0; i < now.Length; i++)
        {
            // What would leave at an end comes back.
            var (before, after) = (now[Math.Max(0, i - 1)], now[Math.Min(now.Length - 1, i + 1)]);
            next[i] = now[i] + exchange * (before - 2 * now[i] + after) + growth * now[i] * (1 - now[i]);
        }
    }

    /// <summary>Between the last cell that is half full and the next, by proportion; 0 where none is.</summary>
    private static double FrontOf(double[] full, double cellKm)
    {
        var last = Array.FindLastIndex(full, u => u >= 0.5);
        return last < 0 ? 0 : last == full.Length - 1 ? last * cellKm : (last + (full[last] - 0.5) / (full[last] - full[last + 1])) * cellKm;
    }
}
