namespace RangeMap.Change;

/// <summary>
/// How well forecasts would have done in the past: for each cut year the model is fitted to visits up to it and scored on squares empty until then and visited in the years
/// after it, against references that know nothing of the model (docs/methods/forecast.md, eq. 10 to 12). A square that nobody visited is unknown and is not scored.
/// </summary>
public static class Hindcast
{
    private const int LeastScored = 20;

    /// <summary>One entry a cut year, with scores or the reason why there are none.</summary>
    /// <param name="sites">All squares with all visits.</param>
    /// <param name="cuts">The cut years, chosen beforehand.</param>
    /// <param name="horizon">Years after a cut in which the outcome is looked for; at least 1.</param>
    /// <param name="sideKm">Side of a square: its eight neighbours lie within one and a half of it.</param>
    /// <param name="origin">Where the spread began; null to take the earliest finds known at the cut.</param>
    /// <param name="options">How the model is fitted.</param>
    public static IReadOnlyList<HindcastCut> Of(
        IReadOnlyList<ArrivalSite> sites, IReadOnlyList<int> cuts, int horizon, double sideKm, PlanePoint? origin = null, ArrivalOptions? options = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(horizon, 1);
        var neighbours = Neighbours(sites, sideKm);
        return [.. cuts.Select(cut => Score(sites, neighbours, cut, horizon, origin, options ?? new()))];
    }

    private static HindcastCut Score(IReadOnlyList<ArrivalSite> sites, int[][] neighbours, int cut, int horizon, PlanePoint? origin, ArrivalOptions options)
    {
        var known = sites.Select(site => site.Until(cut)).ToArray();
        var answer = ArrivalModel.Fit(known, origin, options with { DetectionError = false });
        if (answer.Fit is not { } fit)
            return new(cut, horizon, null, null, null, null, answer.Refused);
        var scored = Enumerable.Range(0, sites.Count).Where(i => known[i].FirstFound is null && After(sites[i], cut, horizon).Count > 0).ToArray();
        if (scored.Length < LeastScored)
            return new(cut, horizon, null, null, null, null, $"Only {scored.Length} squares were empty at the cut and visited after it, of at least {LeastScored}.");
        bool Happened(int i) => After(sites[i], cut, horizon).Any(visit => visit.Found);
        ForecastScores Scores(Func<int, double> chance) => ForecastScores.Of([.. scored.Select(i => (chance(i), Happened(i)))])!;
        var beside = Beside(known, neighbours, cut, horizon);
        return new(
            cut, horizon, Scores(i => Found(fit, i, After(sites[i], cut, horizon))), Scores(i => FoundWhereItWas(fit, i, cut, After(sites[i], cut, horizon))), Scores(i => beside(i)),
            DistanceOnly(known, fit.Origin, cut, horizon) is { } line ? Scores(i => line(i)) : null, null);
    }

    private static List<ArrivalVisit> After(ArrivalSite site, int cut, int horizon) => [.. site.Visits.Where(visit => visit.Year > cut && visit.Year <= cut + horizon)];

    /// <summary>Chance that the visits after the cut find it: over the years in which it may arrive.</summary>
    private static double Found(ArrivalFit fit, int square, List<ArrivalVisit> visits)
    {
        var found = 0.0;
        for (var (step, before) = (0, 0.0); step < fit.Years.Count; step++)
        {
            var year = fit.Years.First + step;
            var reached = step == fit.Years.Count - 1 ? 1 : fit.Reached(square, year);
            var missed = visits.Where(visit => visit.Year >= year).Aggregate(1.0, (product, visit) => product * (1 - fit.Detection.Chance(visit.ListLength)));
            found += (reached - before) * (1 - missed);
            before = reached;
        }

        return found;
    }

    /// <summary>The same if nothing spread after the cut: only what is there unrecorded can be found.</summary>
    private static double FoundWhereItWas(ArrivalFit fit, int square, int cut, List<ArrivalVisit> visits) =>
        fit.Reached(square, cut) * (1 - visits.Aggregate(1.0, (product, visit) => product * (1 - fit.Detection.Chance(visit.ListLength))));

    /// <summary>The rate at which squares beside an occupied one, and others, were found occupied in as many years before the cut.</summary>
    private static Func<int, double> Beside(ArrivalSite[] known, int[][] neighbours, int cut, int horizon)
    {
        bool Occupied(int i, int year) => known[i].FirstFound <= year;
        double Rate(bool beside)
        {
            var (n, found) = (0, 0);
            for (var i = 0; i < known.Length; i++)
            {
                if (Occupied(i, cut - horizon) || After(known[i], cut - horizon, horizon).Count == 0 || neighbours[i].Any(k => Occupied(k, cut - horizon)) != beside)
                    continue;
                n++;
                found += Occupied(i, cut) ? 1 : 0;
            }

            return (found + 0.5) / (n + 1.0);
        }

        var (near, far) = (Rate(true), Rate(false));
        return i => neighbours[i].Any(k => Occupied(k, cut)) ? near : far;
    }

    /// <summary>Plain regression of first finds on distance: the chance that its line, with its scatter, has passed the square.</summary>
    private static Func<int, double>? DistanceOnly(ArrivalSite[] known, PlanePoint origin, int cut, int horizon)
    {
        var found = known.Where(site => site.FirstFound is not null).ToArray();
        if (found.Length < 3)
            return null;
        var years = found.Select(site => (double)site.FirstFound!.Value).ToArray();
        if (years.Distinct().Count() < 2)
            return null;
        var line = LeastSquaresLine.Fit(years, [.. found.Select(site => PlanePoint.Km(new(site.X, site.Y), origin))]);
        var scatter = Math.Max(1e-6, Math.Sqrt(line.ResidualSquares / Math.Max(1, line.N - 2)));
        return i => 1 - NormalCurve.Below((PlanePoint.Km(new(known[i].X, known[i].Y), origin) - line.Intercept - line.Slope * (cut + horizon)) / scatter);
    }

    private static int[][] Neighbours(IReadOnlyList<ArrivalSite> sites, double sideKm)
    {
        var cells = new Dictionary<(long, long), List<int>>();
        (long, long) CellOf(double x, double y) => ((long)Math.Floor(x / sideKm), (long)Math.Floor(y / sideKm));
        for (var i = 0; i < sites.Count; i++)
        {
            if (!cells.TryGetValue(CellOf(sites[i].X, sites[i].Y), out var list))
                cells.Add(CellOf(sites[i].X, sites[i].Y), list = []);
            list.Add(i);
        }

        var reach = 1.5 * sideKm;
        return [.. sites.Select((site, i) =>
        {
            var (column, row) = CellOf(site.X, site.Y);
            return (from c in new[] { column - 2, column - 1, column, column + 1, column + 2 }
                    from r in new[] { row - 2, row - 1, row, row + 1, row + 2 }
                    where cells.ContainsKey((c, r))
                    from k in cells[(c, r)]
                    where k != i && PlanePoint.Km(new(site.X, site.Y), new(sites[k].X, sites[k].Y)) <= reach
                    select k).ToArray();
        })];
    }
}

/// <summary>Scores of the forecast from one cut year.</summary>
/// <param name="Cut">Visits up to the end of this year were known.</param>
/// <param name="Horizon">Years after it in which the outcome was looked for.</param>
/// <param name="Model">Scores of the model; null when refused.</param>
/// <param name="NoSpread">Scores of a species that stays where it was.</param>
/// <param name="Beside">Scores of a constant rate for squares beside occupied ones.</param>
/// <param name="Distance">Scores of plain regression on distance.</param>
/// <param name="Refused">Why there are no scores.</param>
public sealed record HindcastCut(int Cut, int Horizon, ForecastScores? Model, ForecastScores? NoSpread, ForecastScores? Beside, ForecastScores? Distance, string? Refused);
