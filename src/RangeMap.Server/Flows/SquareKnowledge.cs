using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>How well a square is known, what came lately and what may be missing.</summary>
/// <param name="NewSince">First of the last five years of the data.</param>
/// <param name="Since">First of the last ten years of the data, in which completeness and what is expected are judged.</param>
/// <param name="LastYear">Last year of the data, everywhere; 0 without records.</param>
/// <param name="NewLately">Numbers of the taxa whose every record here is of the last five years.</param>
/// <param name="VisitsByYear">Visits by year, from the first to the last year with any.</param>
/// <param name="Groups">How complete the lists of each group are.</param>
/// <param name="Expected">Species that were never found here and probably live here, the likeliest first.</param>
/// <param name="Around">The squares round it.</param>
internal sealed record SquareKnowledge(
    int NewSince, int Since, int LastYear, IReadOnlySet<int> NewLately, IReadOnlyList<YearOfVisits> VisitsByYear, IReadOnlyList<GroupKnowledge> Groups,
    IReadOnlyList<ExpectedSpecies> Expected, IReadOnlyList<SquareAround> Around);

/// <summary>The visits of a year.</summary>
/// <param name="Year">The year.</param>
/// <param name="Visits">Visits of which a record was kept.</param>
/// <param name="Complete">Of these, visits with a list of all that was found of a group.</param>
internal sealed record YearOfVisits(int Year, int Visits, int Complete);

/// <summary>How complete the lists of a group are.</summary>
/// <param name="Group">The group; null for taxa without one.</param>
/// <param name="Visits">Visits of the last ten years.</param>
/// <param name="Estimate">Species found and expected, with the interval or why there is none.</param>
/// <param name="WellSurveyed">True where visits and coverage reach the thresholds of <see cref="ChangeOptions"/>.</param>
internal sealed record GroupKnowledge(string? Group, int Visits, RichnessInterval Estimate, bool WellSurveyed);

/// <summary>A species that probably lives in a square where it was never found.</summary>
/// <param name="Taxon">The species.</param>
/// <param name="Chance">What its chance is made from.</param>
internal sealed record ExpectedSpecies(Taxon Taxon, LocalChance Chance);

/// <summary>A square beside another.</summary>
/// <param name="Square">The square.</param>
/// <param name="Species">Species found there, over all dates; aggregates are not counted.</param>
internal sealed record SquareAround(Square Square, int Species);
