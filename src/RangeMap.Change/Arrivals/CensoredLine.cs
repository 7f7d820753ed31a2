using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>
/// The straight line T = b0 + b1 d + scale e of the time of arrival on distance, by maximum likelihood from intervals of arrival: the logarithm of the
/// likelihood is the sum of ln [F(b) - F(a)] (docs/methods/arrival-years.md, eq. 5). The speed of a front is 1 / b1.
/// </summary>
public sealed record CensoredLine
{
    private CensoredLine()
    {
    }

    /// <summary>Distribution of e.</summary>
    public ArrivalErrors Errors { get; private init; }

    /// <summary>b0, time of arrival at distance 0.</summary>
    public double Intercept { get; private init; }

    /// <summary>b1, units of time a kilometre.</summary>
    public double Slope { get; private init; }

    /// <summary>Scale of the errors in units of time: the standard deviation of gaussian ones; of logistic ones 0.551 of it.</summary>
    public double Scale { get; private init; }

    /// <summary>Logarithm of the likelihood.</summary>
    public double LogLikelihood { get; private init; }

    /// <summary>Standard error of the slope for independent squares, from the observed information.</summary>
    public double SlopeError { get; private init; }

    /// <summary>Number of intervals.</summary>
    public int N { get; private init; }

    /// <summary>Kilometres per unit of time, 1 / b1.</summary>
    public double Speed => 1 / Slope;

    /// <summary>Standard error of the speed to first order, SE(b1) / b1 squared.</summary>
    public double SpeedError => SlopeError / (Slope * Slope);

    /// <summary>How much each interval pulls at the slope, in the order given; clusters of squares get their error from these.</summary>
    internal double[] Pulls { get; private init; } = [];

    /// <summary>Fits the line, or says why there is none.</summary>
    /// <param name="squares">Distance in km and interval of arrival of each square.</param>
    /// <param name="errors">Distribution of the errors.</param>
    public static CensoredLineAnswer Fit(IReadOnlyList<(double DistanceKm, CensoredYear Arrival)> squares, ArrivalErrors errors = ArrivalErrors.Gaussian)
    {
        if (squares.Any(square => !double.IsFinite(square.DistanceKm) || !square.Arrival.IsSound))
            return new(null, ArrivalWords.Unsound);
        // Such intervals alone could be met by any line far enough down, or far enough up.
        if (squares.Where(square => double.IsFinite(square.Arrival.By)).Select(square => square.DistanceKm).Distinct().Count() < 2
            || squares.Where(square => double.IsFinite(square.Arrival.After)).Select(square => square.DistanceKm).Distinct().Count() < 2)
            return new(null, ArrivalWords.OneSided);
        if (LineThroughAll.Exists(squares))
            return new(null, ArrivalWords.Separable);
        return CensoredNewton.Climb(squares, errors) is { } top ? new(Of(top, squares.Count, errors), null) : new(null, ArrivalWords.NotSettled);
    }

    /// <summary>Interval of the slope for independent squares: the normal quantile times its error.</summary>
    /// <param name="confidence">Between 0 and 1, usually 0.95.</param>
    public Interval SlopeInterval(double confidence)
    {
        var half = Normal.InvCDF(0, 1, 0.5 + confidence / 2) * SlopeError;
        return new(Slope - half, Slope + half);
    }

    /// <summary>Interval of the speed, the inverse of that of the slope; null where that holds 0, for then the speed has no bound.</summary>
    /// <param name="confidence">Between 0 and 1, usually 0.95.</param>
    public Interval? SpeedInterval(double confidence) => Inverse(SlopeInterval(confidence));

    /// <summary>Logarithm of the likelihood of any line and scale.</summary>
    public static double LogLikelihoodOf(IEnumerable<(double DistanceKm, CensoredYear Arrival)> squares, double intercept, double slope, double scale, ArrivalErrors errors = ArrivalErrors.Gaussian) =>
        squares.Sum(square =>
        {
            var line = intercept + slope * square.DistanceKm;
            return Math.Log(ErrorCurve.Between(errors, (square.Arrival.After - line) / scale, (square.Arrival.By - line) / scale));
        });

    internal static Interval? Inverse(Interval slope) => slope.Low > 0 || slope.High < 0 ? new(1 / slope.High, 1 / slope.Low) : null;

    private static CensoredLine Of(CensoredNewton.Top top, int n, ArrivalErrors errors)
    {
        // The climb is in b0 / scale, b1 / scale and 1 / scale; to first order b1 changes by the gradient (0, scale, -b1 scale) of those.
        var (intercept, slope, scale) = (top.At[0] / top.At[2], top.At[1] / top.At[2], 1 / top.At[2]);
        double[] gradient = [0, scale, -slope * scale];
        var influence = PositiveMatrix.Times(top.Covariance, gradient);
        return new()
        {
            Errors = errors,
            Intercept = top.MeanTime + intercept - slope * top.MeanDistance,
            Slope = slope,
            Scale = scale,
            LogLikelihood = top.LogLikelihood,
            SlopeError = Math.Sqrt(PositiveMatrix.Form(gradient, top.Covariance, gradient)),
            N = n,
            Pulls = Array.ConvertAll(top.Scores, score => influence[0] * score[0] + influence[1] * score[1] + influence[2] * score[2]),
        };
    }
}

/// <summary>A fitted line, or the reason why there is none.</summary>
/// <param name="Line">The line; null when refused.</param>
/// <param name="Refused">A sentence; null when fitted.</param>
public sealed record CensoredLineAnswer(CensoredLine? Line, string? Refused);
