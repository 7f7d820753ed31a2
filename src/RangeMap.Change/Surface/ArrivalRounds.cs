using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>The rounds of an arrival model's fit: each improves the detection, the share of unsuited squares, the surface and its two variances in turn (docs/methods/arrival-surface.md, fit).</summary>
internal sealed class ArrivalRounds
{
    /// <summary>Least share of a square's full information that is reckoned with, so that squares hardly known do not throw the step.</summary>
    private const double LeastKnown = 1e-4;

    private const double FreePenalty = 1e-9;

    // A round that moves the surface nowhere by more than this share of its standard error, and the variances by less than that, is the last.
    private const double LeastMove = 0.05;
    private const int FewestRounds = 6;

    // Bumps of a tenth of a year are none.
    private static readonly double _leastRoughness = Math.Log(0.01);

    // Bounds of the scatter's variance, years squared.
    private const double LeastScatter = 0.1;
    private readonly double _mostScatter;

    private readonly List<ArrivalSite> _sites;
    private readonly SurfaceBasis _basis;
    private readonly SurfaceDesign _design;
    private readonly YearLadder _years;
    private readonly ArrivalOptions _options;
    private readonly double[] _first, _second, _never, _greatest;
    private readonly double[][] _chances, _likelihoods;
    private readonly FixedPoint _roughness = new(Math.Log(4));
    private Vector<double> _weights;
    private Matrix<double> _covariance;
    private double _scatter = 4, _unsuited = 0.1;

    public ArrivalRounds(List<ArrivalSite> sites, SurfaceBasis basis, YearLadder years, ArrivalOptions options)
    {
        (_sites, _basis, _years, _options) = (sites, basis, years, options);
        _design = SurfaceDesign.Of(basis, [.. sites.Select(site => new PlanePoint(site.X, site.Y))]);
        (_first, _second, _never, _greatest) = (new double[sites.Count], new double[sites.Count], new double[sites.Count], new double[sites.Count]);
        (_chances, _likelihoods) = ([.. sites.Select(_ => new double[years.Count])], [.. sites.Select(_ => new double[years.Count])]);
        _mostScatter = Math.Pow(1.25 * NoFront.MostScatterYears(years.Watched), 2);
        Detection = new(0, 0.5);
        (_weights, _covariance) = Start();
    }

    /// <summary>Chance that a visit finds what is there.</summary>
    public DetectionCurve Detection { get; private set; }

    /// <summary>Share of squares that the species never lives in.</summary>
    public double Unsuited => _unsuited;

    /// <summary>Standard deviation of single squares' arrivals round the surface, years.</summary>
    public double ScatterYears => Math.Sqrt(_scatter);

    /// <summary>Number of visited squares that the species reached before a year, as expected from all that is known.</summary>
    public double ReachedBefore(int year)
    {
        var steps = Math.Clamp(year - _years.First, 0, _years.Count - 1);
        return _chances.Sum(chances => chances.Take(steps).Sum());
    }

    /// <summary>
    /// By how much the visits are likelier with arrivals than had the species been there all along: difference of the logarithms, less the numbers that the surface and its scatter use up
    /// (after Akaike 1974, IEEE Transactions on Automatic Control 19:716-723).
    /// </summary>
    public double GainOverResident()
    {
        var used = SurfaceBasis.Free + 1.0;
        for (var j = SurfaceBasis.Free; j < _basis.Count; j++)
            used += 1 - _covariance[j, j] / Roughness;
        var arriving = LogLikelihood(_design.Times(_weights), Math.Sqrt(_scatter)) + _greatest.Sum();
        return arriving - used - ResidentModel.LogLikelihood(_sites, _options.StrayRate, Detection, _unsuited);
    }

    private double Roughness => Math.Exp(_roughness.Value);

    /// <summary>The surface as it stands.</summary>
    public ArrivalSurface Surface() => new(_basis, _weights, _covariance, _scatter, Roughness);

    /// <summary>Runs rounds until one of them moves nothing any more.</summary>
    public void Run()
    {
        for (var round = 0; round < _options.Rounds; round++)
        {
            Expect();
            Detection = Detection.Improved(VisitClasses());
            _unsuited = UnsuitedShare.Likeliest(_never, _unsuited);
            var (before, scatter, roughness) = (_weights, _scatter, Roughness);
            Refit();
            // What scatters without bound has no front, and no round will find one.
            if (_scatter >= _mostScatter)
                break;
            if (round >= FewestRounds && Move(_weights - before) < LeastMove && Math.Abs(_scatter / scatter - 1) < LeastMove && Math.Abs(Roughness / roughness - 1) < LeastMove)
                break;
        }

        Expect();
    }

    /// <summary>How far the detection may be off; null where that cannot be told.</summary>
    public DetectionError? DetectionError()
    {
        var (detection, weights) = (Detection, _weights);
        var error = RangeMap.Change.DetectionError.Of(detection, Refitted);
        (Detection, _weights) = (detection, weights);
        Expect();
        return error;
    }

    /// <summary>The likelihood of another detection curve, with the surface that fits it best.</summary>
    private (double Log, Vector<double> Weights) Refitted(DetectionCurve detection)
    {
        const int steps = 3;
        Detection = detection;
        Expect();
        for (var step = 0; step < steps; step++)
            _weights = NewtonStep();
        return (Penalised(_weights) + _greatest.Sum(), _weights);
    }

    /// <summary>No place of the surface moves by more of its standard errors than this (Cauchy and Schwarz).</summary>
    private double Move(Vector<double> change) => Math.Sqrt(Math.Max(0, change * _covariance.Cholesky().Solve(change)));

    /// <summary>A smooth surface through the first finds, to begin with; squares without one count as reached a little later.</summary>
    private (Vector<double>, Matrix<double>) Start()
    {
        var first = _sites.Select(site => (double?)site.FirstFound).ToArray();
        var last = first.Max()!.Value;
        var information = new double[_sites.Count];
        Array.Fill(information, 1 / _scatter);
        return Solve(Array.ConvertAll(first, year => year ?? last + 5), information);
    }

    /// <summary>The penalised weighted fit to working years, and its covariance.</summary>
    private (Vector<double>, Matrix<double>) Solve(double[] working, double[] information)
    {
        var normal = _design.Squares(information);
        for (var j = 0; j < _basis.Count; j++)
            normal[j, j] += j < SurfaceBasis.Free ? FreePenalty : 1 / Roughness;
        var covariance = normal.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(_basis.Count));
        return (covariance * _design.Sum([.. working.Zip(information, (year, weight) => year * weight)]), covariance);
    }

    /// <summary>What the visits say of each square's arrival, with the surface and the detection as they stand.</summary>
    private void Expect()
    {
        var prior = _design.Times(_weights);
        var deviation = Math.Sqrt(_scatter);
        Parallel.For(0, _sites.Count, i =>
        {
            _greatest[i] = ArrivalPosterior.Likelihood(_sites[i].Visits, _years, Detection, _options.StrayRate, _likelihoods[i]);
            _years.Prior(prior[i], deviation, _chances[i]);
            _never[i] = ArrivalPosterior.Update(_chances[i], _likelihoods[i], _unsuited);
        });
    }

    /// <summary>One step of Newton's method for the surface, shortened until it is one upwards, then one for each of the two variances.</summary>
    private void Refit()
    {
        _weights = NewtonStep();
        var fitted = _design.Times(_weights);
        Differentiate(fitted);
        var information = Array.ConvertAll(_second, second => Math.Max(-second, LeastKnown / _scatter));
        _covariance = Solve(fitted, information).Item2;
        _scatter = Math.Clamp(BetterScatter(fitted, information), LeastScatter, _mostScatter);
        _roughness.Advance(Math.Clamp(BetterRoughness(), _leastRoughness, Math.Log(1e6)));
    }

    private Vector<double> NewtonStep()
    {
        var fitted = _design.Times(_weights);
        Differentiate(fitted);
        // A square whose visits leave two answers bends the wrong way; as much the right way keeps the step sound and does not change where it ends.
        var curvature = Array.ConvertAll(_second, second => Math.Max(Math.Abs(second), LeastKnown / _scatter));
        var (target, _) = Solve([.. fitted.Select((year, i) => year + _first[i] / curvature[i])], curvature);
        return Uphill(_weights, target);
    }

    private void Differentiate(double[] fitted)
    {
        var deviation = Math.Sqrt(_scatter);
        Parallel.For(0, _sites.Count, i => (_, _first[i], _second[i]) = ArrivalPosterior.Slopes(_likelihoods[i], _years, fitted[i], deviation, _unsuited));
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
        return LogLikelihood(_design.Times(weights), Math.Sqrt(_scatter)) - bumps / (2 * Roughness);
    }

    /// <summary>
    /// A step of Newton's method for the logarithm of the scatter, from the likelihood at three values; the part of the surface's uncertainty that belongs to the scatter is added
    /// to the slope, as restricted likelihood does.
    /// </summary>
    private double BetterScatter(double[] fitted, double[] information)
    {
        const double apart = 0.1, longest = 0.4;
        var logs = new double[3];
        for (var k = 0; k < 3; k++)
            logs[k] = LogLikelihood(fitted, Math.Sqrt(_scatter * Math.Exp((k - 1) * apart)));
        var uncertain = _design.Forms(_covariance);
        var restricted = 0.0;
        for (var i = 0; i < _sites.Count; i++)
            restricted += 0.5 * _scatter * uncertain[i] * information[i] * information[i];
        var (slope, bend) = ((logs[2] - logs[0]) / (2 * apart) + restricted, (logs[2] - 2 * logs[1] + logs[0]) / (apart * apart));
        var step = bend < 0 ? -slope / bend : Math.Sign(slope) * longest;
        return _scatter * Math.Exp(Math.Clamp(step, -longest, longest));
    }

    private double LogLikelihood(double[] fitted, double deviation)
    {
        // One sum at the end, in the order of the squares, so that two runs agree to the last figure.
        var logs = new double[_sites.Count];
        Parallel.For(0, logs.Length, i => logs[i] = ArrivalPosterior.Slopes(_likelihoods[i], _years, fitted[i], deviation, _unsuited).Log);
        return logs.Sum();
    }

    /// <summary>Logarithm of the bumps' variance after Fellner 1986, Technometrics 28:51-60: squares of their weights over the degrees of freedom that they use.</summary>
    private double BetterRoughness()
    {
        double squares = 0, used = 0;
        for (var j = SurfaceBasis.Free; j < _basis.Count; j++)
            (squares, used) = (squares + _weights[j] * _weights[j], used + 1 - _covariance[j, j] / Roughness);
        return Math.Log(squares / Math.Max(used, 1e-3));
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
