namespace RangeMap.Change;

/// <summary>
/// Change of a taxon's time factor between two periods, by neighbourhood frequency scaling (docs/methods/neighbourhood-frequency.md;
/// after Hill 2012): where it was found, against where it was to be foreseen from the common taxa that the same recorders found.
/// </summary>
internal sealed class NeighbourhoodFrequency
{
    private const string Unit = "%";

    private readonly TrendOptions _options;
    private readonly LocalFrequencies? _frequencies;
    private readonly SpeciesBits _before;
    private readonly SpeciesBits _after;
    private readonly int[] _blocks = [];
    private readonly string? _refused;

    internal NeighbourhoodFrequency(GroupSurvey survey, TrendOptions options)
    {
        (_options, _before, _after) = (options, SpeciesBits.Of(survey, survey.Periods[0]), SpeciesBits.Of(survey, survey.Periods[^1]));
        var squares = Enumerable.Range(0, survey.Squares.Count).Count(square => _before.Count(square) + _after.Count(square) > 0);
        var taxa = Enumerable.Range(0, survey.Taxa).Count(taxon => survey.Periods.Any(period => !period.Found.OfTaxon(taxon).IsEmpty));
        _refused = taxa < options.LeastTaxaNeighbourhood ? TrendWords.NotEnough("taxa in the group with finds", taxa, options.LeastTaxaNeighbourhood)
            : squares < options.LeastSquaresNeighbourhood ? TrendWords.NotEnough("squares with finds", squares, options.LeastSquaresNeighbourhood)
            : null;
        if (_refused is null)
            (_frequencies, _blocks) = (LocalFrequencies.Of(survey, _before, _after, options), HalvedBlocks.Of(survey.Squares, square => survey.Periods.Any(period => !period.Found.InSquare(square).IsEmpty)));
    }

    internal ChangeEstimate Of(int taxon)
    {
        if (_frequencies is null)
            return Refuse(taxon, 0, _refused!);

        PeriodFactor before = Factor(taxon, _before, effort => effort.FoundBefore), after = Factor(taxon, _after, effort => effort.FoundAfter);
        var squares = before.Squares.Union(after.Squares).Count();
        if (Math.Min(before.Found, after.Found) < _options.LeastSquaresFound)
            return Refuse(taxon, squares, TrendWords.NotEnoughSquaresFound(before.Found, after.Found, _options.LeastSquaresFound));
        if (before.Factor is not { } x || after.Factor is not { } y)
            return Refuse(taxon, squares, TrendWords.FoundEverywhere);

        var (error, withFinds) = Error(before, after);
        if (withFinds < 2)
            return Refuse(taxon, squares, TrendWords.OneBlock);
        var wald = Wald.Of(Math.Log(y / x), error, withFinds - 1);
        return ChangeEstimate.Of(taxon, ChangeMethods.NeighbourhoodFrequency, Unit, squares, Percent(Math.Log(y / x)), new(Percent(wald.Interval.Low), Percent(wald.Interval.High))) with
        {
            Before = x,
            After = y,
            P = wald.P,
            Note = TrendWords.NeighbourhoodNote(before.Squares.Count, after.Squares.Count),
        };
    }

    // A benchmark is judged by the other benchmarks alone; where nothing is left of them, or none was found, the square is passed over.
    private PeriodFactor Factor(int taxon, SpeciesBits found, Func<BenchmarkEffort, int> benchmarksFound)
    {
        var factor = new PeriodFactor();
        foreach (var (square, frequency) in _frequencies!.OfTaxon(taxon))
        {
            var effort = _frequencies.Efforts[square];
            var (here, own) = (found.Has(square, taxon), frequency >= effort.From ? 1 : 0);
            int of = effort.Benchmarks - own, seen = benchmarksFound(effort) - (here ? own : 0);
            if (of > 0 && seen > 0)
                factor.Add(square, TimeFactor.Foreseen((double)seen / of, frequency), here);
        }

        factor.Solve();
        return factor;
    }

    // Standard error of ln(y / x): what each square adds to it, summed over blocks of squares (eq. 8).
    private (double Error, int WithFinds) Error(PeriodFactor before, PeriodFactor after)
    {
        var size = _blocks.Max() + 1;
        var (sums, finds) = (new double[size], new bool[size]);
        before.AddInfluence(-1, sums, finds, _blocks);
        after.AddInfluence(1, sums, finds, _blocks);
        return (Math.Sqrt(sums.Sum(sum => sum * sum) * size / Math.Max(1, size - 1.0)), finds.Count(hasFind => hasFind));
    }

    private static double Percent(double logRatio) => 100 * (Math.Exp(logRatio) - 1);

    private static ChangeEstimate Refuse(int taxon, int squares, string reason) => ChangeEstimate.Refuse(taxon, ChangeMethods.NeighbourhoodFrequency, Unit, squares, reason);
}
