namespace RangeMap.Change;

/// <summary>A visit to a square that was visited in both periods.</summary>
/// <param name="Square">Number of the square among those squares.</param>
/// <param name="Season">0 in the earlier period, 1 in the later.</param>
/// <param name="Year">Calendar year.</param>
/// <param name="Length">Number of taxa on its list.</param>
internal readonly record struct SharedVisit(int Square, int Season, int Year, int Length);

/// <summary>
/// The visits of the first and the last period to squares visited in both. Squares that only one period saw are left out, so that a
/// wider search shows as no change.
/// </summary>
internal sealed class SharedVisits
{
    private readonly SharedVisit[] _visits;
    private readonly int[] _starts;
    private readonly int[] _with;

    private SharedVisits(int squares, SharedVisit[] visits, int[] starts, int[] with)
    {
        (Squares, _visits, _starts, _with) = (squares, visits, starts, with);
        VisitsTo = new int[2 * squares];
        foreach (var visit in visits)
            VisitsTo[2 * visit.Square + visit.Season]++;
    }

    /// <summary>Number of squares.</summary>
    internal int Squares { get; }

    /// <summary>All visits, by square and period.</summary>
    internal ReadOnlySpan<SharedVisit> All => _visits;

    /// <summary>Number of visits to square i in the earlier period at 2 i, in the later at 2 i + 1.</summary>
    internal int[] VisitsTo { get; }

    /// <summary>Numbers of the visits that noted the taxon, ascending.</summary>
    internal ReadOnlySpan<int> With(int taxon) => _with.AsSpan(_starts[taxon], _starts[taxon + 1] - _starts[taxon]);

    internal static SharedVisits Of(GroupSurvey survey)
    {
        VisitTable[] seasons = [survey.Periods[0].Visits, survey.Periods[^1].Visits];
        var visits = new List<SharedVisit>();
        var (starts, squares) = (new int[survey.Taxa + 1], 0);
        for (var square = 0; square < survey.Squares.Count; square++)
        {
            if (seasons[0].To(square).IsEmpty || seasons[1].To(square).IsEmpty)
                continue;
            for (var season = 0; season < 2; season++)
            {
                foreach (ref readonly var visit in seasons[season].To(square))
                {
                    visits.Add(new(squares, season, visit.Year, visit.ListLength));
                    foreach (var taxon in seasons[season].List(visit))
                        starts[taxon + 1]++;
                }
            }

            squares++;
        }

        for (var taxon = 0; taxon < survey.Taxa; taxon++)
            starts[taxon + 1] += starts[taxon];
        return new(squares, [.. visits], starts, ByTaxon(survey, seasons, starts));
    }

    // The same walk again: now it is known where the visits of each taxon go.
    private static int[] ByTaxon(GroupSurvey survey, VisitTable[] seasons, int[] starts)
    {
        var (with, next, number) = (new int[starts[^1]], starts.AsSpan(0, survey.Taxa).ToArray(), 0);
        for (var square = 0; square < survey.Squares.Count; square++)
        {
            if (seasons[0].To(square).IsEmpty || seasons[1].To(square).IsEmpty)
                continue;
            foreach (var season in seasons)
            {
                foreach (ref readonly var visit in season.To(square))
                {
                    foreach (var taxon in season.List(visit))
                        with[next[taxon]++] = number;
                    number++;
                }
            }
        }

        return with;
    }
}
