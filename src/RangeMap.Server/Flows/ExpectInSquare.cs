using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Names the species that probably live in a square where they were never found (docs/methods/expected-species.md).</summary>
internal static class ExpectInSquare
{
    /// <summary>Neighbours in which a species must have been found lately.</summary>
    public const int LeastNeighbours = 3;

    /// <summary>Chance below which a species is not named.</summary>
    public const double LeastChance = 0.25;

    private const int MostNamed = 30;

    /// <summary>The species, the likeliest first; never a sensitive one.</summary>
    public static IReadOnlyList<ExpectedSpecies> Of(SquareSurroundings near) =>
    [
        .. near.Groups.SelectMany(group => OfGroup(near, group))
            .Where(expected => expected.Chance.Probability >= LeastChance)
            .OrderByDescending(expected => expected.Chance.Probability).ThenBy(expected => expected.Taxon.ScientificName, StringComparer.Ordinal)
            .Take(MostNamed),
    ];

    private static IEnumerable<ExpectedSpecies> OfGroup(SquareSurroundings near, string? group)
    {
        var species = near.Species.Where(taxon => taxon.Group == group).ToList();
        var searched = near.Neighbours.Where(square => near.VisitsTo(square, group).Count > 0 || species.Exists(taxon => near.FoundLately(taxon, square))).ToList();
        if (searched.Count < LeastNeighbours)
            yield break;
        var visitsHere = near.VisitsTo(near.Square, group).Count;
        // Nobody is sent to look for a sensitive species.
        foreach (var taxon in species.Where(taxon => taxon.GeneraliseTo is null && !near.FoundEver(taxon, near.Square)))
        {
            var with = searched.FindAll(square => near.FoundLately(taxon, square));
            if (with.Count >= LeastNeighbours)
                yield return new(taxon, ChanceOf(near, taxon, with, [.. searched.Except(with).Select(square => near.VisitsTo(square, group).Count)], visitsHere));
        }
    }

    private static LocalChance ChanceOf(SquareSurroundings near, Taxon taxon, List<Square> with, IReadOnlyList<int> visitsWithout, int visitsHere)
    {
        int squares = 0, visits = 0, noted = 0;
        foreach (var there in with.Select(square => near.VisitsTo(square, taxon.Group)))
        {
            var notes = there.Count(visit => Array.BinarySearch(visit.Taxa, taxon.Number) >= 0);
            if (notes == 0)
                continue;
            (squares, visits, noted) = (squares + 1, visits + there.Count, noted + notes);
        }

        return new(with.Count, visitsWithout, squares, visits, noted, visitsHere);
    }
}
