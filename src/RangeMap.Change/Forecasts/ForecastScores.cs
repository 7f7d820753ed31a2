namespace RangeMap.Change;

/// <summary>How well chances that were given beforehand fit what happened (docs/methods/forecast.md, eq. 4 to 8).</summary>
/// <param name="N">Number of chances.</param>
/// <param name="Happened">How many of the events happened.</param>
/// <param name="Brier">Mean squared difference of chance and outcome, 0 to 1; 0 is perfect. Brier 1950, Monthly Weather Review 78:1-3.</param>
/// <param name="Log">Mean of minus the logarithm of the chance that was given to what happened; chances are held within 1e-6 of 0 and 1.</param>
/// <param name="Auc">Share of pairs of an event that happened and one that did not in which the former had the greater chance, ties one half; null without both.</param>
/// <param name="Slope">Slope of the logistic regression of outcome on the logit of the chance: 1 when the chances are as sharp as they may be, below 1 when too sharp; null when it cannot be fitted.</param>
/// <param name="Intercept">Its intercept: 0 when chances are neither too high nor too low.</param>
public sealed record ForecastScores(int N, int Happened, double Brier, double Log, double? Auc, double? Slope, double? Intercept)
{
    private const double Clip = 1e-6;
    private const int MostSteps = 100;

    // No forecast is so timid: events are parted from the others, and the slope is on its way to infinity.
    private const double Steepest = 100;

    /// <summary>Scores chances; null for none.</summary>
    /// <param name="chances">Chance given, 0 to 1, and whether it happened.</param>
    public static ForecastScores? Of(IReadOnlyList<(double Chance, bool Happened)> chances)
    {
        if (chances.Count == 0)
            return null;
        var brier = chances.Average(c => (c.Chance - (c.Happened ? 1 : 0)) * (c.Chance - (c.Happened ? 1 : 0)));
        var log = chances.Average(c => -Math.Log(c.Happened ? Held(c.Chance) : 1 - Held(c.Chance)));
        var (slope, intercept) = Calibration(chances);
        return new(chances.Count, chances.Count(c => c.Happened), brier, log, AreaUnderCurve(chances), slope, intercept);
    }

    /// <summary>1 - Brier / Brier of a reference: above 0 when better than the reference; null for a perfect reference.</summary>
    public double? SkillAgainst(ForecastScores reference) => reference.Brier > 0 ? 1 - Brier / reference.Brier : null;

    private static double Held(double chance) => Math.Clamp(chance, Clip, 1 - Clip);

    /// <summary>By ranks: the Mann-Whitney statistic.</summary>
    private static double? AreaUnderCurve(IReadOnlyList<(double Chance, bool Happened)> chances)
    {
        var happened = chances.Count(c => c.Happened);
        if (happened == 0 || happened == chances.Count)
            return null;
        var sorted = chances.OrderBy(c => c.Chance).ToArray();
        var ranks = 0.0;
        for (var i = 0; i < sorted.Length;)
        {
            var end = i;
            while (end < sorted.Length && sorted[end].Chance == sorted[i].Chance)
                end++;
            var middle = (i + end + 1) / 2.0;
            for (; i < end; i++)
                ranks += sorted[i].Happened ? middle : 0;
        }

        return (ranks - happened * (happened + 1) / 2.0) / ((double)happened * (chances.Count - happened));
    }

    private static (double? Slope, double? Intercept) Calibration(IReadOnlyList<(double Chance, bool Happened)> chances)
    {
        var happened = chances.Count(c => c.Happened);
        var x = chances.Select(c => Math.Log(Held(c.Chance) / (1 - Held(c.Chance)))).ToArray();
        if (happened == 0 || happened == chances.Count || x.Max() - x.Min() < 1e-9)
            return (null, null);
        // From the base rate: from ideal calibration Newton's steps fly off where chances were far too bold.
        double a = Math.Log((double)happened / (chances.Count - happened)), b = 0;
        double Log(double a, double b)
        {
            var sum = 0.0;
            for (var i = 0; i < x.Length; i++)
            {
                var z = chances[i].Happened ? a + b * x[i] : -a - b * x[i];
                sum -= z > 0 ? Math.Log(1 + Math.Exp(-z)) : Math.Log(1 + Math.Exp(z)) - z;
            }

            return sum;
        }

        var log = Log(a, b);
        for (var step = 0; step < MostSteps; step++)
        {
            double ga = 0, gb = 0, haa = 0, hab = 0, hbb = 0;
            for (var i = 0; i < x.Length; i++)
            {
                var p = 1 / (1 + Math.Exp(-(a + b * x[i])));
                var (residual, weight) = ((chances[i].Happened ? 1 : 0) - p, p * (1 - p));
                (ga, gb, haa, hab, hbb) = (ga + residual, gb + residual * x[i], haa + weight, hab + weight * x[i], hbb + weight * x[i] * x[i]);
            }

            var determinant = haa * hbb - hab * hab;
            if (!(determinant > 1e-12))
                return (null, null);
            double da = (ga * hbb - gb * hab) / determinant, db = (gb * haa - ga * hab) / determinant;
            // Chances near 0 and 1 make whole steps leap over the top; the likelihood is concave, so shortened ones come to it.
            double share = 1, there = Log(a + da, b + db);
            while (!(there >= log) && share > 1e-6)
            {
                share /= 2;
                there = Log(a + share * da, b + share * db);
            }

            (a, b, log) = (a + share * da, b + share * db, there);
            if (Math.Abs(share * da) + Math.Abs(share * db) < 1e-10)
                return Math.Abs(b) < Steepest ? (b, a) : (null, null);
        }

        // Chances that part all events from all others send the slope to infinity.
        return (null, null);
    }
}
