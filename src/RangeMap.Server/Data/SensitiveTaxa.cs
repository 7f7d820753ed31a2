using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Who is sensitive besides the taxa that the list marks.</summary>
internal static class SensitiveTaxa
{
    /// <summary>
    /// The taxa, where an aggregate is as sensitive as its most sensitive member: a record that goes no further than the
    /// aggregate may be of that member.
    /// </summary>
    public static IReadOnlyList<Taxon> WithInherited(IReadOnlyList<Taxon> taxa)
    {
        var byAggregate = taxa.Where(taxon => taxon.AggregateId is not null).ToLookup(taxon => taxon.AggregateId!);
        return byAggregate.Count == 0 ? taxa : [.. taxa.Select(taxon => taxon with { GeneraliseTo = Coarsest(taxon, byAggregate, []) })];
    }

    private static SquareSize? Coarsest(Taxon taxon, ILookup<string, Taxon> byAggregate, HashSet<string> seen)
    {
        var coarsest = taxon.GeneraliseTo;
        // A list may, by mistake, make two aggregates members of each other.
        if (!seen.Add(taxon.Id))
            return coarsest;
        foreach (var member in byAggregate[taxon.Id])
        {
            var of = Coarsest(member, byAggregate, seen);
            coarsest = coarsest is null || of > coarsest ? of ?? coarsest : coarsest;
        }

        return coarsest;
    }
}
