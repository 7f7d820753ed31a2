using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>What supports a taxon in a square.</summary>
internal sealed record SupportJson(string Taxon, IReadOnlyList<SupportPeriodJson> PerPeriod, IReadOnlyList<SupportSquareJson> FinerSquares, string? Note)
{
    private const int MostSquares = 100;

    public static SupportJson Of(SquareSupport support)
    {
        var squares = support.Squares.OrderByDescending(pair => pair.Value.LastYear).ThenBy(pair => pair.Key).Take(MostSquares);
        return new(
            support.Taxon.Id,
            [.. support.Periods.Zip(support.PerPeriod, (period, count) => new SupportPeriodJson(period.Text, count.Records, count.Confirmed, count.Visits, count.FirstYear, count.LastYear))],
            [.. squares.Select(pair => new SupportSquareJson(pair.Key.ToString(), pair.Key.Size.ToText(), pair.Value.Records, pair.Value.FirstYear, pair.Value.LastYear))],
            NoteOf(support));
    }

    private static string? NoteOf(SquareSupport support)
    {
        if (support.Taxon.GeneraliseTo is { } finest)
            return $"This is a sensitive species: places finer than {finest.ToText()} are not shown.";
        return support.Squares.Count > MostSquares ? FormattableString.Invariant($"The {MostSquares} finer squares with the latest records, of {support.Squares.Count}.") : null;
    }
}

/// <summary>Counts of one period.</summary>
internal sealed record SupportPeriodJson(string Period, int Records, int Confirmed, int Visits, int FirstYear, int LastYear);

/// <summary>A finer square that records lie in.</summary>
internal sealed record SupportSquareJson(string Square, string Size, int Records, int FirstYear, int LastYear);
