namespace RangeMap.Change;

/// <summary>
/// The quantile of a fitted gamma distribution by its mean is a function of s = ln mean - mean ln alone. It is tabled here, because hundreds
/// of draws a taxon ask for it and each exact one takes two searches; between its nodes it is off by less than 1 in 10,000.
/// </summary>
internal sealed class GammaQuantiles
{
    private const int Nodes = 400;
    private static readonly double _first = Math.Log(1e-6);
    private static readonly double _last = Math.Log(20);
    private readonly double[] _logRatio = new double[Nodes + 1];

    /// <summary>Tables one quantile.</summary>
    /// <param name="share">In (0, 1).</param>
    internal GammaQuantiles(double share)
    {
        Share = share;
        for (var i = 0; i <= Nodes; i++)
            _logRatio[i] = Math.Log(Exact(Math.Exp(_first + i * (_last - _first) / Nodes)));
    }

    /// <summary>Share of the distribution that lies below the quantile.</summary>
    internal double Share { get; }

    /// <summary>The quantile that belongs to a mean and s.</summary>
    /// <param name="mean">Mean distance.</param>
    /// <param name="spread">s, not negative but for rounding.</param>
    internal double Of(double mean, double spread)
    {
        if (spread <= 1e-6)
            return mean;
        var place = (Math.Log(spread) - _first) / (_last - _first) * Nodes;
        if (place >= Nodes)
            return mean * Exact(spread);
        var below = (int)place;
        return mean * Math.Exp(_logRatio[below] + (place - below) * (_logRatio[below + 1] - _logRatio[below]));
    }

    private double Exact(double spread)
    {
        var shape = GammaFit.ShapeOf(spread);
        return new GammaFit(shape, 1 / shape).Quantile(Share);
    }
}
