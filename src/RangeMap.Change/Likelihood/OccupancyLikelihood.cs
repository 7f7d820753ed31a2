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
    private readonly double[] _logPrior;
    private readonly double[][] _base;
    private readonly SeasonOfSite[] _seasons;
    private readonly double[] _mean;
    private readonly double[] _path;
    private readonly double[] _weights;

    /// <param name="sites">The data.</param>
    /// <param name="prior">Weight of the Jeffreys penalty on each parameter of occupancy, 0 for none, 1 for all of it.</param>
    internal OccupancyLikelihood(OccupancySites sites, double prior)
    {
        (_sites, _prior, _at) = (sites, prior, new(sites.Seasons, sites.Classes.Length > 1));
        var paths = 1 << sites.Seasons;
        (_logPrior, _weights, _base) = (new double[paths], new double[paths], new double[paths][]);
        for (var path = 0; path < paths; path++)
            _base[path] = new double[_at.Count];
        (_mean, _path, _seasons) = (new double[_at.Count], new double[_at.Count], new SeasonOfSite[sites.Seasons]);
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
        (Score, Information, Complete, LogLikelihood) = (new double[_at.Count], new double[_at.Count, _at.Count], new double[_at.Count, _at.Count], 0);
        SetPaths(place);
        var visits = new VisitClasses(place, _at, _sites.Classes);
        for (var site = 0; site < _sites.Count; site++)
            Add(site, visits);
        AddPenalty(place);
        for (var i = 0; i < _at.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Complete[i, j] = Complete[j, i];
                Information[i, j] = Information[j, i] + Complete[j, i];
                Information[j, i] = Information[i, j];
            }

            Information[i, i] += Complete[i, i];
        }
    }

    // Chance of each path of occupancy, and the part of its score that no visit changes.
    private void SetPaths(double[] place)
    {
        for (var path = 0; path < _base.Length; path++)
        {
            var (score, logPrior, occupied) = (_base[path], 0.0, false);
            Array.Clear(score);
            for (var season = 0; season < _at.Seasons; season++)
            {
                // The parameter that decides this season, and whether the event it is the chance of took place.
                var parameter = season == 0 ? OccupancyParameters.First : occupied ? OccupancyParameters.Extinction(season - 1) : OccupancyParameters.Colonisation(season - 1);
                var next = (path >> season & 1) != 0;
                var (chance, happened) = (OccupancyParameters.Logistic(place[parameter]), season > 0 && occupied ? !next : next);
                score[parameter] = (happened ? 1 : 0) - chance;
                logPrior += happened ? Math.Log(chance) : Math.Log(OccupancyParameters.Logistic(-place[parameter]));
                occupied = next;
            }

            _logPrior[path] = logPrior;
        }
    }

    private void Add(int site, VisitClasses visits)
    {
        var must = 0;
        for (var season = 0; season < _at.Seasons; season++)
        {
            _seasons[season] = visits.Season(season, _sites.Visits(site), _sites.Finds(site));
            must |= _seasons[season].Found ? 1 << season : 0;
        }

        var most = double.NegativeInfinity;
        for (var path = 0; path < _weights.Length; path++)
        {
            _weights[path] = (path & must) == must ? _logPrior[path] : double.NegativeInfinity;
            for (var season = 0; season < _at.Seasons; season++)
                _weights[path] += (path >> season & 1) != 0 ? _seasons[season].LogChance : 0;
            most = Math.Max(most, _weights[path]);
        }

        double sum = 0;
        for (var path = 0; path < _weights.Length; path++)
            sum += _weights[path] = Math.Exp(_weights[path] - most);
        LogLikelihood += most + Math.Log(sum);
        AddSlopes(sum);
    }

    private void AddSlopes(double sum)
    {
        Array.Clear(_mean);
        for (var path = 0; path < _weights.Length; path++)
        {
            var weight = _weights[path] / sum;
            if (weight == 0)
                continue;
            SetScore(path, weight);
            for (var i = 0; i < _path.Length; i++)
            {
                _mean[i] += weight * _path[i];
                for (var j = i; j < _path.Length; j++)
                    Information[i, j] -= weight * _path[i] * _path[j];
            }
        }

        for (var i = 0; i < _mean.Length; i++)
        {
            Score[i] += _mean[i];
            for (var j = i; j < _mean.Length; j++)
                Information[i, j] += _mean[i] * _mean[j];
        }
    }

    // Score of a path if it were seen, and its share of the information of occupancy seen.
    private void SetScore(int path, double weight)
    {
        _base[path].CopyTo(_path, 0);
        for (var parameter = 0; _at.IsOfOccupancy(parameter); parameter++)
        {
            // An event of chance p that could take place scores 1 - p or -p, so the information p (1 - p) is score times (sign - score).
            var score = _path[parameter];
            Complete[parameter, parameter] += weight * (score > 0 ? score * (1 - score) : -score * (1 + score));
        }

        for (var season = 0; season < _at.Seasons; season++)
        {
            if ((path >> season & 1) == 0)
                continue;
            ref readonly var seen = ref _seasons[season];
            var detection = _at.Detection(season);
            _path[detection] = seen.Score;
            Complete[detection, detection] += weight * seen.Information;
            if (!_at.Slope)
                continue;
            _path[_at.SlopeAt] += seen.SlopeScore;
            Complete[detection, _at.SlopeAt] += weight * seen.CrossInformation;
            Complete[_at.SlopeAt, _at.SlopeAt] += weight * seen.SlopeInformation;
        }
    }

    // Half the logarithm of p (1 - p): half a find and half a miss more, which keeps every chance off 0 and 1.
    private void AddPenalty(double[] place)
    {
        for (var parameter = 0; _prior > 0 && _at.IsOfOccupancy(parameter); parameter++)
        {
            double p = OccupancyParameters.Logistic(place[parameter]), q = OccupancyParameters.Logistic(-place[parameter]);
            LogLikelihood += _prior / 2 * (Math.Log(p) + Math.Log(q));
            Score[parameter] += _prior / 2 * (q - p);
            Complete[parameter, parameter] += _prior * p * q;
        }
    }
}
