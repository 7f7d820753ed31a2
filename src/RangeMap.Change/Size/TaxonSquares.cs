namespace RangeMap.Change;

/// <summary>One taxon in the two periods that are compared, with what all measures of its size need.</summary>
internal sealed class TaxonSquares
{
    private TaxonSquares(RangeSizeChange.Prepared prepared, int taxon, int[] before, int[] after) =>
        (Prepared, Taxon, Before, After) = (prepared, taxon, before, after);

    public RangeSizeChange.Prepared Prepared { get; }

    public int Taxon { get; }

    /// <summary>Squares occupied in the earlier period, ascending.</summary>
    public int[] Before { get; }

    /// <summary>Squares occupied in the later period, ascending.</summary>
    public int[] After { get; }

    public IReadOnlyList<SurveySquare> Squares => Prepared.Survey.Squares;

    public SquareBlocks Blocks => Prepared.Blocks;

    public ChangeOptions Options => Prepared.Options;

    public static TaxonSquares Of(RangeSizeChange.Prepared prepared, int taxon) =>
        new(prepared, taxon, Occupied(prepared.Survey.Periods[0], taxon), Occupied(prepared.Survey.Periods[^1], taxon));

    /// <summary>Why no change of size can be told; null when it can.</summary>
    public string? TooFew()
    {
        if (Before.Length + After.Length == 0)
            return "The taxon was found in neither period.";
        if (Before.Length == 0)
            return $"The taxon was not found in the earlier period, so there is nothing to compare with ({After.Length} squares in the later one).";
        return Before.Length + After.Length < Options.LeastSquares
            ? $"Not enough squares: {Before.Length} and {After.Length} of at least {Options.LeastSquares} together."
            : null;
    }

    private static int[] Occupied(SurveyPeriod period, int taxon)
    {
        var finds = period.Found.OfTaxon(taxon);
        var squares = new int[finds.Length];
        for (var i = 0; i < squares.Length; i++)
            squares[i] = finds[i].Index;
        return squares;
    }
}
