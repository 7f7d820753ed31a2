using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Visits and finds of some recent years in a square and in those round it, as the questions about what may be missing need them.</summary>
internal sealed class SquareSurroundings
{
    private readonly DataSnapshot _data;
    private readonly Quality _quality;
    private readonly Dictionary<string, ILookup<Square, VisitList>> _visits = new(StringComparer.Ordinal);
    private readonly HashSet<int> _species;

    /// <summary>Gathers them.</summary>
    /// <param name="data">The data.</param>
    /// <param name="square">The square in the middle.</param>
    /// <param name="recent">The years.</param>
    /// <param name="quality">Which records count as finds.</param>
    public SquareSurroundings(DataSnapshot data, Square square, Period recent, Quality quality)
    {
        (_data, Square, Recent, _quality) = (data, square, recent, quality);
        Neighbours = SquareNeighbours.Of(square);
        // An aggregate stands for its members, and would count twice.
        var aggregates = data.Taxa.Select(taxon => taxon.AggregateId).OfType<string>().ToHashSet(StringComparer.Ordinal);
        Species = [.. data.Taxa.Where(taxon => !aggregates.Contains(taxon.Id))];
        _species = [.. Species.Select(taxon => taxon.Number)];
        Groups = [.. data.Taxa.Select(taxon => taxon.Group).Distinct().OrderBy(group => group, StringComparer.Ordinal)];
        var near = VisitsNear.Of(data.Visits, square);
        foreach (var group in Groups)
        {
            var numbers = data.Taxa.Where(taxon => taxon.Group == group).Select(taxon => taxon.Number).ToHashSet();
            _visits.Add(group ?? "", VisitList.Of(near, square.Size, numbers.Contains).Where(visit => recent.Contains(visit.Day, visit.Day)).ToLookup(visit => visit.Square));
        }
    }

    /// <summary>The square in the middle.</summary>
    public Square Square { get; }

    /// <summary>The years.</summary>
    public Period Recent { get; }

    /// <summary>Up to eight squares round it.</summary>
    public IReadOnlyList<Square> Neighbours { get; }

    /// <summary>The taxa that stand for no others.</summary>
    public IReadOnlyList<Taxon> Species { get; }

    /// <summary>The groups; null for taxa without one.</summary>
    public IReadOnlyList<string?> Groups { get; }

    /// <summary>True for the number of a taxon that stands for no others.</summary>
    public bool IsSpecies(int number) => _species.Contains(number);

    /// <summary>The recent visits of a group to one of the squares.</summary>
    public IReadOnlyList<VisitList> VisitsTo(Square square, string? group) => [.. _visits[group ?? ""][square]];

    /// <summary>True when a taxon was ever found in one of the squares.</summary>
    public bool FoundEver(Taxon taxon, Square square) => Found(taxon, square, int.MinValue, int.MaxValue);

    /// <summary>True when it was certainly found there in the recent years.</summary>
    public bool FoundLately(Taxon taxon, Square square) => Found(taxon, square, Recent.FirstDay, Recent.EndDay);

    /// <summary>Number of species ever found in one of the squares.</summary>
    public int SpeciesEver(Square square) => Species.Count(taxon => FoundEver(taxon, square));

    private bool Found(Taxon taxon, Square square, int firstDay, int endDay)
    {
        foreach (ref readonly var cell in _data.Cube(taxon, square.Size).In(square))
        {
            if (cell.Counts.At(_quality) > 0 && cell.FirstDay >= firstDay && cell.LastDay < endDay)
                return true;
        }

        return false;
    }
}
