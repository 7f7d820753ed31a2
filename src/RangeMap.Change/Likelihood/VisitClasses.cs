namespace RangeMap.Change;

/// <summary>What the visits of one season to one square say if the square is occupied.</summary>
/// <param name="LogChance">ln of the chance of the finds.</param>
/// <param name="Found">True where a visit found the taxon.</param>
/// <param name="Score">Slope of LogChance on the season's logit of detection.</param>
/// <param name="SlopeScore">Its slope on the coefficient of the class.</param>
/// <param name="Information">Information on the logit of detection.</param>
/// <param name="CrossInformation">Information on both.</param>
/// <param name="SlopeInformation">Information on the coefficient of the class.</param>
internal readonly record struct SeasonOfSite(
    double LogChance, bool Found, double Score, double SlopeScore, double Information, double CrossInformation, double SlopeInformation);

/// <summary>Chance of a find for each season and class of visit: logit p = detection of the season + slope times the class.</summary>
internal sealed class VisitClasses
{
    private readonly double[] _classes;
    private readonly (double P, double LogFind, double LogMiss)[] _chances;

    internal VisitClasses(double[] place, OccupancyParameters at, double[] classes)
    {
        (_classes, _chances) = (classes, new (double, double, double)[at.Seasons * classes.Length]);
        for (var i = 0; i < _chances.Length; i++)
        {
            var logit = place[at.Detection(i / classes.Length)] + (at.Slope ? place[at.SlopeAt] * classes[i % classes.Length] : 0);
            double p = OccupancyParameters.Logistic(logit), q = OccupancyParameters.Logistic(-logit);
            _chances[i] = (p, Math.Log(p), Math.Log(q));
        }
    }

    /// <summary>Reads the stretch of one season.</summary>
    /// <param name="season">The season.</param>
    /// <param name="visits">Visits to the square, all seasons.</param>
    /// <param name="finds">Finds in the same order; empty where there are none.</param>
    internal SeasonOfSite Season(int season, ReadOnlySpan<int> visits, ReadOnlySpan<int> finds)
    {
        double log = 0, score = 0, slope = 0, information = 0, cross = 0, squared = 0;
        var found = false;
        for (int k = 0, i = season * _classes.Length; k < _classes.Length; k++, i++)
        {
            if (visits[i] == 0)
                continue;
            var (p, logFind, logMiss) = _chances[i];
            var (x, hits) = (_classes[k], finds.IsEmpty ? 0 : finds[i]);
            double left = hits - visits[i] * p, weight = visits[i] * p * (1 - p);
            found |= hits > 0;
            log += hits * logFind + (visits[i] - hits) * logMiss;
            (score, slope) = (score + left, slope + left * x);
            (information, cross, squared) = (information + weight, cross + weight * x, squared + weight * x * x);
        }

        return new(log, found, score, slope, information, cross, squared);
    }

    /// <summary>Chance that the visits of a season find the taxon at least once where it is.</summary>
    internal double Detection(int season, ReadOnlySpan<int> visits)
    {
        double log = 0;
        for (int k = 0, i = season * _classes.Length; k < _classes.Length; k++, i++)
            log += visits[i] * _chances[i].LogMiss;
        return 1 - Math.Exp(log);
    }
}
