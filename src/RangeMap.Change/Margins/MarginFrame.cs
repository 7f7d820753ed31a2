namespace RangeMap.Change;

/// <summary>What all taxa share at one margin: the squares outwards, strips that each hold a piece of the margin, and where the land ends.</summary>
internal sealed class MarginFrame
{
    /// <summary>Squares between a marginal square and the last land within which the margin counts as having reached it.</summary>
    internal const int CoastSquares = 2;

    private readonly double _sideKm;
    private readonly double[] _across;
    private readonly int[] _rank;
    private readonly Dictionary<long, double>? _lastLand;

    internal MarginFrame(MarginAxis axis, double[] x, double[] y, double sideKm, ChangeOptions options, BlockDraws draws)
    {
        (Axis, _sideKm) = (axis, sideKm);
        Along = [.. x.Zip(y, axis.Along)];
        _across = [.. x.Zip(y, axis.Across)];
        Strips = SquareBlocks.Strips(_across, sideKm, options.StripSquares, draws);
        _rank = new int[x.Length];
        foreach (var (rank, square) in Enumerable.Range(0, x.Length).OrderByDescending(square => Along[square]).Index())
            _rank[square] = rank;
        _lastLand = options.LandSquares?.GroupBy(land => Lane(axis.Across(land.X, land.Y)), land => axis.Along(land.X, land.Y)).ToDictionary(lane => lane.Key, lane => lane.Max());
        Gamma = axis.Method == ChangeMethods.MarginGamma ? new(options.MarginQuantile) : null;
    }

    /// <summary>The direction.</summary>
    public MarginAxis Axis { get; }

    /// <summary>Kilometres outwards of the middle of each square.</summary>
    public double[] Along { get; }

    /// <summary>Strips that run in the direction of the axis.</summary>
    public SquareBlocks Strips { get; }

    /// <summary>Gamma quantiles, for the gamma margin only.</summary>
    public GammaQuantiles? Gamma { get; }

    /// <summary>The places in a list of squares, the outermost square first; squares equally far out by their index.</summary>
    public int[] OutermostFirst(ReadOnlySpan<int> squares)
    {
        var (ranks, places) = (new int[squares.Length], new int[squares.Length]);
        for (var i = 0; i < squares.Length; i++)
            (ranks[i], places[i]) = (_rank[squares[i]], i);
        Array.Sort(ranks, places);
        return places;
    }

    /// <summary>True where land is known and each of some squares stands within two squares of the last land outwards of it; false for none.</summary>
    public bool AtCoast(ReadOnlySpan<int> squares)
    {
        if (_lastLand is null || squares.IsEmpty)
            return false;
        foreach (var square in squares)
        {
            var last = _lastLand.GetValueOrDefault(Lane(_across[square]), double.NegativeInfinity);
            // A hundredth of a side is lost where squares stand askew.
            if (last - Along[square] > (CoastSquares + 0.01) * _sideKm)
                return false;
        }

        return true;
    }

    private long Lane(double across) => (long)Math.Floor(across / _sideKm);
}
