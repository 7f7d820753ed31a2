namespace RangeMap.Change;

/// <summary>The years in which an arrival may fall: one step a year, the first standing for all before it and the last for all after it.</summary>
/// <param name="First">The first year.</param>
/// <param name="Count">Number of years.</param>
internal readonly record struct YearLadder(int First, int Count)
{
    /// <summary>Years before the first visit and after the last one that are told apart.</summary>
    private const int Before = 15, After = 25;

    /// <summary>The last year, which stands for later ones too.</summary>
    public int Last => First + Count - 1;

    /// <summary>Number of years from the first visit to the last.</summary>
    public int Watched => Count - Before - After;

    public static YearLadder Of(int firstVisit, int lastVisit) => new(firstVisit - Before, lastVisit - firstVisit + 1 + Before + After);

    /// <summary>Fills in the chance of each year under a normal distribution; the ends take the tails. Each is taken from the tail on its own side, which keeps chances of far years.</summary>
    public void Prior(double mean, double deviation, Span<double> chances)
    {
        double below = 0, above = 1;
        for (var i = 0; i < Count - 1; i++)
        {
            var z = (First + i + 0.5 - mean) / deviation;
            var (beyond, _) = NormalCurve.BeyondAndDensity(Math.Min(Math.Abs(z), NormalCurve.Farthest));
            var (upTo, past) = z < 0 ? (beyond, 1 - beyond) : (1 - beyond, beyond);
            chances[i] = Math.Max(z < 0 ? upTo - below : above - past, 1e-300);
            (below, above) = (upTo, past);
        }

        chances[Count - 1] = Math.Max(above, 1e-300);
    }
}
