namespace RangeMap.Change;

/// <summary>Share of the squares whose arrival falls within an interval.</summary>
/// <param name="Interval">The interval; where in it the arrivals lie the data do not say.</param>
/// <param name="Mass">The share, 0 to 1.</param>
public readonly record struct ArrivalMass(CensoredYear Interval, double Mass);

/// <summary>
/// Shares of squares reached by each year, from intervals of arrival alone and without any assumed form: the non-parametric maximum likelihood
/// estimate of Turnbull 1976 (Journal of the Royal Statistical Society B 38:290-295; docs/methods/arrival-years.md, eq. 2 to 4).
/// </summary>
/// <param name="Masses">All innermost intervals in order of time, those without mass too; the masses add up to 1.</param>
/// <param name="LogLikelihood">Logarithm of the likelihood of the observed intervals.</param>
/// <param name="Gap">Upper bound of what the logarithm of the likelihood could still gain; 0 at the exact maximum.</param>
/// <param name="N">Number of observed intervals.</param>
public sealed record ArrivalCurve(IReadOnlyList<ArrivalMass> Masses, double LogLikelihood, double Gap, int N)
{
    private const int MostRounds = 100_000;

    // Of the logarithm of the likelihood, for each observation.
    private const double Settled = 1e-10;

    /// <summary>Estimates the curve.</summary>
    /// <param name="observed">At least one interval, each with its start before its end.</param>
    /// <exception cref="ArgumentException">None was given, or one that is empty or says nothing.</exception>
    public static ArrivalCurve Of(IReadOnlyCollection<CensoredYear> observed)
    {
        if (observed.Count == 0 || observed.Any(year => !year.IsSound))
            throw new ArgumentException("An arrival curve needs at least one interval, each with its start before its end.", nameof(observed));
        // Squares of equal intervals count together: the cost is that of different intervals.
        var grouped = observed.CountBy(year => year).ToArray();
        var innermost = InnermostIntervals.Of(observed);
        var within = InnermostIntervals.Within([.. grouped.Select(group => group.Key)], innermost);
        var weights = Array.ConvertAll(grouped, group => (double)group.Value / observed.Count);
        var mass = new double[innermost.Length];
        Array.Fill(mass, 1.0 / mass.Length);
        double logLikelihood = 0, gap = double.PositiveInfinity;
        for (var round = 0; round < MostRounds && gap > Settled; round++)
            (logLikelihood, gap) = Improve(mass, within, weights);
        return new([.. innermost.Zip(mass, (interval, share) => new ArrivalMass(interval, share))], observed.Count * logLikelihood, observed.Count * gap, observed.Count);
    }

    /// <summary>Least and greatest share of squares that can have been reached by a time: a band, because the curve is undefined within an interval that holds mass.</summary>
    public Interval ReachedBy(double time)
    {
        double surely = 0, perhaps = 0;
        foreach (var (interval, mass) in Masses)
        {
            surely += interval.By <= time ? mass : 0;
            perhaps += interval.After < time ? mass : 0;
        }

        return new(Math.Min(1, surely), Math.Clamp(perhaps, surely, 1));
    }

    /// <summary>
    /// A round of self-consistency: each mass becomes the mean share that the observations ascribe to it. Its factor is the slope of the logarithm of
    /// the likelihood towards that interval; where no factor exceeds 1 the maximum is reached, and the likelihood being concave, the greatest factor
    /// less 1 bounds what is left to gain.
    /// </summary>
    private static (double LogLikelihood, double Gap) Improve(double[] mass, (int From, int To)[] within, double[] weights)
    {
        var sums = new double[mass.Length + 1];
        for (var j = 0; j < mass.Length; j++)
            sums[j + 1] = sums[j] + mass[j];
        // Differences of the factor at the ends of each observation; summed up below.
        var factors = new double[mass.Length + 1];
        var logLikelihood = 0.0;
        for (var i = 0; i < within.Length; i++)
        {
            var (from, to) = within[i];
            var share = sums[to] - sums[from];
            logLikelihood += weights[i] * Math.Log(share);
            factors[from] += weights[i] / share;
            factors[to] -= weights[i] / share;
        }

        double factor = 0, greatest = 0;
        for (var j = 0; j < mass.Length; j++)
        {
            factor += factors[j];
            greatest = Math.Max(greatest, factor);
            mass[j] *= factor;
        }

        return (logLikelihood, Math.Max(0, greatest - 1));
    }
}
