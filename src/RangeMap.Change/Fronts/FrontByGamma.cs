namespace RangeMap.Change;

/// <summary>
/// Displacement of the gamma margin: in each of several windows of years a gamma distribution is fitted to the distances of all squares with a find,
/// recording levelled to the window with fewest visits, and its 95 % quantile followed through time (docs/methods/spread.md, eq. 10; after Hassall
/// and Thompson 2010, Methods in Ecology and Evolution 1:343-350, and Preuss et al. 2014).
/// </summary>
internal static class FrontByGamma
{
    private const int Windows = 8;

    private static readonly GammaQuantiles _margin = new(0.95);

    internal static SpreadEstimate Measure(FirstRecords records, IReadOnlyList<VisitedSquare>? squares, SpreadOptions options)
    {
        var reason = records.Fault
            ?? (squares is null ? SpreadWords.NoVisits : null)
            ?? (records.Origin is null ? SpreadWords.NoPlaces : null)
            ?? records.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit);
        if (reason is not null)
            return SpreadEstimate.Refuse(SpreadMethods.GammaMargin, records, reason);

        var windows = WindowsOf(squares!, records.Times[0]).Where(window => window.Found.Count >= options.MinimumSquares).ToArray();
        if (windows.Length < options.MinimumTimes)
            return SpreadEstimate.Refuse(SpreadMethods.GammaMargin, records, SpreadWords.NotEnoughWindows(windows.Length, options.MinimumTimes, options.MinimumSquares));

        var fewest = windows.Min(window => window.Visits);
        // The origin's own square is half a side away at least: a gamma distribution has no distance of 0.
        var margins = Array.ConvertAll(windows, window => window.Margin((double)fewest / window.Visits, options.SquareSideKm / 2));
        var line = LeastSquaresLine.Fit(Array.ConvertAll(windows, window => window.Time), margins);
        return SpreadEstimate.Of(SpreadMethods.GammaMargin, records, line.Slope, line.SerialSlopeInterval(options.Confidence), SpreadWords.GammaNote)
            with { N = windows.SelectMany(window => window.Found).Select(find => find.Square).Distinct().Count() };
    }

    /// <summary>Eight windows of equal length from the first find to the last visit.</summary>
    private static Window[] WindowsOf(IReadOnlyList<VisitedSquare> squares, double first)
    {
        var last = squares.SelectMany(square => square.Finds.TakeLast(1).Concat(square.Misses.TakeLast(1))).DefaultIfEmpty(first).Max();
        var windows = Enumerable.Range(0, Windows).Select(_ => new Window()).ToArray();
        foreach (var square in squares)
        {
            foreach (var time in square.Misses.Where(time => time >= first))
                windows[Index(time)].Add(time);
            foreach (var finds in square.Finds.Where(time => time >= first).GroupBy(Index))
            {
                foreach (var time in finds)
                    windows[finds.Key].Add(time);
                windows[finds.Key].Found.Add((square, finds.Count()));
            }
        }

        return windows;

        int Index(double time) => last > first ? Math.Min(Windows - 1, (int)((time - first) / (last - first) * Windows)) : 0;
    }

    /// <summary>One stretch of years.</summary>
    private sealed class Window
    {
        private double _times;

        /// <summary>Squares with a find, and on how many visits.</summary>
        public List<(VisitedSquare Square, int Visits)> Found { get; } = [];

        /// <summary>Number of visits, with and without the species.</summary>
        public int Visits { get; private set; }

        /// <summary>Mean time of the visits.</summary>
        public double Time => _times / Visits;

        public void Add(double time)
        {
            Visits++;
            _times += time;
        }

        /// <summary>The margin, km, expected where each visit is kept with the chance given: a square stays with the chance that one of its finds does.</summary>
        public double Margin(double kept, double leastKm)
        {
            double weights = 0, sum = 0, logs = 0;
            foreach (var (square, visits) in Found)
            {
                var (weight, km) = (1 - Math.Pow(1 - kept, visits), Math.Max(leastKm, square.DistanceKm));
                (weights, sum, logs) = (weights + weight, sum + weight * km, logs + weight * Math.Log(km));
            }

            var mean = sum / weights;
            return _margin.Of(mean, Math.Max(0, Math.Log(mean) - logs / weights));
        }
    }
}
