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

    public static YearLadder Of(int firstVisit, int lastVisit) => new(firstVisit - Before, lastVisit - firstVisit + 1 + Before + After);

    /// <summary>Fills in the chance of each year under a normal distribution; the ends take the tails.</summary>
    public void Prior(double mean, double deviation, Span<double> chances)
    {
        var below = 0.0;
        for (var i = 0; i < Count - 1; i++)
        {
            var upTo = NormalCurve.Below((First + i + 0.5 - mean) / deviation);
            chances[i] = Math.Max(upTo - below, 1e-300);
            below = upTo;
        }

        chances[Count - 1] = Math.Max(1 - below, 1e-300);
    }
}
