namespace RangeMap.Change;

/// <summary>
/// When a spreading species arrived in each square, from every visit with it and without it: a smooth surface of mean arrival years, the scatter of single squares
/// round it, and the chance that a visit finds what is there, all estimated together (docs/methods/arrival-surface.md): the surface by
/// penalised likelihood with the Laplace approximation, the detection by the EM algorithm.
/// </summary>
public static class ArrivalModel
{
    /// <summary>Fits the model, or says why it cannot be fitted.</summary>
    /// <param name="sites">All squares of the country, visited or not; a square that is given more than once counts as several.</param>
    /// <param name="origin">Where the spread began; null to take the earliest finds.</param>
    /// <param name="options">How; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static ArrivalAnswer Fit(IReadOnlyList<ArrivalSite> sites, PlanePoint? origin = null, ArrivalOptions? options = null)
    {
        options ??= new();
        options.ThrowIfOutOfRange();
        if (sites.Any(site => !double.IsFinite(site.X) || !double.IsFinite(site.Y)))
            return new(null, "A square has no place.");
        var visited = sites.Where(site => site.Visits.Count > 0).ToList();
        var firsts = visited.Select(site => site.FirstFound).Where(first => first is not null).Select(first => first!.Value).ToList();
        if (Fault(visited, firsts, options) is { } fault)
            return new(null, fault);
        var start = origin ?? Earliest(visited);
        var (first, last) = (visited.Min(site => site.Visits.Min(visit => visit.Year)), visited.Max(site => site.Visits.Max(visit => visit.Year)));
        var years = YearLadder.Of(first, last);
        var points = visited.Select(site => new PlanePoint(site.X, site.Y)).ToList();
        var rounds = new ArrivalRounds(visited, SurfaceBasis.Of(points, start, options.Knots), years, options);
        rounds.Run();
        if (NoFront.Of(rounds, first, last) is { } noFront)
            return new(null, noFront);
        return new(ArrivalFit.Of(sites, rounds.Surface(), rounds.Detection, options.DetectionError ? rounds.DetectionError() : null, rounds.Unsuited, years, options), null);
    }

    private static string? Fault(List<ArrivalSite> visited, List<int> firsts, ArrivalOptions options)
    {
        if (firsts.Count < options.LeastSquares)
            return $"Not enough squares with the species: {firsts.Count} of at least {options.LeastSquares}.";
        var years = firsts.Distinct().Count();
        if (years < options.LeastYears)
            return $"Not enough different years of first finds: {years} of at least {options.LeastYears}.";
        if (visited.Sum(site => site.Visits.Count(visit => !visit.Found)) < options.LeastSquares)
            return "There are hardly any visits without the species, so where it is not cannot be told from where nobody looked.";
        var (x, y) = (visited.Select(site => site.X).ToList(), visited.Select(site => site.Y).ToList());
        double xx = Spread(x, x), yy = Spread(y, y), xy = Spread(x, y);
        return xx * yy - xy * xy <= 1e-6 * (xx + yy) * (xx + yy) ? "The squares lie on one line, so no surface can be fitted; distances along it can be measured instead." : null;
    }

    private static double Spread(List<double> a, List<double> b)
    {
        var (meanA, meanB) = (a.Average(), b.Average());
        return a.Zip(b, (p, q) => (p - meanA) * (q - meanB)).Average();
    }

    /// <summary>Mean of the squares where it was found first, whole years until there are three.</summary>
    private static PlanePoint Earliest(List<ArrivalSite> visited)
    {
        var found = visited.Where(site => site.FirstFound is not null).OrderBy(site => site.FirstFound).ToList();
        var earliest = found.TakeWhile((site, i) => i < 3 || site.FirstFound == found[2].FirstFound).ToList();
        return new(earliest.Average(site => site.X), earliest.Average(site => site.Y));
    }
}

/// <summary>A fitted model, or the reason why there is none.</summary>
/// <param name="Fit">The model; null when refused.</param>
/// <param name="Refused">A sentence; null when fitted.</param>
public sealed record ArrivalAnswer(ArrivalFit? Fit, string? Refused);
