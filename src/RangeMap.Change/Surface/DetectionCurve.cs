namespace RangeMap.Change;

/// <summary>Chance that a visit finds the species where it is: logit p = a + b ln(1 + list length) (docs/methods/arrival-surface.md, eq. 4).</summary>
/// <param name="A">Logit of the chance on a visit that notes nothing else.</param>
/// <param name="B">Rise with the logarithm of the list length.</param>
public readonly record struct DetectionCurve(double A, double B)
{
    private const double LeastChance = 0.005, MostChance = 0.995;

    /// <summary>The chance for a list length, held away from 0 and 1.</summary>
    public double Chance(int listLength) => Math.Clamp(1 / (1 + Math.Exp(-(A + B * Math.Log(1.0 + listLength)))), LeastChance, MostChance);

    /// <summary>Two steps of Newton's method towards the curve that fits visits best; a slight pull towards one half keeps few visits from running away.</summary>
    /// <param name="classes">List length, weight of visits that found, weight of visits that found nothing though the species was there.</param>
    internal DetectionCurve Improved(IReadOnlyCollection<(int ListLength, double Found, double Missed)> classes)
    {
        const double pull = 0.05;
        var (a, b) = (A, B);
        for (var step = 0; step < 2; step++)
        {
            double ga = -pull * a, gb = -pull * b, haa = pull, hab = 0, hbb = pull;
            foreach (var (length, found, missed) in classes)
            {
                var x = Math.Log(1.0 + length);
                var p = 1 / (1 + Math.Exp(-(a + b * x)));
                var (residual, weight) = (found - (found + missed) * p, (found + missed) * p * (1 - p));
                (ga, gb) = (ga + residual, gb + residual * x);
                (haa, hab, hbb) = (haa + weight, hab + weight * x, hbb + weight * x * x);
            }

            var determinant = haa * hbb - hab * hab;
            if (!(determinant > 1e-12))
                return new(a, b);
            a = Math.Clamp(a + Math.Clamp((ga * hbb - gb * hab) / determinant, -1, 1), -7, 7);
            b = Math.Clamp(b + Math.Clamp((gb * haa - ga * hab) / determinant, -1, 1), -3, 3);
        }

        return new(a, b);
    }
}
