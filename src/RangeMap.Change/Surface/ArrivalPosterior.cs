namespace RangeMap.Change;

/// <summary>
/// What the visits to one square say of its year of arrival (docs/methods/arrival-surface.md, eq. 1): before the arrival a visit finds nothing but a stray; from it
/// on it finds the species with the chance of its list length. A visit that found nothing is no proof of absence.
/// </summary>
internal static class ArrivalPosterior
{
    private const double Unlikely = 1e-9, Least = 1e-300;

    /// <summary>Likelihood of a square's visits for each year of arrival, the greatest being 1; gives the logarithm of what that stands for.</summary>
    public static double Likelihood(IReadOnlyList<ArrivalVisit> visits, YearLadder years, DetectionCurve detection, double strayRate, Span<double> likelihood)
    {
        // For an arrival in year g: visits before g count as absent, those in g and later as present.
        likelihood.Clear();
        var (strayLog, quietLog) = (Math.Log(strayRate), Math.Log(1 - strayRate));
        foreach (var visit in visits)
        {
            var p = detection.Chance(visit.ListLength);
            var (present, absent) = visit.Found ? (Math.Log(p), strayLog) : (Math.Log(1 - p), quietLog);
            var step = Math.Clamp(visit.Year - years.First, -1, years.Count - 1);
            // Differences at the step; summed up below.
            likelihood[0] += present;
            if (step + 1 < years.Count)
                likelihood[step + 1] += absent - present;
        }

        var greatest = double.NegativeInfinity;
        for (var i = 0; i < years.Count; i++)
        {
            if (i > 0)
                likelihood[i] += likelihood[i - 1];
            greatest = Math.Max(greatest, likelihood[i]);
        }

        for (var i = 0; i < years.Count; i++)
            likelihood[i] = Math.Exp(likelihood[i] - greatest);
        return greatest;
    }

    /// <summary>Logarithm of the likelihood of a square's visits as a function of the surface's year, with its first and second derivative.</summary>
    /// <param name="likelihood">Likelihood for each year of arrival.</param>
    /// <param name="years">The years.</param>
    /// <param name="surface">The surface's year.</param>
    /// <param name="deviation">Standard deviation of squares round the surface.</param>
    /// <param name="unsuited">Share of squares that the species never lives in; visits to them say what visits before an arrival say.</param>
    public static (double Log, double First, double Second) Slopes(ReadOnlySpan<double> likelihood, YearLadder years, double surface, double deviation, double unsuited)
    {
        var here = Sums(likelihood, years, surface, deviation, NormalCurve.Far);
        // Boundaries far from the surface matter only to a square whose own visits put its arrival there.
        if (here.Value < Unlikely)
            here = Sums(likelihood, years, surface, deviation, NormalCurve.Farthest);
        var value = (1 - unsuited) * here.Value + unsuited * likelihood[^1];
        if (!(value > Least))
            return (Math.Log(Least), 0, 0);
        var first = (1 - unsuited) * here.First / value;
        return (Math.Log(value), first, (1 - unsuited) * here.Second / value - first * first);
    }

    /// <summary>
    /// Chance of the visits with an arrival about the surface, with its derivatives. Each boundary between two years moves chance from one to the other, so the sum asks for the differences of
    /// the likelihood only; tails are summed on their own side of the surface, as 1 less a chance that is nearly 1 would keep nothing of it.
    /// </summary>
    private static (double Value, double First, double Second) Sums(ReadOnlySpan<double> likelihood, YearLadder years, double surface, double deviation, double farthest)
    {
        var middle = Boundary(surface, up: true);
        double value = likelihood[middle], first = 0, second = 0;
        var (from, until) = (Boundary(surface - farthest * deviation, up: true), Boundary(surface + farthest * deviation, up: false));
        for (var i = from; i < until; i++)
        {
            var step = likelihood[i] - likelihood[i + 1];
            if (step == 0)
                continue;
            var z = (years.First + i + 0.5 - surface) / deviation;
            var (beyond, density) = NormalCurve.BeyondAndDensity(Math.Abs(z));
            value += i < middle ? step * beyond : -step * beyond;
            first -= step * density / deviation;
            second -= step * z * density / (deviation * deviation);
        }

        return (value, first, second);

        // Boundary i lies between the years First + i and First + i + 1.
        int Boundary(double year, bool up)
        {
            var place = year - years.First - 0.5;
            return (int)Math.Clamp(up ? Math.Ceiling(place) : Math.Floor(place) + 1, 0, years.Count - 1);
        }
    }

    /// <summary>Turns prior chances into posterior ones in place; the last takes the chance that the square is unsuited, which is given back too.</summary>
    public static double Update(Span<double> chances, ReadOnlySpan<double> likelihood, double unsuited)
    {
        var sum = 0.0;
        for (var i = 0; i < chances.Length; i++)
            sum += chances[i] *= likelihood[i] * (1 - unsuited);
        var never = unsuited * likelihood[^1];
        sum += never;
        for (var i = 0; i < chances.Length; i++)
            chances[i] /= sum;
        chances[^1] += never / sum;
        return never / sum;
    }
}
