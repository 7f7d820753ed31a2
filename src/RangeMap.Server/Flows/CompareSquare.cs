using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Tells what became of the species of one square between two periods, by the rule of the maps of change (<see cref="SquareFates"/>).</summary>
internal static class CompareSquare
{
    /// <summary>Every species found in either period, and the visits of every group that has taxa.</summary>
    /// <param name="data">The data.</param>
    /// <param name="square">The square, of a size that maps come in.</param>
    /// <param name="question">The periods and which records count; its size is the square's.</param>
    public static SquareComparison Answer(DataSnapshot data, Square square, ChangeQuestion question)
    {
        var groups = data.Taxa.GroupBy(taxon => taxon.Group).OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => OfGroup(data, square, question, group.Key, [.. group])).ToList();
        return new(square, question, [.. groups.Select(group => group.Visits)], [.. groups.SelectMany(group => group.Species).OrderBy(found => found.Taxon.ScientificName, StringComparer.Ordinal)]);
    }

    private static (GroupVisits Visits, IEnumerable<SpeciesChange> Species) OfGroup(DataSnapshot data, Square square, ChangeQuestion question, string? group, List<Taxon> taxa)
    {
        var effort = data.Effort(taxa[0], square.Size);
        var visits = new GroupVisits(group, effort.Visits(square, question.From), effort.Visits(square, question.To));
        // An aggregate stands for its members, and would count twice.
        var found = taxa.Where(taxon => !data.Members(taxon).Any())
            .Select(taxon => (Taxon: taxon, Before: Records(data, taxon, square, question.From, question.Quality), After: Records(data, taxon, square, question.To, question.Quality)))
            .Where(counted => counted.Before + counted.After > 0).ToList();
        // A find that is dated too roughly for a visit tells all the same that somebody looked.
        var surveyedBefore = visits.Before > 0 || found.Exists(counted => counted.Before > 0);
        var surveyedAfter = visits.After > 0 || found.Exists(counted => counted.After > 0);
        return (visits, found.Select(counted =>
            new SpeciesChange(counted.Taxon, counted.Before, counted.After, SquareFates.FateOf(counted.Before > 0, counted.After > 0, surveyedBefore, surveyedAfter))));
    }

    private static int Records(DataSnapshot data, Taxon taxon, Square square, Period period, Quality quality)
    {
        var records = 0;
        foreach (ref readonly var cell in data.Cube(taxon, square.Size).In(square))
            records += period.Contains(cell.FirstDay, cell.LastDay) ? cell.Counts.At(quality) : 0;
        return records;
    }
}

/// <summary>A square in two periods.</summary>
/// <param name="Square">The square.</param>
/// <param name="Question">The periods.</param>
/// <param name="Visits">By group.</param>
/// <param name="Species">Those found in either period, by name.</param>
internal sealed record SquareComparison(Square Square, ChangeQuestion Question, IReadOnlyList<GroupVisits> Visits, IReadOnlyList<SpeciesChange> Species);

/// <summary>Visits of a group to a square.</summary>
/// <param name="Group">The group; null for taxa without one.</param>
/// <param name="Before">In the earlier period.</param>
/// <param name="After">In the later period.</param>
internal sealed record GroupVisits(string? Group, int Before, int After);

/// <summary>What became of a species in a square.</summary>
/// <param name="Taxon">The species.</param>
/// <param name="Before">Records that count and lie wholly in the earlier period.</param>
/// <param name="After">The same in the later period.</param>
/// <param name="Fate">What became of it.</param>
internal sealed record SpeciesChange(Taxon Taxon, int Before, int After, SquareFate Fate);
