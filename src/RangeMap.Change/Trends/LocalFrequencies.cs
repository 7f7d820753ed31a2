namespace RangeMap.Change;

/// <summary>What is expected of one taxon in one square.</summary>
/// <param name="Square">The square.</param>
/// <param name="Frequency">Scaled local frequency: the chance that a well-recorded square here has the taxon; above 0, below 1.</param>
internal readonly record struct Expected(int Square, float Frequency);

/// <summary>Where recorders found how many of the benchmarks of a square.</summary>
/// <param name="From">Taxa of at least this scaled frequency are its benchmarks; infinite where it has none.</param>
/// <param name="Benchmarks">Number of benchmarks.</param>
/// <param name="FoundBefore">How many of them were found in the earlier period.</param>
/// <param name="FoundAfter">How many of them were found in the later period.</param>
internal readonly record struct BenchmarkEffort(float From, int Benchmarks, int FoundBefore, int FoundAfter);

/// <summary>Scaled local frequencies of all taxa and the effort of all squares (docs/methods/neighbourhood-frequency.md, eq. 3 to 6).</summary>
internal sealed class LocalFrequencies
{
    private readonly Expected[][] _ofTaxon;

    private LocalFrequencies(Expected[][] ofTaxon, BenchmarkEffort[] efforts) => (_ofTaxon, Efforts) = (ofTaxon, efforts);

    /// <summary>The effort of each square.</summary>
    internal BenchmarkEffort[] Efforts { get; }

    /// <summary>The squares whose neighbourhood has the taxon, ascending.</summary>
    internal ReadOnlySpan<Expected> OfTaxon(int taxon) => _ofTaxon[taxon];

    internal static LocalFrequencies Of(GroupSurvey survey, SpeciesBits before, SpeciesBits after, TrendOptions options)
    {
        var pooled = SpeciesBits.Pooled(survey, survey.Periods);
        var neighbourhoods = new Neighbourhoods(survey, pooled, options);
        var lists = PooledLists(survey);
        var rows = new (int[] Taxa, float[] Frequencies)[survey.Squares.Count];
        var efforts = new BenchmarkEffort[rows.Length];
        Parallel.For(0, rows.Length, () => new double[survey.Taxa], (square, _, sums) =>
        {
            rows[square] = lists[square].Length == 0 ? ([], []) : Scaled(neighbourhoods.Of(square), lists, sums, options);
            efforts[square] = EffortOf(square, rows[square], before, after, options);
            return sums;
        }, _ => { });
        return new(ByTaxon(survey.Taxa, rows), efforts);
    }

    private static int[][] PooledLists(GroupSurvey survey) =>
        [.. Enumerable.Range(0, survey.Squares.Count).Select(square =>
            survey.Periods.SelectMany(period => period.Found.InSquare(square).ToArray()).Select(find => find.Index).Distinct().ToArray())];

    private static (int[] Taxa, float[] Frequencies) Scaled((int Square, double Weight)[] neighbours, int[][] lists, double[] sums, TrendOptions options)
    {
        var taxa = new List<int>();
        double all = 0;
        foreach (var (square, weight) in neighbours)
        {
            all += weight;
            foreach (var taxon in lists[square])
            {
                if (sums[taxon] == 0)
                    taxa.Add(taxon);
                sums[taxon] += weight;
            }
        }

        var frequencies = new double[taxa.Count];
        for (var i = 0; i < frequencies.Length; i++)
        {
            frequencies[i] = sums[taxa[i]] / all;
            sums[taxa[i]] = 0;
        }

        return FrequencyScaling.Alpha(frequencies, options.StandardFrequency) is { } alpha
            ? ([.. taxa], Array.ConvertAll(frequencies, frequency => (float)FrequencyScaling.Scaled(frequency, alpha)))
            : ([], []);
    }

    private static BenchmarkEffort EffortOf(int square, (int[] Taxa, float[] Frequencies) row, SpeciesBits before, SpeciesBits after, TrendOptions options)
    {
        var from = FrequencyScaling.BenchmarkFrom(row.Frequencies, options.BenchmarkRank);
        int benchmarks = 0, foundBefore = 0, foundAfter = 0;
        for (var i = 0; i < row.Taxa.Length; i++)
        {
            if (row.Frequencies[i] < from)
                continue;
            benchmarks++;
            foundBefore += before.Has(square, row.Taxa[i]) ? 1 : 0;
            foundAfter += after.Has(square, row.Taxa[i]) ? 1 : 0;
        }

        return new(from, benchmarks, foundBefore, foundAfter);
    }

    private static Expected[][] ByTaxon(int taxa, (int[] Taxa, float[] Frequencies)[] rows)
    {
        var counts = new int[taxa];
        foreach (var (listed, _) in rows)
        {
            foreach (var taxon in listed)
                counts[taxon]++;
        }

        var (ofTaxon, next) = (Array.ConvertAll(counts, count => new Expected[count]), new int[taxa]);
        for (var square = 0; square < rows.Length; square++)
        {
            for (var i = 0; i < rows[square].Taxa.Length; i++)
            {
                var taxon = rows[square].Taxa[i];
                ofTaxon[taxon][next[taxon]++] = new(square, rows[square].Frequencies[i]);
            }
        }

        return ofTaxon;
    }
}
