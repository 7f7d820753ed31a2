using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>
/// How each taxon fared against the average taxon of its group (docs/methods/relative-change.md): the line is fitted once, each taxon is
/// a point of it.
/// </summary>
internal sealed class RelativeIndex
{
    private const string Unit = "standard deviations";

    private readonly int _squares;
    private readonly int[] _before;
    private readonly int[] _after;
    private readonly int[] _rowOf;
    private readonly int _rows;
    private readonly RelativeLine? _line;
    private readonly TrendOptions _options;

    internal RelativeIndex(GroupSurvey survey, TrendOptions options)
    {
        _options = options;
        FoundTable before = survey.Periods[0].Found, after = survey.Periods[^1].Found;
        var shared = Enumerable.Range(0, survey.Squares.Count).Select(square => !before.InSquare(square).IsEmpty && !after.InSquare(square).IsEmpty).ToArray();
        _squares = shared.Count(isShared => isShared);
        (_before, _after) = (Counts(survey.Taxa, before, shared), Counts(survey.Taxa, after, shared));
        var taxa = Enumerable.Range(0, survey.Taxa).Where(taxon => _before[taxon] >= options.LeastSquaresBefore).ToArray();
        _rowOf = new int[survey.Taxa];
        Array.Fill(_rowOf, -1);
        foreach (var taxon in taxa)
            _rowOf[taxon] = _rows++;
        if (_rows >= options.LeastTaxaRelative)
            _line = RelativeLine.Fit(_squares, [.. taxa.Select(taxon => _before[taxon])], [.. taxa.Select(taxon => _after[taxon])]);
    }

    internal ChangeEstimate Of(int taxon)
    {
        if (_rows < _options.LeastTaxaRelative)
            return Refuse(taxon, TrendWords.NotEnoughTaxaRelative(_rows, _options));
        if (_rowOf[taxon] is not (>= 0 and var row))
            return Refuse(taxon, TrendWords.NotEnough("squares of the earlier period, among those recorded in both", _before[taxon], _options.LeastSquaresBefore));
        if (_line is null)
            return Refuse(taxon, TrendWords.NoScatter);

        var index = _line.Index[row];
        return ChangeEstimate.Of(taxon, ChangeMethods.RelativeIndex, Unit, _squares, index, new(index - SharesOfVisits.Z, index + SharesOfVisits.Z)) with
        {
            Before = 100.0 * _before[taxon] / _squares,
            After = 100.0 * _after[taxon] / _squares,
            P = 2 * Normal.CDF(0, 1, -Math.Abs(index)),
            Note = TrendWords.RelativeNote(_rows, _line.Adjusted[row]),
        };
    }

    private static int[] Counts(int taxa, FoundTable found, bool[] shared)
    {
        var counts = new int[taxa];
        for (var taxon = 0; taxon < taxa; taxon++)
        {
            foreach (var find in found.OfTaxon(taxon))
                counts[taxon] += shared[find.Index] ? 1 : 0;
        }

        return counts;
    }

    private ChangeEstimate Refuse(int taxon, string reason) => ChangeEstimate.Refuse(taxon, ChangeMethods.RelativeIndex, Unit, _squares, reason);
}
