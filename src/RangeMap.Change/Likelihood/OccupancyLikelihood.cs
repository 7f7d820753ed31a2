namespace RangeMap.Change;

/// <summary>
/// Likelihood of an occupancy-detection model of one season or several with its slopes (docs/methods/occupancy.md, eq. 1 to 5; MacKenzie
/// and others 2002 and 2003). A square's likelihood is a sum over the paths that occupancy may have taken; its slopes are means over the
/// same paths (Fisher's identity), and its information theirs less their variance (Louis 1982). All of it is exact.
/// </summary>
internal sealed class OccupancyLikelihood
{
    private readonly OccupancySites _sites;
    private readonly OccupancyParameters _at;
    private readonly double _prior;
    private readonly double[] _chance;
    private readonly double[] _weights;
    private readonly double[][] _base;
    private readonly PathSums _sums;
    private readonly SeasonOfSite[] _seasons;

    /// <param name="sites">The data.</param>
    /// <param name="prior">Weight of the Jeffreys penalty on each parameter of occupancy, 0 for none, 1 for all of it.</param>
    internal OccupancyLikelihood(OccupancySites sites, double prior)
    {
        (_sites, _prior, _at) = (sites, prior, new(sites.Seasons, sites.Classes.Length > 1));
        var paths = 1 << sites.Seasons;
        (_chance, _weights, _seasons) = (new double[paths], new double[paths], new SeasonOfSite[sites.Seasons]);
        _base = [.. Enumerable.Range(0, paths).Select(_ => new double[_at.OfOccupancy])];
        _sums = new(_at, _base);
    }

    internal OccupancyParameters At => _at;

    internal double[] Score { get; private set; } = [];

    /// <summary>Observed information at the last place.</summary>
    internal double[,] Information { get; private set; } = new double[0, 0];

    /// <summary>Information if occupancy were seen; positive definite wherever there are visits, and a safe step where the observed one is not.</summary>
    internal double[,] Complete { get; private set; } = new double[0, 0];

    internal double LogLikelihood { get; private set; }

    /// <summary>Computes likelihood, slopes and informations at a place.</summary>
    internal void Evaluate(double[] place)
    {
        SetPaths(place);
        _sums.Clear();
        LogLikelihood = 0;
        var visits = new VisitClasses(place, _at, _sites.Classes);
        for (var site = 0; site < _sites.Count; site++)
            Add(site, visits);
        (Score, Complete, Information) = _sums.Slopes();
        AddPenalty(place);
    }

    // Chance of each path of occupancy, and the part of its score that no visit changes.
    private void SetPaths(double[] place)
    {
        for (var path = 0; path < _base.Length; path++)
        {
            var (score, chance, occupied) = (_base[path], 1.0, false);
            Array.Clear(score);
            for (var season = 0; season < _at.Seasons; season++)
            {
                // The parameter that decides this season, and whether the event it is the chance of took place.
                var parameter = season == 0 ? OccupancyParameters.First : occupied ? OccupancyParameters.Extinction(season - 1) : OccupancyParameters.Colonisation(season - 1);
                var next = (path >> season & 1) != 0;
                var (p, happened) = (OccupancyParameters.Logistic(place[parameter]), season > 0 && occupied ? !next : next);
                score[parameter] = (happened ? 1 : 0) - p;
                chance *= happened ? p : OccupancyParameters.Logistic(-place[parameter]);
                occupied = next;
            }

            _chance[path] = chance;
        }
    }

    private void Add(int site, VisitClasses visits)
    {
        ReadOnlySpan<int> all = _sites.Visits(site), finds = _sites.Finds(site);
        var (must, log) = (0, 0.0);
        for (var season = 0; season < _at.Seasons; season++)
        {
            _seasons[season] = visits.Season(season, all, finds);
            if (!_seasons[season].Found)
                continue;
            // A season with a find is on every path that counts, so its chance stands before the sum.
            must |= 1 << season;
            log += _seasons[season].LogChance;
            _seasons[season] = _seasons[season] with { Chance = 1 };
        }

        double sum = 0;
        for (var path = 0; path < _weights.Length; path++)
        {
            var weight = (path & must) == must ? _chance[path] : 0;
            for (var season = 0; season < _at.Seasons; season++)
                weight *= (path >> season & 1) != 0 ? _seasons[season].Chance : 1;
            _weights[path] = weight;
            sum += weight;
        }

        LogLikelihood += log + Math.Log(sum);
        _sums.Add(_weights, sum, _seasons);
    }

    // Half the logarithm of p (1 - p): half a find and half a miss more, which keeps every chance off 0 and 1.
    private void AddPenalty(double[] place)
    {
        for (var parameter = 0; _prior > 0 && parameter < _at.OfOccupancy; parameter++)
        {
            double p = OccupancyParameters.Logistic(place[parameter]), q = OccupancyParameters.Logistic(-place[parameter]);
            LogLikelihood += _prior / 2 * (Math.Log(p) + Math.Log(q));
            Score[parameter] += _prior / 2 * (q - p);
            Complete[parameter, parameter] += _prior * p * q;
            Information[parameter, parameter] += _prior * p * q;
        }
    }
}
