namespace RangeMap.Change;

/// <summary>A fitted arrival model.</summary>
public sealed class ArrivalFit
{
    private readonly double[][] _reached;

    private ArrivalFit(IReadOnlyList<ArrivalSite> sites, ArrivalSurface surfaceAtDetection, ArrivalSurface surface, DetectionCurve detection, DetectionError? detectionError, double unsuited, YearLadder years, ArrivalOptions options, double[][] reached, SquareArrivalYear[] squares)
    {
        (Sites, SurfaceAtDetection, Surface, Detection, DetectionError, UnsuitedShare, Years, Options, _reached, Squares) = (sites, surfaceAtDetection, surface, detection, detectionError, unsuited, years, options, reached, squares);
        LastVisit = sites.SelectMany(site => site.Visits).Max(visit => visit.Year);
    }

    /// <summary>The squares that were given.</summary>
    public IReadOnlyList<ArrivalSite> Sites { get; }

    /// <summary>Last year with visits.</summary>
    public int LastVisit { get; }

    /// <summary>Arrival year of each square, in the order given.</summary>
    public IReadOnlyList<SquareArrivalYear> Squares { get; }

    /// <summary>Chance that a visit finds what is there.</summary>
    public DetectionCurve Detection { get; }

    /// <summary>Share of squares that the species never lives in, 0 to 1.</summary>
    public double UnsuitedShare { get; }

    /// <summary>Standard deviation of single squares' arrivals round the surface, years.</summary>
    public double ScatterYears => Math.Sqrt(Surface.Scatter);

    /// <summary>Where distances are measured from.</summary>
    public PlanePoint Origin => Surface.Basis.Origin;

    /// <summary>The surface with all of its uncertainty.</summary>
    internal ArrivalSurface Surface { get; }

    /// <summary>The surface were the detection known: what draws begin with that draw the detection too.</summary>
    internal ArrivalSurface SurfaceAtDetection { get; }

    internal DetectionError? DetectionError { get; }

    internal YearLadder Years { get; }

    internal ArrivalOptions Options { get; }

    /// <summary>Chance that the species had reached a square by the end of a year, given everything that is known.</summary>
    /// <param name="square">Index of the square.</param>
    /// <param name="year">The year; after the last one that is told apart, the chance of that one.</param>
    public double Reached(int square, int year)
    {
        var step = year - Years.First;
        return step < 0 ? 0 : _reached[square][Math.Min(step, Years.Count - 2)];
    }

    /// <summary>
    /// Kilometres by which a place lies beyond the line that 99 in 100 arrivals stay behind in a year (docs/methods/arrival-surface.md, eq. 13); null where it lies behind it, and where the surface is flat.
    /// </summary>
    /// <param name="place">The place, on the plane of the squares.</param>
    /// <param name="year">The year.</param>
    public double? KmBeyond(PlanePoint place, int year)
    {
        const double ofHundred = 2.326347874, within = 0.5;
        var (mean, error) = Surface.At(place);
        var early = mean - ofHundred * Math.Sqrt(Surface.Scatter + error * error) - (year + within);
        var (east, north, _, _, _) = Surface.GradientAt(place);
        var slowness = Math.Sqrt(east * east + north * north);
        return early > 0 && slowness > 0 ? early / slowness : null;
    }

    internal static ArrivalFit Of(IReadOnlyList<ArrivalSite> sites, ArrivalSurface surfaceAtDetection, DetectionCurve detection, DetectionError? detectionError, double unsuited, YearLadder years, ArrivalOptions options)
    {
        var surface = detectionError is null ? surfaceAtDetection : surfaceAtDetection.With(detectionError);
        var (reached, squares) = (new double[sites.Count][], new SquareArrivalYear[sites.Count]);
        Parallel.For(0, sites.Count, i =>
        {
            var (mean, error) = surface.At(new PlanePoint(sites[i].X, sites[i].Y));
            var (chances, likelihood) = (new double[years.Count], new double[years.Count]);
            ArrivalPosterior.Likelihood(sites[i].Visits, years, detection, options.StrayRate, likelihood);
            years.Prior(mean, Math.Sqrt(surface.Scatter + error * error), chances);
            ArrivalPosterior.Update(chances, likelihood, unsuited);
            for (var step = 1; step < chances.Length; step++)
                chances[step] += chances[step - 1];
            reached[i] = chances;
            squares[i] = SquareArrivalYear.Of(mean, chances, years);
        });
        return new(sites, surfaceAtDetection, surface, detection, detectionError, unsuited, years, options, reached, squares);
    }
}

/// <summary>When the species arrived in a square.</summary>
/// <param name="Surface">Year that the smooth surface gives for the place.</param>
/// <param name="Median">Year that is as likely too early as too late, given the square's own visits; null where it lies beyond the years told apart.</param>
/// <param name="Low">Lower end of the 95 % interval; null where it lies before the years told apart.</param>
/// <param name="High">Upper end; null where it lies beyond them.</param>
public readonly record struct SquareArrivalYear(double Surface, int? Median, int? Low, int? High)
{
    internal static SquareArrivalYear Of(double surface, double[] reached, YearLadder years) =>
        new(surface, Quantile(0.5, reached, years), Quantile(0.025, reached, years), Quantile(0.975, reached, years));

    private static int? Quantile(double share, double[] reached, YearLadder years)
    {
        var step = Array.FindIndex(reached, chance => chance >= share);
        return step <= 0 || step >= reached.Length - 1 ? null : years.First + step;
    }
}
