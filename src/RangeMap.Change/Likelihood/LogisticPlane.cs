namespace RangeMap.Change;

/// <summary>Lists that are alike in both columns of a logistic regression.</summary>
/// <param name="U">First column.</param>
/// <param name="V">Second column.</param>
/// <param name="Lists">Number of lists, 0 or more.</param>
/// <param name="Finds">How many of them have the taxon; not more than <paramref name="Lists"/>.</param>
internal readonly record struct LogisticCell(double U, double V, double Lists, double Finds);

/// <summary>
/// logit P = b0 + b1 u + b2 v by maximum likelihood, on grouped counts: the cost is that of the cells, however many lists they hold
/// (docs/methods/list-length.md, eq. 1 and 2).
/// </summary>
internal sealed record LogisticPlane
{
    private const int Parameters = 3;
    private const int MostSteps = 30;
    private const double Settled = 1e-10;

    private LogisticPlane()
    {
    }

    /// <summary>b0, b1, b2.</summary>
    internal required double[] Coefficients { get; init; }

    /// <summary>Inverse of the information: the covariance where lists are independent.</summary>
    internal required double[,] Covariance { get; init; }

    /// <summary>Logarithm of the likelihood, without binomial constants.</summary>
    internal double LogLikelihood { get; private init; }

    /// <summary>P at a pair of values, as the coefficients have it.</summary>
    internal double At(double u, double v) => 1 / (1 + Math.Exp(-(Coefficients[0] + Coefficients[1] * u + Coefficients[2] * v)));

    /// <summary>
    /// Newton's steps, halved while they lose likelihood. Null where they do not settle: a line through the cells separates finds from
    /// the rest, or the columns are not independent, and no finite coefficient is the best.
    /// </summary>
    internal static LogisticPlane? Fit(ReadOnlySpan<LogisticCell> cells)
    {
        double lists = 0, finds = 0;
        foreach (var cell in cells)
            (lists, finds) = (lists + cell.Lists, finds + cell.Finds);
        if (!(finds > 0 && finds < lists))
            return null;

        var at = new double[] { Math.Log(finds / (lists - finds)), 0, 0 };
        var (score, information, logLikelihood) = Slopes(cells, at);
        for (var step = 0; step < MostSteps; step++)
        {
            if (PositiveMatrix.Inverse(information) is not { } covariance)
                return null;

            var move = PositiveMatrix.Times(covariance, score);
            if (move.Max(Math.Abs) < Settled)
                return new() { Coefficients = at, Covariance = covariance, LogLikelihood = logLikelihood };
            if (!TryMove(cells, at, move, ref score, ref information, ref logLikelihood))
                return null;
        }

        return null;
    }

    private static bool TryMove(ReadOnlySpan<LogisticCell> cells, double[] at, double[] move, ref double[] score, ref double[,] information, ref double logLikelihood)
    {
        for (var part = 1.0; part > 1e-4; part /= 2)
        {
            var next = new[] { at[0] + part * move[0], at[1] + part * move[1], at[2] + part * move[2] };
            var there = Slopes(cells, next);
            // At the top, rounding may lose the last digits of the likelihood.
            if (!(there.LogLikelihood >= logLikelihood - 1e-9 * Math.Abs(logLikelihood)))
                continue;

            next.CopyTo(at, 0);
            (score, information, logLikelihood) = there;
            return true;
        }

        return false;
    }

    private static (double[] Score, double[,] Information, double LogLikelihood) Slopes(ReadOnlySpan<LogisticCell> cells, double[] b)
    {
        double s0 = 0, s1 = 0, s2 = 0, i00 = 0, i01 = 0, i02 = 0, i11 = 0, i12 = 0, i22 = 0, logLikelihood = 0;
        foreach (var (u, v, lists, finds) in cells)
        {
            var logit = b[0] + b[1] * u + b[2] * v;
            // ln(1 + e^x) without overflow.
            var tail = Math.Exp(-Math.Abs(logit));
            logLikelihood += finds * logit - lists * (Math.Max(logit, 0) + Math.Log(1 + tail));
            var p = logit >= 0 ? 1 / (1 + tail) : tail / (1 + tail);
            double left = finds - lists * p, weight = lists * p * (1 - p);
            (s0, s1, s2) = (s0 + left, s1 + left * u, s2 + left * v);
            (i00, i01, i02) = (i00 + weight, i01 + weight * u, i02 + weight * v);
            (i11, i12, i22) = (i11 + weight * u * u, i12 + weight * u * v, i22 + weight * v * v);
        }

        return ([s0, s1, s2], new double[Parameters, Parameters] { { i00, i01, i02 }, { i01, i11, i12 }, { i02, i12, i22 } }, logLikelihood);
    }
}
