using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Answers what lives in a square, and what supports a taxon's presence there.</summary>
public static class DescribeSquare
{
    /// <summary>Everything about a square.</summary>
    /// <param name="data">The data.</param>
    /// <param name="square">The square, of a size that maps come in.</param>
    /// <param name="taxon">The taxon whose support is asked for; null for none.</param>
    /// <param name="periods">The periods of the support.</param>
    /// <param name="quality">Which records count.</param>
    public static SquareAnswer Answer(DataSnapshot data, Square square, Taxon? taxon, IReadOnlyList<Period> periods, Quality quality)
    {
        var species = data.Taxa
            .Select(found => SpeciesInSquare.Of(found, data.Cube(found, square.Size).In(square), quality))
            .OfType<SpeciesInSquare>()
            .OrderBy(found => found.Taxon.ScientificName, StringComparer.Ordinal)
            .ToList();
        var (effort, always) = (data.EffortOfAll(square.Size), new Period(int.MinValue, int.MaxValue, "../.."));
        return new(square, species, effort.Visits(square, always), effort.CompleteVisits(square, always), taxon is null ? null : Support(data, square, taxon, periods, quality));
    }

    private static SquareSupport Support(DataSnapshot data, Square square, Taxon taxon, IReadOnlyList<Period> periods, Quality quality)
    {
        var question = new PresenceQuestion(taxon, square.Size, quality, string.Join(',', periods.Select(period => period.Text)));
        var inPeriods = AnswerPresence.Answer(data, question).Squares.FirstOrDefault(found => found.Square == square)?.PerPeriod;
        var finer = new SortedDictionary<Square, SpeciesInSquare>();
        foreach (var group in CellsWithin(data.Cube(taxon), square).GroupBy(cell => cell.SquareCode))
        {
            if (SpeciesInSquare.Of(taxon, group.ToArray(), quality) is { } counted)
                finer.Add(Square.FromCode(group.Key), counted);
        }

        return new(taxon, periods, inPeriods ?? [.. periods.Select(_ => default(PeriodCount))], finer);
    }

    private static List<CubeCell> CellsWithin(TaxonCube cube, Square square)
    {
        var within = new List<CubeCell>();
        foreach (ref readonly var cell in cube.Cells)
        {
            if (Square.FromCode(cell.SquareCode).TryCoarsen(square.Size, out var container) && container == square)
                within.Add(cell);
        }

        return within;
    }
}

/// <summary>What is known of a square.</summary>
/// <param name="Square">The square.</param>
/// <param name="Species">The taxa found there, by name.</param>
/// <param name="Visits">Visits of which a record was kept, over all dates.</param>
/// <param name="CompleteVisits">Of these, visits with a list of all that was found of a group.</param>
/// <param name="Support">What supports the taxon that was asked for; null when none was.</param>
public sealed record SquareAnswer(Square Square, IReadOnlyList<SpeciesInSquare> Species, int Visits, int CompleteVisits, SquareSupport? Support);

/// <summary>What supports a taxon's presence in a square.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Periods">The periods.</param>
/// <param name="PerPeriod">Counts by period.</param>
/// <param name="Squares">The squares, as fine as the records support and may be shown, that the records lie in.</param>
public sealed record SquareSupport(
    Taxon Taxon, IReadOnlyList<Period> Periods, IReadOnlyList<PeriodCount> PerPeriod, IReadOnlyDictionary<Square, SpeciesInSquare> Squares);

/// <summary>A taxon in a square.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Records">Counted records.</param>
/// <param name="Confirmed">Of these, confirmed.</param>
/// <param name="FirstYear">First certain year.</param>
/// <param name="LastYear">Last certain year.</param>
public sealed record SpeciesInSquare(Taxon Taxon, int Records, int Confirmed, int FirstYear, int LastYear)
{
    internal static SpeciesInSquare? Of(Taxon taxon, ReadOnlySpan<CubeCell> cells, Quality quality)
    {
        int records = 0, confirmed = 0, first = int.MaxValue, last = int.MinValue;
        foreach (ref readonly var cell in cells)
        {
            var counted = cell.Counts.At(quality);
            if (counted == 0)
                continue;
            records += counted;
            confirmed += cell.Counts.Confirmed;
            first = Math.Min(first, cell.LastDay);
            last = Math.Max(last, cell.FirstDay);
        }

        return records == 0 ? null : new(taxon, records, confirmed, DateOnly.FromDayNumber(first).Year, DateOnly.FromDayNumber(last).Year);
    }
}
