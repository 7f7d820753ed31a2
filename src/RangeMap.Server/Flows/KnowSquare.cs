using System.Runtime.InteropServices;
using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>Tells how well a square is known, what came lately and what may be missing, from the same generalised data as every other answer.</summary>
internal static class KnowSquare
{
    private const int NewYears = 5, RecentYears = 10;

    /// <summary>The knowledge of a square.</summary>
    /// <param name="data">The data.</param>
    /// <param name="square">The square, of a size that maps come in.</param>
    /// <param name="quality">Which records count.</param>
    public static SquareKnowledge Answer(DataSnapshot data, Square square, Quality quality) =>
        data.Answers.GetOrMake((square, quality, "knowledge of a square"), () =>
        {
            var last = data.Summaries.Max(summary => summary.LastYear) ?? 0;
            if (last == 0)
                return new SquareKnowledge(0, 0, 0, new HashSet<int>(), [], [], [], []);
            var (newSince, since) = (last - NewYears + 1, last - RecentYears + 1);
            var recent = Years(since, last);
            var near = new SquareSurroundings(data, square, recent, quality);
            return new(
                newSince, since, last, NewIn(data, square, quality, Years(newSince, last).FirstDay), VisitsByYear(data, square), [.. near.Groups.Select(group => Completeness(near, group))],
                ExpectInSquare.Of(near), [.. near.Neighbours.Select(neighbour => new SquareAround(neighbour, near.SpeciesEver(neighbour)))]);
        });

    private static Period Years(int from, int to) => Ask.Periods(FormattableString.Invariant($"{from:0000}/{to:0000}"))[0];

    /// <summary>A record whose date may be older is no news.</summary>
    private static HashSet<int> NewIn(DataSnapshot data, Square square, Quality quality, int firstDay)
    {
        var found = new HashSet<int>();
        foreach (var taxon in data.Taxa)
        {
            var (any, old) = (false, false);
            foreach (ref readonly var cell in data.Cube(taxon, square.Size).In(square))
            {
                if (cell.Counts.At(quality) == 0)
                    continue;
                any = true;
                old |= cell.FirstDay < firstDay;
            }

            if (any && !old)
                found.Add(taxon.Number);
        }

        return found;
    }

    private static List<YearOfVisits> VisitsByYear(DataSnapshot data, Square square)
    {
        var counts = new SortedDictionary<int, (int Visits, int Complete)>();
        foreach (ref readonly var visit in data.EffortOfAll(square.Size).In(square, new(int.MinValue, int.MaxValue, "../..")))
        {
            var year = DateOnly.FromDayNumber(visit.Day).Year;
            var (visits, complete) = counts.GetValueOrDefault(year);
            counts[year] = (visits + 1, complete + (visit.Complete ? 1 : 0));
        }

        if (counts.Count == 0)
            return [];
        var first = counts.Keys.First();
        return [.. Enumerable.Range(first, counts.Keys.Last() - first + 1).Select(year => new YearOfVisits(year, counts.GetValueOrDefault(year).Visits, counts.GetValueOrDefault(year).Complete))];
    }

    private static GroupKnowledge Completeness(SquareSurroundings near, string? group)
    {
        var visits = near.VisitsTo(near.Square, group);
        var lists = visits.SelectMany(visit => visit.Taxa.Where(near.IsSpecies)).GroupBy(number => number).Select(found => found.Count()).ToList();
        var estimate = RichnessInterval.FromLists(CollectionsMarshal.AsSpan(lists), visits.Count);
        var options = new ChangeOptions();
        return new(group, visits.Count, estimate, visits.Count >= options.WellSurveyedVisits && estimate.Richness.Coverage >= options.WellSurveyedCoverage);
    }
}
