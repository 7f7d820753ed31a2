namespace RangeMap.Change;

/// <summary>
/// The northern margin as the 95 % quantile of a gamma distribution of distances from the rear of the range (docs/methods/margins.md, eq. 6 to 8). Hassall and
/// Thompson 2010, Methods in Ecology and Evolution 1:343-350. Less moved by one square far out than a mean of ten.
/// </summary>
internal static class GammaMargin
{
    private const double Share = 0.95;

    public static ChangeEstimate Measure(TaxonSquares taxon)
    {
        const string method = ChangeMethods.MarginGamma, unit = "km";
        var n = Math.Min(taxon.Before.Length, taxon.After.Length);
        if (n < taxon.Options.LeastMarginSquares)
        {
            return ChangeEstimate.Refuse(
                taxon.Taxon, method, unit, n, $"Not enough squares: {taxon.Before.Length} and {taxon.After.Length} of at least {taxon.Options.LeastMarginSquares} in each period.");
        }

        var rear = taxon.Before.Concat(taxon.After).Min(square => taxon.Squares[square].Centre.Y) - taxon.Options.SquareSideKm;
        var (before, after) = (Sums(taxon, later: false, rear), Sums(taxon, later: true, rear));
        if (Margin(before) is not { } marginBefore || Margin(after) is not { } marginAfter)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, "All squares lie at one distance from the rear of the range, so no distribution can be fitted.");
        var error = Error(before, after, out var blocks);
        var shift = marginAfter - marginBefore;
        var reach = StudentQuantile.Of(Math.Max(1, blocks - 1)) * error;
        return ChangeEstimate.Of(taxon.Taxon, method, unit, n, shift, new(shift - reach, shift + reach)) with
        {
            Before = rear + marginBefore,
            After = rear + marginAfter,
            Note = "Northern margin at equal effort, from the distances of all squares behind it.",
        };
    }

    /// <summary>Weight, distance and logarithm of distance summed by block; the weight is the chance that the square is still found at equal effort.</summary>
    private static (double N, double X, double Log)[] Sums(TaxonSquares taxon, bool later, double rear)
    {
        var sums = new (double N, double X, double Log)[taxon.Blocks.Count];
        foreach (var find in taxon.Prepared.Survey.Periods[later ? ^1 : 0].Found.OfTaxon(taxon.Taxon))
        {
            ref var block = ref sums[taxon.Blocks.OfSquare[find.Index]];
            var (weight, x) = (taxon.Prepared.Thinning.ChanceKept(find.Records, later), taxon.Squares[find.Index].Centre.Y - rear);
            block = (block.N + weight, block.X + weight * x, block.Log + weight * Math.Log(x));
        }

        return sums;
    }

    private static double? Margin((double N, double X, double Log)[] sums)
    {
        var (mean, meanLog, _) = Means(sums);
        return GammaFit.Of(mean, meanLog)?.Quantile(Share);
    }

    private static (double Mean, double MeanLog, double N) Means((double N, double X, double Log)[] sums)
    {
        double n = 0, x = 0, log = 0;
        foreach (var block in sums)
            (n, x, log) = (n + block.N, x + block.X, log + block.Log);
        return (x / n, log / n, n);
    }

    /// <summary>Standard error of the shift: the influence of each block on both margins, to first order.</summary>
    private static double Error((double N, double X, double Log)[] before, (double N, double X, double Log)[] after, out int blocks)
    {
        var (gradientBefore, gradientAfter) = (Gradient(before), Gradient(after));
        var squares = 0.0;
        blocks = 0;
        for (var b = 0; b < before.Length; b++)
        {
            if (before[b].N == 0 && after[b].N == 0)
                continue;
            blocks++;
            var influence = Influence(after[b], after, gradientAfter) - Influence(before[b], before, gradientBefore);
            squares += influence * influence;
        }

        return blocks < 2 ? double.NaN : Math.Sqrt(squares * blocks / (blocks - 1));
    }

    private static double Influence((double N, double X, double Log) block, (double N, double X, double Log)[] all, (double Mean, double Log) gradient)
    {
        var (mean, meanLog, n) = Means(all);
        return (gradient.Mean * (block.X - block.N * mean) + gradient.Log * (block.Log - block.N * meanLog)) / n;
    }

    /// <summary>How the margin changes with the mean and with the mean logarithm, by central differences.</summary>
    private static (double Mean, double Log) Gradient((double N, double X, double Log)[] sums)
    {
        var (mean, meanLog, _) = Means(sums);
        var s = Math.Log(mean) - meanLog;
        var (byMean, byLog) = (1e-3 * s * mean, 1e-3 * s);
        return (
            (At(mean + byMean, meanLog) - At(mean - byMean, meanLog)) / (2 * byMean),
            (At(mean, meanLog + byLog) - At(mean, meanLog - byLog)) / (2 * byLog));
        static double At(double mean, double log) => GammaFit.Of(mean, log)?.Quantile(Share) ?? double.NaN;
    }
}
