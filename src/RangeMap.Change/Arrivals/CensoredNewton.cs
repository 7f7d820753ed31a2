namespace RangeMap.Change;

/// <summary>
/// The climb to the top of the likelihood behind <see cref="CensoredLine"/>. In the parameters b0 / scale, b1 / scale and 1 / scale the logarithm of
/// the likelihood is concave, because the densities are log-concave (Burridge 1981, Journal of the Royal Statistical Society B 43:41-45): Newton's
/// steps, halved while they lose, lead to the one top from anywhere.
/// </summary>
internal static class CensoredNewton
{
    private const int Parameters = 3, MostSteps = 100;
    private const double Settled = 1e-9;

    /// <summary>Where the climb ended.</summary>
    /// <param name="At">b0 / scale, b1 / scale, 1 / scale, times and distances taken from their means.</param>
    /// <param name="Covariance">Inverse of the observed information about those.</param>
    /// <param name="Scores">Gradient of each square's logarithm of the likelihood there.</param>
    /// <param name="LogLikelihood">Their sum.</param>
    /// <param name="MeanTime">Mean time that was taken off.</param>
    /// <param name="MeanDistance">Mean distance that was taken off, km.</param>
    internal sealed record Top(double[] At, double[,] Covariance, double[][] Scores, double LogLikelihood, double MeanTime, double MeanDistance);

    /// <summary>The top; null where the steps do not settle.</summary>
    internal static Top? Climb(IReadOnlyList<(double DistanceKm, CensoredYear Arrival)> squares, ArrivalErrors errors)
    {
        // Squares whose two ends are known tell where to begin, and their means keep the numbers small.
        var (meanTime, meanDistance) = (squares.Average(s => s.Arrival.Middle), squares.Average(s => s.DistanceKm));
        var rows = squares.Select(s => new Row(s.DistanceKm - meanDistance, s.Arrival.After - meanTime, s.Arrival.By - meanTime)).ToArray();
        var at = Start(squares, meanTime);
        var here = Slopes.At(rows, at, errors);
        for (var step = 0; step < MostSteps && double.IsFinite(here.LogLikelihood); step++)
        {
            if (PositiveMatrix.Inverse(here.Information) is not { } covariance)
                return null;
            var move = PositiveMatrix.Times(covariance, here.Score);
            // Half the squared length of the step in units of its error is what it can still gain.
            if (move.Zip(here.Score, (m, s) => m * s).Sum() < Settled)
                return new(at, covariance, Array.ConvertAll(rows, row => row.Score(at, errors)), here.LogLikelihood, meanTime, meanDistance);
            if (!TryMove(rows, errors, at, move, ref here))
                return null;
        }

        return null;
    }

    // Level, with a scatter so wide that no interval is out of the question.
    private static double[] Start(IReadOnlyList<(double DistanceKm, CensoredYear Arrival)> squares, double meanTime)
    {
        var middles = squares.Select(s => s.Arrival.Middle - meanTime).ToArray();
        return [0, 0, 1 / Math.Max(1e-6, middles.Max(Math.Abs))];
    }

    private static bool TryMove(Row[] rows, ArrivalErrors errors, double[] at, double[] move, ref Slopes here)
    {
        for (var part = 1.0; part > 1e-8; part /= 2)
        {
            var next = new[] { at[0] + part * move[0], at[1] + part * move[1], at[2] + part * move[2] };
            if (!(next[2] > 0))
                continue;
            var there = Slopes.At(rows, next, errors);
            if (!(there.LogLikelihood >= here.LogLikelihood - 1e-12 * Math.Abs(here.LogLikelihood)))
                continue;
            next.CopyTo(at, 0);
            here = there;
            return true;
        }

        return false;
    }

    /// <summary>Distance and ends of one interval, means taken off.</summary>
    private readonly record struct Row(double Distance, double After, double By)
    {
        internal double[] Score(double[] at, ArrivalErrors errors)
        {
            var slopes = new Slopes();
            slopes.Add(this, at, errors);
            return slopes.Score;
        }
    }

    /// <summary>The logarithm of the likelihood with its gradient and the negative of its second derivatives.</summary>
    private sealed class Slopes
    {
        public double[] Score { get; } = new double[Parameters];

        public double[,] Information { get; } = new double[Parameters, Parameters];

        public double LogLikelihood { get; private set; }

        public static Slopes At(Row[] rows, double[] at, ArrivalErrors errors)
        {
            var slopes = new Slopes();
            foreach (var row in rows)
                slopes.Add(row, at, errors);
            return slopes;
        }

        public void Add(Row row, double[] at, ArrivalErrors errors)
        {
            var line = at[0] + at[1] * row.Distance;
            double low = row.After * at[2] - line, high = row.By * at[2] - line;
            var chance = ErrorCurve.Between(errors, low, high);
            LogLikelihood += Math.Log(chance);
            if (!(chance > 0))
                return;

            var (lowDensity, lowSlope) = ErrorCurve.Density(errors, low);
            var (highDensity, highSlope) = ErrorCurve.Density(errors, high);
            // Gradients of the two ends; an open end has no density, so its time may be anything.
            ReadOnlySpan<double> toLow = [-1, -row.Distance, double.IsFinite(row.After) ? row.After : 0];
            ReadOnlySpan<double> toHigh = [-1, -row.Distance, double.IsFinite(row.By) ? row.By : 0];
            Span<double> own = stackalloc double[Parameters];
            for (var j = 0; j < Parameters; j++)
                Score[j] += own[j] = (highDensity * toHigh[j] - lowDensity * toLow[j]) / chance;
            for (var j = 0; j < Parameters; j++)
            {
                for (var k = 0; k < Parameters; k++)
                    Information[j, k] += own[j] * own[k] - (highSlope * toHigh[j] * toHigh[k] - lowSlope * toLow[j] * toLow[k]) / chance;
            }
        }
    }
}
