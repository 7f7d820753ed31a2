namespace RangeMap.Change;

/// <summary>
/// Sums over squares from which score and information of an occupancy model follow. The score of a path has a part of occupancy, the same
/// for all squares, and a part of detection; so most products are summed by path and multiplied out once at the end.
/// </summary>
/// <param name="at">The parameters.</param>
/// <param name="occupancy">Score of each path on the parameters of occupancy, as it stands when <see cref="Slopes"/> is called.</param>
internal sealed class PathSums(OccupancyParameters at, double[][] occupancy)
{
    private readonly double[] _weights = new double[occupancy.Length];
    private readonly double[] _detection = new double[occupancy.Length * at.OfDetection];
    private readonly double[] _products = new double[at.OfDetection * at.OfDetection];
    private readonly double[] _information = new double[at.Seasons];
    private readonly double[] _cross = new double[at.Seasons];
    private readonly double[] _score = new double[at.Count];
    private readonly double[] _squares = new double[at.Count * at.Count];
    private readonly double[] _mean = new double[at.Count];
    private readonly double[] _path = new double[at.OfDetection];
    private double _slopeInformation;

    internal void Clear()
    {
        foreach (Array sums in new Array[] { _weights, _detection, _products, _information, _cross, _score, _squares })
            Array.Clear(sums);
        _slopeInformation = 0;
    }

    /// <summary>Adds a square.</summary>
    /// <param name="weights">Weight of each path.</param>
    /// <param name="sum">Their sum, above 0.</param>
    /// <param name="seasons">What its visits say.</param>
    internal void Add(double[] weights, double sum, SeasonOfSite[] seasons)
    {
        Array.Clear(_mean);
        for (var path = 0; path < weights.Length; path++)
        {
            var weight = weights[path] / sum;
            if (weight == 0)
                continue;
            _weights[path] += weight;
            var score = occupancy[path];
            for (var i = 0; i < score.Length; i++)
                _mean[i] += weight * score[i];
            if (path != 0)
                AddDetection(path, weight, seasons);
        }

        for (var i = 0; i < _mean.Length; i++)
            _score[i] += _mean[i];
        AddProducts(_squares, 1, _mean);
    }

    /// <summary>Score, information if occupancy were seen, and observed information.</summary>
    internal (double[] Score, double[,] Complete, double[,] Observed) Slopes()
    {
        double[,] complete = new double[at.Count, at.Count], observed = new double[at.Count, at.Count];
        for (var i = 0; i < _squares.Length; i++)
            observed[i / at.Count, i % at.Count] = _squares[i];
        for (var path = 0; path < occupancy.Length; path++)
            AddOccupancy(path, complete, observed);
        AddInformation(complete);
        for (var i = 0; i < at.OfDetection; i++)
        {
            for (var j = 0; j <= i; j++)
                observed[at.OfOccupancy + i, at.OfOccupancy + j] -= _products[i * at.OfDetection + j];
        }

        for (var i = 0; i < at.Count; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                observed[i, j] += complete[i, j];
                (complete[j, i], observed[j, i]) = (complete[i, j], observed[i, j]);
            }
        }

        return ((double[])_score.Clone(), complete, observed);
    }

    private void AddDetection(int path, double weight, SeasonOfSite[] seasons)
    {
        var slope = 0.0;
        for (var season = 0; season < seasons.Length; season++)
        {
            var occupied = (path >> season & 1) != 0;
            ref readonly var seen = ref seasons[season];
            _path[season] = occupied ? seen.Score : 0;
            if (!occupied)
                continue;
            slope += seen.SlopeScore;
            _information[season] += weight * seen.Information;
            _cross[season] += weight * seen.CrossInformation;
            _slopeInformation += weight * seen.SlopeInformation;
        }

        if (at.Slope)
            _path[^1] = slope;
        Span<double> mean = _mean.AsSpan(at.OfOccupancy), detection = _detection.AsSpan(path * _path.Length, _path.Length);
        for (var i = 0; i < _path.Length; i++)
        {
            mean[i] += weight * _path[i];
            detection[i] += weight * _path[i];
        }

        AddProducts(_products, weight, _path);
    }

    // The lower triangle of weight times v v', added to a table of rows one after another.
    private static void AddProducts(double[] table, double weight, double[] v)
    {
        for (var i = 0; i < v.Length; i++)
        {
            var row = table.AsSpan(i * v.Length, i + 1);
            var weighted = weight * v[i];
            for (var j = 0; j < row.Length; j++)
                row[j] += weighted * v[j];
        }
    }

    private void AddOccupancy(int path, double[,] complete, double[,] observed)
    {
        for (var i = 0; i < at.OfOccupancy; i++)
        {
            var score = occupancy[path][i];
            // An event of chance p that could take place scores 1 - p or -p; either way the information p (1 - p) is |score| (1 - |score|).
            complete[i, i] += _weights[path] * Math.Abs(score) * (1 - Math.Abs(score));
            for (var j = 0; j <= i; j++)
                observed[i, j] -= _weights[path] * score * occupancy[path][j];
            for (var j = 0; j < at.OfDetection; j++)
                observed[at.OfOccupancy + j, i] -= score * _detection[path * at.OfDetection + j];
        }
    }

    private void AddInformation(double[,] complete)
    {
        for (var season = 0; season < at.Seasons; season++)
        {
            complete[at.Detection(season), at.Detection(season)] = _information[season];
            if (at.Slope)
                complete[at.SlopeAt, at.Detection(season)] = _cross[season];
        }

        if (at.Slope)
            complete[at.SlopeAt, at.SlopeAt] = _slopeInformation;
    }
}
