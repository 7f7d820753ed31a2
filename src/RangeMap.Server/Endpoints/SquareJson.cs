using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>A square.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Code of its grid.</param>
/// <param name="Size">Its side.</param>
/// <param name="Latitude">Of its middle, degrees.</param>
/// <param name="Longitude">Of its middle, degrees.</param>
/// <param name="Records">Records that count; one of a member of an aggregate counts once.</param>
/// <param name="Visits">Visits over all dates.</param>
/// <param name="CompleteVisits">Of these, with a list of all that was found of a group.</param>
/// <param name="Taxa">The taxa found there, by name.</param>
/// <param name="NewSince">First of the last five years of the data; 0 without records.</param>
/// <param name="NewLately">Identifiers of the taxa whose every record here is of those years.</param>
/// <param name="Since">First of the last ten years of the data.</param>
/// <param name="Until">Last year of the data.</param>
/// <param name="VisitsByYear">Visits by year, from the first to the last year with any.</param>
/// <param name="Completeness">How well each group is known, from the visits of the last ten years.</param>
/// <param name="Expected">Species never found here that probably live here, the likeliest first.</param>
/// <param name="Supports">What supports the taxon that was asked for.</param>
/// <param name="Neighbours">References of the squares round it.</param>
/// <param name="Around">The same with the number of species found there.</param>
internal sealed record SquareJson(
    string Square, string Grid, string Size, double Latitude, double Longitude, int Records, int Visits, int CompleteVisits, IReadOnlyList<SquareTaxonJson> Taxa,
    int NewSince, IReadOnlyList<string> NewLately, int Since, int Until, IReadOnlyList<YearOfVisits> VisitsByYear, IReadOnlyList<CompletenessJson> Completeness, IReadOnlyList<ExpectedJson> Expected,
    SupportJson? Supports, IReadOnlyList<string> Neighbours, IReadOnlyList<AroundJson> Around)
{
    public static SquareJson Of(SquareAnswer answer, SquareKnowledge known)
    {
        var grid = NationalGrid.Get(answer.Square.Grid);
        var centre = grid.ToLatLon(answer.Square.Centre);
        var standFor = answer.Species.Select(found => found.Taxon.AggregateId).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var named = answer.Species.Select(found => found.Taxon.Id).ToHashSet(StringComparer.Ordinal);
        return new(
            answer.Square.ToString(), grid.Code, answer.Square.Size.ToText(), Math.Round(centre.Latitude, 6), Math.Round(centre.Longitude, 6),
            answer.Species.Where(found => found.Taxon.AggregateId is not { } aggregate || !named.Contains(aggregate)).Sum(found => found.Records), answer.Visits, answer.CompleteVisits,
            [.. answer.Species.Select(found => SquareTaxonJson.Of(found, standFor.Contains(found.Taxon.Id)))],
            known.NewSince, [.. answer.Species.Where(found => known.NewLately.Contains(found.Taxon.Number)).Select(found => found.Taxon.Id)], known.Since, known.LastYear, known.VisitsByYear,
            [.. known.Groups.Select(CompletenessJson.Of)], [.. known.Expected.Select(expected => ExpectedJson.Of(expected, known.Since))],
            answer.Support is { } support ? SupportJson.Of(support) : null,
            [.. SquareNeighbours.Of(answer.Square).Select(square => square.ToString())], [.. known.Around.Select(around => new AroundJson(around.Square.ToString(), around.Species))]);
    }
}

/// <summary>A taxon found in a square.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="ScientificName">Scientific name.</param>
/// <param name="VernacularName">Everyday name.</param>
/// <param name="Records">Records that count.</param>
/// <param name="Confirmed">Of these, confirmed.</param>
/// <param name="FirstYear">First certain year.</param>
/// <param name="LastYear">Last certain year.</param>
/// <param name="StandsForOthers">True for an aggregate one of whose members is listed too, so that it is no further species.</param>
internal sealed record SquareTaxonJson(string Id, string ScientificName, string? VernacularName, int Records, int Confirmed, int FirstYear, int LastYear, bool StandsForOthers)
{
    public static SquareTaxonJson Of(SpeciesInSquare found, bool standsForOthers) =>
        new(found.Taxon.Id, found.Taxon.ScientificName, found.Taxon.VernacularName, found.Records, found.Confirmed, found.FirstYear, found.LastYear, standsForOthers);
}

/// <summary>How well a group is known in a square, from the visits of the last ten years (docs/methods/effort.md and expected-species.md).</summary>
/// <param name="Group">The group; null for taxa without one.</param>
/// <param name="Visits">Visits.</param>
/// <param name="Species">Species on their lists.</param>
/// <param name="Estimate">Least number of species that the lists speak for (Chao2); null where too little is known.</param>
/// <param name="Low">Lower end of its 95 % interval; null where there is none.</param>
/// <param name="High">Upper end.</param>
/// <param name="Refused">Why there is no interval, as a sentence; null where there is one.</param>
/// <param name="Coverage">Share, 0 to 1, of all that is there to be met which belongs to a species found.</param>
/// <param name="WellSurveyed">True with enough visits and coverage.</param>
internal sealed record CompletenessJson(string? Group, int Visits, int Species, double? Estimate, double? Low, double? High, string? Refused, double Coverage, bool WellSurveyed)
{
    public static CompletenessJson Of(GroupKnowledge known)
    {
        var (richness, interval) = (known.Estimate.Richness, known.Estimate.Interval);
        return new(
            known.Group, known.Visits, richness.Observed, interval is null ? null : Math.Round(richness.Expected, 1), Rounded.To(interval?.Low, 1), Rounded.To(interval?.High, 1), known.Estimate.Refused,
            Math.Round(richness.Coverage, 3), known.WellSurveyed);
    }
}

/// <summary>A species that was never found in a square and probably lives there.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="ScientificName">Scientific name.</param>
/// <param name="VernacularName">Everyday name.</param>
/// <param name="Group">Its group.</param>
/// <param name="Probability">Chance that it lives there, 0 to 1 (docs/methods/expected-species.md, eq. 3).</param>
/// <param name="Why">The reason in words.</param>
/// <param name="NeighboursWith">Squares round it in which it was found in the last ten years.</param>
/// <param name="NeighboursSearched">Squares round it in which its group was recorded in those years.</param>
/// <param name="Visits">Visits here in those years, which all missed it.</param>
internal sealed record ExpectedJson(
    string Id, string ScientificName, string? VernacularName, string? Group, double Probability, string Why, int NeighboursWith, int NeighboursSearched, int Visits)
{
    public static ExpectedJson Of(ExpectedSpecies expected, int since) => new(
        expected.Taxon.Id, expected.Taxon.ScientificName, expected.Taxon.VernacularName, expected.Taxon.Group, Math.Round(expected.Chance.Probability, 2), ExpectedWords.Of(expected.Chance, since),
        expected.Chance.With, expected.Chance.Searched, expected.Chance.VisitsHere);
}

/// <summary>A square round another.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Species">Species found there, over all dates.</param>
internal sealed record AroundJson(string Square, int Species);
