using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>
/// When a spreading species arrived in each square, from every visit with it and without it: a smooth surface of mean arrival years, the scatter of single squares
/// round it, and the chance that a visit finds what is there, all estimated together (docs/methods/arrival-surface.md): the surface by
/// penalised likelihood with the Laplace approximation, the detection by the EM algorithm.
/// </summary>
public static class ArrivalModel
{
    private const double Tolerance = 5e-3;

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
        var years = YearLadder.Of(visited.Min(site => site.Visits.Min(visit => visit.Year)), visited.Max(site => site.Visits.Max(visit => visit.Year)));
        var points = visited.Select(site => new PlanePoint(site.X, site.Y)).ToList();
        var rounds = new Rounds(visited, SurfaceBasis.Of(points, start, options.Knots), years, options);
        rounds.Run();
        return new(ArrivalFit.Of(sites, rounds.Surface(), rounds.Detection, rounds.Unsuited, years, options), null);
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

    /// <summary>The rounds of the fit and what they improve.</summary>
    private sealed class Rounds
    {
        /// <summary>Least share of a square's full information that is reckoned with, so that squares hardly known do not throw the step.</summary>
        private const double LeastKnown = 1e-3;

        /// <summary>The same for the curvature of a step.</summary>
        private const double LeastCurvature = 0.1;

        private const double FreePenalty = 1e-9;

        private readonly List<ArrivalSite> _sites;
        private readonly SurfaceBasis _basis;
        private readonly YearLadder _years;
        private readonly ArrivalOptions _options;
        private readonly Matrix<double> _design;
        private readonly double[] _first, _second, _never;
        private readonly double[][] _chances, _likelihoods;
        private Vector<double> _weights;
        private Matrix<double> _covariance;
        private double _scatter = 4, _roughness = 4;

        public Rounds(List<ArrivalSite> sites, SurfaceBasis basis, YearLadder years, ArrivalOptions options)
        {
            (_sites, _basis, _years, _options) = (sites, basis, years, options);
            _design = Matrix<double>.Build.DenseOfRowArrays(sites.Select(site =>
            {
                var row = new double[basis.Count];
                basis.Fill(new(site.X, site.Y), row);
                return row;
            }));
            (_first, _second, _never) = (new double[sites.Count], new double[sites.Count], new double[sites.Count]);
            (_chances, _likelihoods) = ([.. sites.Select(_ => new double[years.Count])], [.. sites.Select(_ => new double[years.Count])]);
            Detection = new(0, 0.5);
            (_weights, _covariance) = Start();
        }

        public DetectionCurve Detection { get; private set; }

        /// <summary>Share of squares that the species never lives in.</summary>
        public double Unsuited { get; private set; } = 0.1;

        public void Run()
        {
            for (var round = 0; round < _options.Rounds; round++)
            {
                Expect();
                Detection = Detection.Improved(VisitClasses());
                Unsuited = Math.Clamp(_never.Average(), 1e-4, 0.9);
                var (before, scatter) = (_design * _weights, _scatter);
                Refit();
                if (round > 5 && (_design * _weights - before).AbsoluteMaximum() < Tolerance && Math.Abs(_scatter / scatter - 1) < Tolerance)
                    break;
            }

            Expect();
        }

        public ArrivalSurface Surface() => new(_basis, _weights, _covariance, _scatter, _roughness);

        /// <summary>A smooth surface through the first finds, to begin with; squares without one count as reached a little later.</summary>
        private (Vector<double>, Matrix<double>) Start()
        {
            var first = _sites.Select(site => (double?)site.FirstFound).ToArray();
            var last = first.Max()!.Value;
            return Solve(Vector<double>.Build.Dense(_sites.Count, i => first[i] ?? last + 5), Vector<double>.Build.Dense(_sites.Count, 1 / _scatter));
        }

        /// <summary>The penalised weighted fit to working years, and its covariance.</summary>
        private (Vector<double>, Matrix<double>) Solve(Vector<double> working, Vector<double> information)
        {
            var weighted = _design.MapIndexed((i, _, value) => value * information[i]);
            var normal = weighted.TransposeThisAndMultiply(_design);
            for (var j = 0; j < _basis.Count; j++)
                normal[j, j] += j < SurfaceBasis.Free ? FreePenalty : 1 / _roughness;
            var covariance = normal.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(_basis.Count));
            return (covariance * weighted.TransposeThisAndMultiply(working), covariance);
        }

        /// <summary>What the visits say of each square's arrival, with the surface and the detection as they stand.</summary>
        private void Expect()
        {
            var prior = _design * _weights;
            var deviation = Math.Sqrt(_scatter);
            Parallel.For(0, _sites.Count, i =>
            {
                ArrivalPosterior.Likelihood(_sites[i].Visits, _years, Detection, _options.StrayRate, _likelihoods[i]);
                _years.Prior(prior[i], deviation, _chances[i]);
                _never[i] = ArrivalPosterior.Update(_chances[i], _likelihoods[i], Unsuited);
            });
        }

        /// <summary>One step of Newton's method for the surface, shortened until it is one upwards, then one for each of the two variances.</summary>
        private void Refit()
        {
            var fitted = _design * _weights;
            Differentiate(fitted);
            // A square whose visits leave two answers has no curvature of its own; a little keeps the step sound and does not change where it ends.
            var curvature = Vector<double>.Build.Dense(_sites.Count, i => Math.Max(-_second[i], LeastCurvature / _scatter));
            var (target, _) = Solve(Vector<double>.Build.Dense(_sites.Count, i => fitted[i] + _first[i] / curvature[i]), curvature);
            _weights = Uphill(_weights, target);
            fitted = _design * _weights;
            Differentiate(fitted);
            var information = Vector<double>.Build.Dense(_sites.Count, i => Math.Max(-_second[i], LeastKnown / _scatter));
            _covariance = Solve(fitted, information).Item2;
            _scatter = Math.Clamp(BetterScatter(fitted, information), 0.1, 400);
            _roughness = Math.Clamp(BetterRoughness(), 1e-4, 1e6);
        }

        private void Differentiate(Vector<double> fitted)
        {
            var deviation = Math.Sqrt(_scatter);
            Parallel.For(0, _sites.Count, i => (_, _first[i], _second[i]) = ArrivalPosterior.Slopes(_likelihoods[i], _years, fitted[i], deviation, Unsuited));
        }

        private Vector<double> Uphill(Vector<double> from, Vector<double> to)
        {
            var before = Penalised(from);
            for (var share = 1.0; share > 0.02; share /= 2)
            {
                var there = from + share * (to - from);
                if (Penalised(there) >= before)
                    return there;
            }

            return from;
        }

        private double Penalised(Vector<double> weights)
        {
            var bumps = 0.0;
            for (var j = SurfaceBasis.Free; j < _basis.Count; j++)
                bumps += weights[j] * weights[j];
            return LogLikelihood(_design * weights, Math.Sqrt(_scatter)) - bumps / (2 * _roughness);
        }

        /// <summary>
        /// A step of Newton's method for the logarithm of the scatter, from the likelihood at three values; the part of the surface's uncertainty that belongs to the scatter is added
        /// to the slope, as restricted likelihood does.
        /// </summary>
        private double BetterScatter(Vector<double> fitted, Vector<double> information)
        {
            const double apart = 0.1, longest = 0.4;
            var logs = new double[3];
            for (var k = 0; k < 3; k++)
                logs[k] = LogLikelihood(fitted, Math.Sqrt(_scatter * Math.Exp((k - 1) * apart)));
            var uncertain = _design.PointwiseMultiply(_design * _covariance).RowSums();
            var restricted = 0.0;
            for (var i = 0; i < _sites.Count; i++)
                restricted += 0.5 * _scatter * uncertain[i] * information[i] * information[i];
            var (slope, bend) = ((logs[2] - logs[0]) / (2 * apart) + restricted, (logs[2] - 2 * logs[1] + logs[0]) / (apart * apart));
            var step = bend < 0 ? -slope / bend : Math.Sign(slope) * longest;
            return _scatter * Math.Exp(Math.Clamp(step, -longest, longest));
        }

        private double LogLikelihood(Vector<double> fitted, double deviation)
        {
            // One sum at the end, in the order of the squares, so that two runs agree to the last figure.
            var logs = new double[_sites.Count];
            Parallel.For(0, logs.Length, i => logs[i] = ArrivalPosterior.Slopes(_likelihoods[i], _years, fitted[i], deviation, Unsuited).Log);
            return logs.Sum();
        }

        /// <summary>Fellner 1986, Technometrics 28:51-60: squares of the bumps' weights over the degrees of freedom that they use.</summary>
        private double BetterRoughness()
        {
            double squares = 0, used = 0;
            for (var j = SurfaceBasis.Free; j < _basis.Count; j++)
                (squares, used) = (squares + _weights[j] * _weights[j], used + 1 - _covariance[j, j] / _roughness);
            return squares / Math.Max(used, 1e-3);
        }

        private List<(int, double, double)> VisitClasses()
        {
            var classes = new SortedDictionary<int, (double Found, double Missed)>();
            for (var i = 0; i < _sites.Count; i++)
            {
                var reached = Cumulated(_chances[i]);
                foreach (var visit in _sites[i].Visits)
                {
                    var step = visit.Year - _years.First;
                    var there = step < 0 ? 0 : reached[Math.Min(step, reached.Length - 1)];
                    var (found, missed) = classes.GetValueOrDefault(visit.ListLength);
                    classes[visit.ListLength] = visit.Found ? (found + there, missed) : (found, missed + there);
                }
            }

            return [.. classes.Select(pair => (pair.Key, pair.Value.Found, pair.Value.Missed))];
        }

        private static double[] Cumulated(double[] chances)
        {
            var sums = new double[chances.Length];
            var sum = 0.0;
            for (var i = 0; i < sums.Length; i++)
                sums[i] = sum += chances[i];
            return sums;
        }
    }
}

/// <summary>A fitted model, or the reason why there is none.</summary>
/// <param name="Fit">The model; null when refused.</param>
/// <param name="Refused">A sentence; null when fitted.</param>
public sealed record ArrivalAnswer(ArrivalFit? Fit, string? Refused);
