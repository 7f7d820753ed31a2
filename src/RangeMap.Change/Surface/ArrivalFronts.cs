namespace RangeMap.Change;

/// <summary>
/// Lines of the front from an arrival surface, with the band in which each lies (docs/methods/arrival-surface.md, eq. 10 and 11). Behind the line of a year squares were
/// reached, on the average, in time for the visits of that year.
/// </summary>
public sealed class ArrivalFronts
{
    // Years are steps: an arrival in one of them is one from half a year before it to half a year after.
    private const double Within = 0.5;
    private const double Normal95 = 1.96;

    private readonly ArrivalFit _fit;
    private readonly IReadOnlyList<IReadOnlyDictionary<(int Column, int Row), int>> _lattices;
    private readonly (double Mean, double Reach)[] _surface;

    private ArrivalFronts(ArrivalFit fit, IReadOnlyList<IReadOnlyDictionary<(int Column, int Row), int>> lattices, (double Mean, double Reach)[] surface) =>
        (_fit, _lattices, _surface) = (fit, lattices, surface);

    /// <summary>Reckons the surface at every square.</summary>
    /// <param name="fit">The model.</param>
    /// <param name="lattices">The squares of each grid by column and row, as indices of the model; lines are drawn within a grid only, and only over squares that are there.</param>
    /// <param name="sideKm">Side of a square, km.</param>
    public static ArrivalFronts Of(ArrivalFit fit, IReadOnlyList<IReadOnlyDictionary<(int Column, int Row), int>> lattices, double sideKm)
    {
        var surface = new (double, double)[fit.Sites.Count];
        Parallel.For(0, surface.Length, i => surface[i] = At(fit, new(fit.Sites[i].X, fit.Sites[i].Y), sideKm));
        return new(fit, lattices, surface);
    }

    /// <summary>The surface in the middle of a square, and how far it may lie from there anywhere in the square: its slope over half a side either way, and its uncertainty.</summary>
    private static (double Mean, double Reach) At(ArrivalFit fit, PlanePoint middle, double sideKm)
    {
        var (mean, error) = fit.Surface.At(middle);
        var (east, north, _, _, _) = fit.Surface.GradientAt(middle);
        return (mean, Normal95 * error + (Math.Abs(east) + Math.Abs(north)) * sideKm / 2);
    }

    /// <summary>The front of a year.</summary>
    /// <param name="year">The year; where the surface does not pass through it there are no lines.</param>
    public ArrivalFront At(int year)
    {
        var level = year + Within;
        var lines = _lattices.SelectMany(lattice => FrontLines.At(
            lattice.ToDictionary(pair => pair.Key, pair => (new PlanePoint(_fit.Sites[pair.Value].X, _fit.Sites[pair.Value].Y), _surface[pair.Value].Mean)), level));
        var band = _lattices.SelectMany(lattice => lattice.Values).Where(square => Math.Abs(_surface[square].Mean - level) <= _surface[square].Reach).Order();
        return new(year, [.. lines], [.. band]);
    }
}

/// <summary>The front of a year.</summary>
/// <param name="Year">The year.</param>
/// <param name="Lines">Chains of points on the common plane, kilometres; closed where the ends are equal.</param>
/// <param name="Band">Indices of the squares through which the line may run, by the 95 % interval of the surface at each place, ascending.</param>
public sealed record ArrivalFront(int Year, IReadOnlyList<IReadOnlyList<PlanePoint>> Lines, IReadOnlyList<int> Band);
