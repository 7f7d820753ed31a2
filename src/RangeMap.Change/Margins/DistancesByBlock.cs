namespace RangeMap.Change;

/// <summary>Distances of one period's squares from the rear of the range, and the gamma margin of all of them, of a draw of blocks or of a draw of records.</summary>
internal sealed class DistancesByBlock
{
    // A gamma distribution has two parameters: with fewer squares than this a draw says nothing about its tail.
    private const int LeastSquares = 10;

    // Numbers that Pcg draws lie below this.
    private const double Range32 = 4294967296;

    private readonly double[] _distances;
    private readonly double[] _logs;
    private readonly long[] _limits;
    private readonly GammaQuantiles _quantiles;
    private readonly Sums[] _blocks;

    private DistancesByBlock(int count, int blocks, MarginFrame margin) =>
        (_distances, _logs, _limits, _blocks, _quantiles) = (new double[count], new double[count], new long[count], new Sums[blocks], margin.Gamma!);

    /// <summary>Measures one period.</summary>
    /// <param name="frame">The survey.</param>
    /// <param name="range">The taxon.</param>
    /// <param name="records">Its records in that period.</param>
    /// <param name="margin">The direction.</param>
    /// <param name="blocks">Blocks that hold the taxon.</param>
    /// <param name="rear">Kilometres outwards at which the range begins, in either period.</param>
    public static DistancesByBlock Of(SurveyFrame frame, TaxonRange range, int[] records, MarginFrame margin, HeldBlocks blocks, double rear)
    {
        var (squares, n) = (new DistancesByBlock(records.Length - records.AsSpan().Count(0), blocks.Count, margin), 0);
        for (var i = 0; i < records.Length; i++)
        {
            if (records[i] == 0)
                continue;
            var distance = margin.Along[range.Squares[i]] - rear;
            (squares._distances[n], squares._logs[n], squares._limits[n]) = (distance, Math.Log(distance), (long)(frame.Thinned.Of(records[i]) * Range32));
            squares._blocks[blocks.Of(range.Squares[i])].Add(1, distance, squares._logs[n++]);
        }

        return squares;
    }

    /// <summary>The margin, km from the rear, of all squares; solved exactly.</summary>
    public double Margin() => GammaFit.To(_distances).Quantile(_quantiles.Share);

    /// <summary>The margin of a draw of blocks; NaN where it holds too few squares.</summary>
    public double Margin(ReadOnlySpan<byte> times)
    {
        var sums = new Sums();
        for (var block = 0; block < times.Length; block++)
            sums.Add(times[block], _blocks[block]);
        return MarginOf(sums);
    }

    /// <summary>
    /// The margin of a draw of records; NaN where it leaves too few squares. Every square has exactly the probability of being left that
    /// drawing without replacement gives it; that squares hang on each other through the common pool, by about one in as many as the
    /// pool has records, is passed over, which makes the draw ten times faster.
    /// </summary>
    public double Margin(Pcg chance)
    {
        var (n, km, logs) = (0L, 0.0, 0.0);
        for (var i = 0; i < _limits.Length; i++)
        {
            // 1 where the number drawn is below the limit, without a branch that no processor could foresee.
            var left = (long)((ulong)(chance.NextUInt() - _limits[i]) >> 63);
            n += left;
            km += left * _distances[i];
            logs += left * _logs[i];
        }

        return MarginOf(new() { N = (int)n, Km = km, Logs = logs });
    }

    private double MarginOf(in Sums sums) =>
        sums.N < LeastSquares ? double.NaN : _quantiles.Of(sums.Km / sums.N, Math.Log(sums.Km / sums.N) - sums.Logs / sums.N);

    private struct Sums
    {
        public int N;
        public double Km;
        public double Logs;

        public void Add(int times, double km, double log) => (N, Km, Logs) = (N + times, Km + times * km, Logs + times * log);

        public void Add(int times, in Sums other) => (N, Km, Logs) = (N + times * other.N, Km + times * other.Km, Logs + times * other.Logs);
    }
}
