using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>
/// Interval of the front speed by resampling whole wedges of squares (docs/methods/spread.md, eq. 5).
/// </summary>
/// <remarks>
/// Neighbouring squares share weather, ground and recorders, so squares are no independent draws. Seen from the origin
/// a wedge of bearings holds a front of its own from its first year to its last, while a compact block would hold only
/// a few years of it; so the wedge is the block. Wedges hold equal numbers of squares, whatever the coast leaves open.
/// Where only distances are known each square is its own block.
/// </remarks>
internal static class BlockBootstrap
{
    /// <summary>The interval; null when fewer than nine in ten resamples have a line.</summary>
    internal static Interval? SlopeInterval(FirstRecords records, QuantileLine line, SpreadOptions options)
    {
        var blocks = BlocksOf(records, options.Blocks);
        var descent = new QuantileDescent(records.Count, options.Quantile);
        var counts = new int[blocks.Length];
        var slopes = new List<double>(options.Resamples);
        for (var resample = 0; resample < options.Resamples; resample++)
        {
            // A stream to each resample: the number of resamples does not change those already drawn.
            var chance = new Pcg(options.Seed, (ulong)resample);
            Draw(counts, ref chance);
            Load(descent, records, blocks, counts);
            if (descent.TrySolve(line.Slope, out var drawn))
                slopes.Add(drawn.Slope);
        }

        return slopes.Count < 0.9 * options.Resamples ? null : Around(line.Slope, slopes, blocks.Length, options.Confidence);
    }

    /// <summary>Indices of the squares of each block.</summary>
    internal static int[][] BlocksOf(FirstRecords records, int wanted)
    {
        if (records.Origin is null)
            return [.. Enumerable.Range(0, records.Count).Select(i => new[] { i })];

        return BearingWedges.Of(Array.ConvertAll(records.Squares, square => square.Bearing), _ => true, wanted);
    }

    private static void Draw(int[] counts, ref Pcg chance)
    {
        Array.Clear(counts);
        for (var i = 0; i < counts.Length; i++)
            counts[chance.NextIndex(counts.Length)]++;
    }

    private static void Load(QuantileDescent descent, FirstRecords records, int[][] blocks, int[] counts)
    {
        descent.Clear();
        for (var b = 0; b < blocks.Length; b++)
        {
            if (counts[b] == 0)
                continue;
            foreach (var i in blocks[b])
                descent.Add(records.Times[i] - records.Times[0], records.Distances[i], counts[b]);
        }
    }

    // Student's t with one degree of freedom less than there are blocks widens the interval where blocks are few;
    // the factor restores the variance that resampling b blocks understates by (b - 1) / b.
    private static Interval Around(double slope, List<double> slopes, int blocks, double confidence)
    {
        var mean = slopes.Average();
        var variance = slopes.Sum(s => (s - mean) * (s - mean)) / (slopes.Count - 1) * blocks / (blocks - 1);
        var half = StudentT.InvCDF(0, 1, blocks - 1, 0.5 + confidence / 2) * Math.Sqrt(variance);
        return new(slope - half, slope + half);
    }
}
