namespace RangeMap.Change;

/// <summary>
/// A survey of an invented group in two periods of ten years with a known change, for judging the measures of change. Squares are 10 km
/// on a plane; each taxon lives in the best cells of a smooth surface, commoner towards its middle.
/// </summary>
public sealed record SimulatedSurvey
{
    /// <summary>First year of each period.</summary>
    private static readonly int[] _firstYears = [1995, 2010];

    private const int Years = 10;

    /// <summary>Squares along each side of the land.</summary>
    public int Side { get; init; } = 20;

    /// <summary>Number of taxa.</summary>
    public int Taxa { get; init; } = 60;

    /// <summary>How recorders go about in the earlier period.</summary>
    public SimulatedHabits Before { get; init; } = new();

    /// <summary>How recorders go about in the later period.</summary>
    public SimulatedHabits After { get; init; } = new();

    /// <summary>True where recorders are drawn to other squares in the later period than in the earlier.</summary>
    public bool OtherSquares { get; init; }

    /// <summary>Taxa that decline: so many of the first ones, in a spread of range sizes and ease of finding.</summary>
    public int Declining { get; init; }

    /// <summary>Share of its squares that a declining taxon loses before the later period, each square by chance, 0 to 1.</summary>
    public double Loss { get; init; }

    /// <summary>Makes the survey.</summary>
    /// <param name="seed">The same seed gives the same survey.</param>
    public SimulatedGroup Make(ulong seed)
    {
        var chance = new Pcg(seed, 11);
        SurveySquare[] squares = [.. Enumerable.Range(0, Side * Side).Select(i => SurveySquare.Upright(i % Side * 10, i / Side * 10, 10))];
        var before = Ranges(squares, seed, ref chance);
        var after = Array.ConvertAll(before, range => (float[])range.Clone());
        for (var taxon = 0; taxon < Declining; taxon++)
        {
            for (var square = 0; square < squares.Length; square++)
                after[taxon][square] *= chance.NextChance(Loss) ? 0 : 1;
        }

        var ease = new double[Taxa];
        for (var taxon = 0; taxon < Taxa; taxon++)
            ease[taxon] = 0.05 + 0.55 * chance.NextUnit();
        var drawn = Drawn(squares.Length, ref chance);
        var drawnLater = OtherSquares ? Drawn(squares.Length, ref chance) : drawn;
        SurveyPeriod[] periods = [Period(0, Before, before, ease, drawn, ref chance), Period(1, After, after, ease, drawnLater, ref chance)];
        return new(new(squares, Taxa, periods), before, after);
    }

    // Some squares draw more recorders: from a quarter of the mean number of visits to three times it.
    private static double[] Drawn(int squares, ref Pcg chance)
    {
        var drawn = new double[squares];
        for (var square = 0; square < drawn.Length; square++)
            drawn[square] = 0.25 + 3 * chance.NextUnit() * chance.NextUnit();
        return drawn;
    }

    // Abundance by taxon and square: 0 outside the range, from a quarter at its edge to 1.
    private float[][] Ranges(SurveySquare[] squares, ulong seed, ref Pcg chance)
    {
        var ranges = new float[Taxa][];
        for (var taxon = 0; taxon < Taxa; taxon++)
        {
            var field = new SmoothField(seed * 1_000 + (ulong)taxon * 3, 70);
            var share = 0.08 + 0.72 * chance.NextUnit() * chance.NextUnit();
            var heights = Array.ConvertAll(squares, square => field.At(square.Centre.X, square.Centre.Y));
            var sorted = heights.Order().ToArray();
            double floor = sorted[(int)((1 - share) * (sorted.Length - 1))], top = sorted[^1];
            ranges[taxon] = Array.ConvertAll(heights, height => height < floor ? 0f : (float)(0.25 + 0.75 * (height - floor) / Math.Max(1e-9, top - floor)));
        }

        return ranges;
    }

    private SurveyPeriod Period(int number, SimulatedHabits habits, float[][] ranges, double[] ease, double[] drawn, ref Pcg chance)
    {
        var visits = new List<(int Square, int Day, int Recorder, int[] Taxa)>();
        var finds = new List<(int Square, int Taxon, int Records)>();
        for (var square = 0; square < drawn.Length; square++)
        {
            var covered = chance.NextChance(habits.Coverage);
            var mean = covered ? habits.Visits * drawn[square] : 0;
            for (var count = SimulatedHabits.Number(mean, ref chance); count > 0; count--)
            {
                var list = habits.List(ranges, ease, square, ref chance);
                // Nobody sends in a list without a name.
                if (list.Length == 0)
                    continue;
                var day = new DateOnly(_firstYears[number] + chance.NextIndex(Years), 5 + chance.NextIndex(4), 1 + chance.NextIndex(28));
                visits.Add((square, day.DayNumber, 1 + chance.NextIndex(50), list));
                finds.AddRange(list.Select(taxon => (square, taxon, 1)));
            }
        }

        var (first, last) = (_firstYears[number], _firstYears[number] + Years - 1);
        return new($"{first}/{last}", first, last, FoundTable.Of(drawn.Length, Taxa, finds), VisitTable.Of(drawn.Length, visits));
    }
}

/// <summary>An invented survey and what is true of it.</summary>
/// <param name="Survey">What the recorders gave.</param>
/// <param name="Before">Abundance by taxon and square in the earlier period; 0 where it is absent.</param>
/// <param name="After">The same in the later period.</param>
public sealed record SimulatedGroup(GroupSurvey Survey, float[][] Before, float[][] After)
{
    /// <summary>True change in the number of occupied squares, percent.</summary>
    public double TruePercent(int taxon) => 100.0 * After[taxon].Count(a => a > 0) / Before[taxon].Count(a => a > 0) - 100;

    /// <summary>True change in the share of squares occupied, percentage points, over the squares visited in both periods.</summary>
    public double TruePoints(int taxon)
    {
        var both = Enumerable.Range(0, Survey.Squares.Count).Where(square => Survey.Periods.All(period => !period.Visits.To(square).IsEmpty)).ToArray();
        return 100.0 * (both.Count(square => After[taxon][square] > 0) - both.Count(square => Before[taxon][square] > 0)) / both.Length;
    }
}
