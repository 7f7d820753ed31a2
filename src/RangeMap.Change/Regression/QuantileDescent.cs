namespace RangeMap.Change;

/// <summary>
/// The exact descent behind <see cref="QuantileLine"/>, with buffers that are used again for each resample.
/// </summary>
/// <remarks>
/// The objective, the sum of w rho(y - a - b t), is convex and piecewise linear in (a, b); some optimal line passes
/// through two points with different t. From a line through a point the descent turns the line about that point to the
/// best slope, a weighted quantile of the slopes to all other points, then looks at all points on the new line: along an
/// edge of the objective the line turns about one of them. If no turn goes down, the line is optimal, because an edge
/// that goes down leads out of every vertex that is not. This is the two-parameter case of Barrodale and Roberts 1973
/// (SIAM Journal on Numerical Analysis 10:839-848) as extended to quantiles by Koenker and d'Orey 1987 (Applied
/// Statistics 36:383-393).
/// </remarks>
internal sealed class QuantileDescent(int capacity, double tau)
{
    private readonly double[] _t = new double[capacity];
    private readonly double[] _y = new double[capacity];
    private readonly double[] _weight = new double[capacity];
    private readonly double[] _slopes = new double[capacity];
    private readonly double[] _slopeWeights = new double[capacity];
    private readonly List<int> _onLine = [];
    private double _rangeT, _rangeY, _totalWeight;

    // Sums over the points off the current line: of w psi and of w psi t, with psi = tau above the line, tau - 1 below.
    private double _psi, _psiT;

    /// <summary>Number of points loaded.</summary>
    public int Count { get; private set; }

    /// <summary>The sum of w rho at the last line found.</summary>
    public double Objective { get; private set; }

    /// <summary>Forgets all points.</summary>
    public void Clear() => Count = 0;

    /// <summary>Loads a point.</summary>
    public void Add(double t, double y, double weight)
    {
        (_t[Count], _y[Count], _weight[Count]) = (t, y, weight);
        Count++;
    }

    /// <summary>Finds an optimal line through two points; false when the points share one value of t.</summary>
    /// <param name="startSlope">Where to begin; changes the time taken, not the objective reached.</param>
    /// <param name="line">The optimal line.</param>
    public bool TrySolve(double startSlope, out (double Intercept, double Slope) line)
    {
        line = default;
        if (!Measure())
            return false;

        var pivot = PointAtQuantile(startSlope);
        var best = double.PositiveInfinity;
        while (true)
        {
            var slope = BestSlopeAbout(pivot);
            Stand(_y[pivot] - slope * _t[pivot], slope);
            if (!(Objective < best))
                break;

            best = Objective;
            line = (_y[pivot] - slope * _t[pivot], slope);
            if (best == 0 || !TryTurnDown(out pivot))
                break;
        }

        Objective = best;
        return true;
    }

    /// <summary>From an optimal line, the optimal line of the greatest (direction 1) or least (direction -1) slope.</summary>
    public (double Intercept, double Slope) ExtremeFrom((double Intercept, double Slope) line, int direction)
    {
        while (true)
        {
            Stand(line.Intercept, line.Slope);
            if (!TryTurnLevel(direction, line.Slope, out var next))
                return line;
            line = next;
        }
    }

    private bool Measure()
    {
        if (Count == 0)
            return false;

        var t = _t.AsSpan(0, Count);
        var y = _y.AsSpan(0, Count);
        double minT = t[0], maxT = t[0], minY = y[0], maxY = y[0];
        _totalWeight = 0;
        for (var i = 0; i < Count; i++)
        {
            (minT, maxT) = (Math.Min(minT, t[i]), Math.Max(maxT, t[i]));
            (minY, maxY) = (Math.Min(minY, y[i]), Math.Max(maxY, y[i]));
            _totalWeight += _weight[i];
        }

        (_rangeT, _rangeY) = (maxT - minT, maxY - minY);
        return _rangeT > 0;
    }

    private int PointAtQuantile(double slope)
    {
        double total = 0;
        for (var i = 0; i < Count; i++)
        {
            _slopes[i] = _y[i] - slope * _t[i];
            total += _slopeWeights[i] = _weight[i];
        }

        var level = WeightedSelection.Select(_slopes.AsSpan(0, Count), _slopeWeights.AsSpan(0, Count), tau * total);
        var nearest = 0;
        for (var i = 1; i < Count; i++)
        {
            if (Math.Abs(_y[i] - slope * _t[i] - level) < Math.Abs(_y[nearest] - slope * _t[nearest] - level))
                nearest = i;
        }

        return nearest;
    }

    // With z the slope to another point and h its distance in t, that point adds w h rho(z - b) to the objective when
    // it lies later and w h rho(b - z) when earlier: the derivative rises by w h at each z, from the negative of target.
    private double BestSlopeAbout(int pivot)
    {
        var n = 0;
        double target = 0, t0 = _t[pivot], y0 = _y[pivot];
        for (var i = 0; i < Count; i++)
        {
            var h = _t[i] - t0;
            if (h == 0)
                continue;

            var pull = _weight[i] * Math.Abs(h);
            target += pull * (h > 0 ? tau : 1 - tau);
            _slopes[n] = (_y[i] - y0) / h;
            _slopeWeights[n++] = pull;
        }

        return WeightedSelection.Select(_slopes.AsSpan(0, n), _slopeWeights.AsSpan(0, n), target);
    }

    private void Stand(double intercept, double slope)
    {
        var near = 1e-11 * (_rangeY + Math.Abs(slope) * _rangeT);
        _onLine.Clear();
        (_psi, _psiT, Objective) = (0, 0, 0);
        for (var i = 0; i < Count; i++)
        {
            var residual = _y[i] - intercept - slope * _t[i];
            if (Math.Abs(residual) <= near)
            {
                _onLine.Add(i);
                continue;
            }

            var psi = _weight[i] * (residual > 0 ? tau : tau - 1);
            _psi += psi;
            _psiT += psi * _t[i];
            Objective += psi * residual;
        }
    }

    private bool TryTurnDown(out int pivot)
    {
        var steepest = -Tolerance;
        pivot = -1;
        foreach (var point in _onLine)
        {
            var derivative = Math.Min(Derivative(point, 1), Derivative(point, -1));
            if (derivative < steepest)
                (steepest, pivot) = (derivative, point);
        }

        return pivot >= 0;
    }

    private bool TryTurnLevel(int direction, double slope, out (double Intercept, double Slope) next)
    {
        foreach (var pivot in _onLine)
        {
            if (Derivative(pivot, direction) > Tolerance || !TryNextSlope(pivot, direction, slope, out var turned))
                continue;

            next = (_y[pivot] - turned * _t[pivot], turned);
            return true;
        }

        next = default;
        return false;
    }

    private double Tolerance => 1e-10 * _totalWeight * _rangeT;

    // Change of the objective per unit of slope when the line turns about a point on it, up (1) or down (-1).
    private double Derivative(int pivot, int direction)
    {
        var change = -direction * (_psiT - _t[pivot] * _psi);
        foreach (var i in _onLine)
        {
            var residual = -direction * (_t[i] - _t[pivot]);
            change += _weight[i] * residual * (residual > 0 ? tau : tau - 1);
        }

        return change;
    }

    private bool TryNextSlope(int pivot, int direction, double slope, out double next)
    {
        var step = double.PositiveInfinity;
        var least = 1e-10 * (_rangeY / _rangeT + Math.Abs(slope));
        for (var i = 0; i < Count; i++)
        {
            var h = _t[i] - _t[pivot];
            if (h == 0)
                continue;
            var ahead = direction * ((_y[i] - _y[pivot]) / h - slope);
            if (ahead > least && ahead < step)
                step = ahead;
        }

        next = slope + direction * step;
        return double.IsFinite(step);
    }
}
