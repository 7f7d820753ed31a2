namespace RangeMap.Change;

/// <summary>The share of squares that a species never lives in.</summary>
internal static class UnsuitedShare
{
    private const double Least = 1e-4, Most = 0.9, AllBut = 1 - 1e-12;

    /// <summary>
    /// The most likely share while all else stands: the likelihood is concave in it, so Newton's method ends within a few steps where the EM algorithm would take a hundred rounds.
    /// </summary>
    /// <param name="never">Chance of each square to be unsuited, reckoned with the share that was thought so far.</param>
    /// <param name="share">That share.</param>
    public static double Likeliest(double[] never, double share)
    {
        // How many times better being unsuited explains a square's visits than an arrival does.
        var times = Array.ConvertAll(never, chance => Math.Min(chance, AllBut) / (1 - Math.Min(chance, AllBut)) * (1 - share) / share);
        for (var step = 0; step < 20; step++)
        {
            double slope = 0, bend = 0;
            foreach (var better in times)
            {
                var relative = (better - 1) / (1 + share * (better - 1));
                (slope, bend) = (slope + relative, bend - relative * relative);
            }

            var next = Math.Clamp(bend < 0 ? share - slope / bend : share, Least, Most);
            if (Math.Abs(next - share) < 1e-6)
                return next;
            share = next;
        }

        return share;
    }
}
