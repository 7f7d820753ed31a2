namespace RangeMap.Change;

/// <summary>Where a spreading species will be by a year (docs/methods/forecast.md).</summary>
/// <param name="Now">Last year with visits.</param>
/// <param name="Year">The year that is foretold.</param>
/// <param name="Expected">Expected number of squares, without a find so far, in which the species will be by the end of the year.</param>
/// <param name="Low">Lower end of the 95 % interval of that number.</param>
/// <param name="High">Upper end.</param>
/// <param name="Squares">Chances of every square without a find, in the order of the squares.</param>
public sealed record Forecast(int Now, int Year, double Expected, double Low, double High, IReadOnlyList<ForecastSquare> Squares)
{
    /// <summary>Foretells a year.</summary>
    /// <param name="fit">The model.</param>
    /// <param name="year">The year, at most 20 after the last visit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year lies before the last visit or too far after it.</exception>
    public static Forecast Of(ArrivalFit fit, int year)
    {
        var now = fit.LastVisit;
        ArgumentOutOfRangeException.ThrowIfLessThan(year, now);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, now + MostYearsAhead);
        var open = Enumerable.Range(0, fit.Sites.Count).Where(i => fit.Sites[i].FirstFound is null).ToArray();
        var squares = open.Select(i => new ForecastSquare(i, fit.Reached(i, now), fit.Reached(i, year))).ToArray();
        var (low, high) = Bounds(fit, open, year);
        var expected = squares.Sum(square => square.ByYear);
        return new(now, year, expected, Math.Min(low, expected), Math.Max(high, expected), squares);
    }

    /// <summary>The most years ahead that a forecast is made for.</summary>
    public const int MostYearsAhead = 20;

    /// <summary>Interval of the number: draws of the surface with the detection, and for each a draw of every square.</summary>
    private static (double Low, double High) Bounds(ArrivalFit fit, int[] open, int year)
    {
        var draws = SurfaceDraws.Of(fit, open);
        var numbers = new double[draws.Length];
        Parallel.For(0, draws.Length, draw =>
        {
            var chance = new Pcg(fit.Options.Seed, 100_000 + (ulong)draw);
            var (prior, likelihood) = (new double[fit.Years.Count], new double[fit.Years.Count]);
            var (means, detection) = draws[draw];
            for (var k = 0; k < open.Length; k++)
            {
                ArrivalPosterior.Likelihood(fit.Sites[open[k]].Visits, fit.Years, detection, fit.Options.StrayRate, likelihood);
                fit.Years.Prior(means[k], fit.ScatterYears, prior);
                numbers[draw] += chance.NextChance(ReachedBy(prior, likelihood, year - fit.Years.First, fit.UnsuitedShare)) ? 1 : 0;
            }
        });
        Array.Sort(numbers);
        return (numbers[(int)(0.025 * (numbers.Length - 1))], numbers[(int)Math.Ceiling(0.975 * (numbers.Length - 1))]);
    }

    private static double ReachedBy(double[] prior, double[] likelihood, int step, double unsuited)
    {
        double sum = unsuited / (1 - unsuited) * likelihood[^1], reached = 0;
        for (var i = 0; i < prior.Length; i++)
        {
            sum += prior[i] * likelihood[i];
            if (i <= step)
                reached += prior[i] * likelihood[i];
        }

        return sum > 0 ? reached / sum : 0;
    }
}

/// <summary>Chances of one square in which the species was never found.</summary>
/// <param name="Square">Index of the square.</param>
/// <param name="Now">Chance that it is there unrecorded.</param>
/// <param name="ByYear">Chance that it is there by the end of the year that is foretold.</param>
public readonly record struct ForecastSquare(int Square, double Now, double ByYear)
{
    /// <summary>Chance that it arrives in the years that are foretold.</summary>
    public double Arrives => ByYear - Now;
}
