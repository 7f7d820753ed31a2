namespace RangeMap.Change;

/// <summary>Mean and variance of numbers as they come (Welford 1962): no loss where the numbers are large and nearly the same.</summary>
internal struct Moments
{
    private double _squares;

    /// <summary>How many numbers.</summary>
    public int N { get; private set; }

    /// <summary>Their mean; 0 without any.</summary>
    public double Mean { get; private set; }

    /// <summary>Their variance, by N - 1; 0 for fewer than two.</summary>
    public readonly double Variance => N < 2 ? 0 : _squares / (N - 1);

    /// <summary>Takes a number in.</summary>
    public void Add(double value)
    {
        N++;
        var off = value - Mean;
        Mean += off / N;
        _squares += off * (value - Mean);
    }
}
