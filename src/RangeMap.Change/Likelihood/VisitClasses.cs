namespace RangeMap.Change;

/// <summary>What the visits of one season to one square say if the square is occupied.</summary>
/// <param name="Found">True where a visit found the taxon.</param>
/// <param name="LogChance">ln of the chance of the finds.</param>
/// <param name="Chance">That chance; only computed where there is no find.</param>
/// <param name="Score">Slope of LogChance on the season's logit of detection.</param>
/// <param name="SlopeScore">Its slope on the coefficient of the class.</param>
/// <param name="Information">Information on the logit of detection.</param>
/// <param name="CrossInformation">Information on both.</param>
/// <param name="SlopeInformation">Information on the coefficient of the class.</param>
internal readonly record struct SeasonOfSite(
    bool Found, double LogChance, double Chance, double Score, double SlopeScore, double Information, double CrossInformation, double SlopeInformation);

/// <summary>Chance of a find for each season and class of visit: logit p = detection of the season + slope times the class.</summary>
internal sealed class VisitClasses
{
    private readonly int _classes;
    private readonly ClassOfVisit[] _chances;

    internal VisitClasses(double[] place, OccupancyParameters at, double[] classes)
    {
        (_classes, _chances) = (classes.Length, new ClassOfVisit[at.Seasons * classes.Length]);
        for (var i = 0; i < _chances.Length; i++)
        {
            var x = classes[i % classes.Length];
            var logit = place[at.Detection(i / classes.Length)] + (at.Slope ? place[at.SlopeAt] * x : 0);
            double p = OccupancyParameters.Logistic(logit), q = OccupancyParameters.Logistic(-logit);
            _chances[i] = new(x, Math.Log(q), logit, p, p * x, p * q, p * q * x, p * q * x * x);
        }
    }

    /// <summary>Reads the stretch of one season.</summary>
    /// <param name="season">The season.</param>
    /// <param name="visits">Visits to the square, all seasons.</param>
    /// <param name="finds">Finds in the same order; empty where there are none.</param>
    internal SeasonOfSite Season(int season, ReadOnlySpan<int> visits, ReadOnlySpan<int> finds)
    {
        double log = 0, score = 0, slope = 0, information = 0, cross = 0, squared = 0;
        var chances = _chances.AsSpan(season * _classes, _classes);
        visits = visits.Slice(season * _classes, _classes);
        for (var k = 0; k < chances.Length; k++)
        {
            ref readonly var of = ref chances[k];
            double n = visits[k];
            (log, score, slope) = (log + n * of.LogMiss, score - n * of.P, slope - n * of.PX);
            (information, cross, squared) = (information + n * of.W, cross + n * of.WX, squared + n * of.WXX);
        }

        var found = false;
        for (var k = 0; !finds.IsEmpty && k < chances.Length; k++)
        {
            var hits = finds[season * _classes + k];
            found |= hits > 0;
            (log, score, slope) = (log + hits * chances[k].Logit, score + hits, slope + hits * chances[k].X);
        }

        return new(found, log, found ? 0 : Math.Exp(log), score, slope, information, cross, squared);
    }

    /// <summary>Chance that the visits of a season find the taxon at least once where it is.</summary>
    internal double Detection(int season, ReadOnlySpan<int> visits)
    {
        double log = 0;
        for (var i = season * _classes; i < (season + 1) * _classes; i++)
            log += visits[i] * _chances[i].LogMiss;
        return 1 - Math.Exp(log);
    }

    /// <summary>A season and class: its column x, ln(1 - p), logit p, p, p x, and with w = p (1 - p) also w, w x, w x x.</summary>
    private readonly record struct ClassOfVisit(double X, double LogMiss, double Logit, double P, double PX, double W, double WX, double WXX);
}
