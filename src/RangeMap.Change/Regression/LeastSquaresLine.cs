using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>The straight line y = a + b t fitted by ordinary least squares (docs/methods/spread.md, eq. 2).</summary>
public sealed record LeastSquaresLine
{
    private LeastSquaresLine()
    {
    }

    /// <summary>a, in the unit of y, at t = 0.</summary>
    public double Intercept { get; private init; }

    /// <summary>b, in the unit of y per unit of t.</summary>
    public double Slope { get; private init; }

    /// <summary>Standard error of the slope for independent errors; 0 where all points lie on the line.</summary>
    public double SlopeError { get; private init; }

    /// <summary>Sum of the squared residuals.</summary>
    public double ResidualSquares { get; private init; }

    /// <summary>Share of the variance of y that the line explains, 0 to 1; 1 when y does not vary.</summary>
    public double RSquared { get; private init; }

    /// <summary>Correlation of each residual with the one before it, in the order given; 0 where all are 0.</summary>
    public double LagOneCorrelation { get; private init; }

    /// <summary>Number of points.</summary>
    public int N { get; private init; }

    /// <summary>Fits the line.</summary>
    /// <param name="t">At least three finite numbers, not all the same.</param>
    /// <param name="y">As many finite numbers.</param>
    /// <exception cref="ArgumentException">Fewer than three points, unequal lengths, or one value of t only.</exception>
    public static LeastSquaresLine Fit(ReadOnlySpan<double> t, ReadOnlySpan<double> y)
    {
        if (t.Length < 3 || t.Length != y.Length)
            throw new ArgumentException("A line needs at least three points, each with both numbers.", nameof(t));

        double meanT = Mean(t), meanY = Mean(y), tt = 0, ty = 0, yy = 0;
        for (var i = 0; i < t.Length; i++)
        {
            double dt = t[i] - meanT, dy = y[i] - meanY;
            tt += dt * dt;
            ty += dt * dy;
            yy += dy * dy;
        }

        if (!(tt > 0))
            throw new ArgumentException("A line needs at least two different values of t.", nameof(t));

        var slope = ty / tt;
        var residuals = new double[t.Length];
        for (var i = 0; i < t.Length; i++)
            residuals[i] = y[i] - meanY - slope * (t[i] - meanT);
        var (squares, lagged) = SumsOf(residuals);
        return new()
        {
            Slope = slope,
            Intercept = meanY - slope * meanT,
            ResidualSquares = squares,
            SlopeError = Math.Sqrt(squares / (t.Length - 2) / tt),
            RSquared = yy > 0 ? 1 - squares / yy : 1,
            LagOneCorrelation = squares > 0 ? lagged / squares : 0,
            N = t.Length,
        };
    }

    /// <summary>Interval of the slope for independent normal errors: Student's t with N - 2 degrees of freedom.</summary>
    /// <param name="confidence">Between 0 and 1, usually 0.95.</param>
    public Interval SlopeInterval(double confidence) => IntervalWith(confidence, SlopeError, N - 2);

    /// <summary>
    /// Interval of the slope when each residual resembles the one before it, as in a running maximum: the number of
    /// points is replaced by the number of independent ones, N (1 - r) / (1 + r), with r the lag-one correlation where
    /// positive (docs/methods/spread.md, eq. 4). Equal to <see cref="SlopeInterval"/> where r is not positive.
    /// </summary>
    /// <param name="confidence">Between 0 and 1, usually 0.95.</param>
    public Interval SerialSlopeInterval(double confidence)
    {
        var r = Math.Clamp(LagOneCorrelation, 0, 0.99);
        var inflation = Math.Sqrt((1 + r) / (1 - r));
        return IntervalWith(confidence, SlopeError * inflation, Math.Max(1, N * (1 - r) / (1 + r) - 2));
    }

    private Interval IntervalWith(double confidence, double error, double freedom)
    {
        var half = StudentT.InvCDF(0, 1, freedom, 0.5 + confidence / 2) * error;
        return new(Slope - half, Slope + half);
    }

    private static (double Squares, double Lagged) SumsOf(double[] residuals)
    {
        double squares = 0, lagged = 0;
        for (var i = 0; i < residuals.Length; i++)
        {
            squares += residuals[i] * residuals[i];
            if (i > 0)
                lagged += residuals[i] * residuals[i - 1];
        }

        return (squares, lagged);
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (var value in values)
            sum += value;
        return sum / values.Length;
    }
}
