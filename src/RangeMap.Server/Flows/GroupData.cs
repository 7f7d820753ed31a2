using RangeMap.Change;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>
/// Two periods of a group of taxa as the measures of change read them: squares, finds and visits by index, with the way back to squares and taxa.
/// Places of sensitive taxa are coarse already.
/// </summary>
/// <param name="Survey">The survey.</param>
/// <param name="Squares">The square of each index.</param>
/// <param name="Taxa">The taxon of each index.</param>
/// <param name="Plane">Where the survey's kilometres are measured: a national grid, or the equal-area plane where squares of several grids meet.</param>
internal sealed record GroupData(GroupSurvey Survey, IReadOnlyList<Square> Squares, IReadOnlyList<Taxon> Taxa, INationalGrid Plane)
{
    private const double MetresPerKm = 1000;

    /// <summary>Index of a taxon.</summary>
    public int IndexOf(Taxon taxon) => Taxa.Select((t, i) => (t, i)).First(pair => pair.t.Number == taxon.Number).i;

    /// <summary>Gathers a group's data.</summary>
    /// <param name="data">The data.</param>
    /// <param name="group">The group; null for taxa without one.</param>
    /// <param name="aggregate">An aggregate that takes the place of its members; null to leave aggregates out, so that no record counts twice.</param>
    /// <param name="size">Side of the squares.</param>
    /// <param name="periods">The periods.</param>
    /// <param name="quality">Which records count as finds; every visit counts as effort.</param>
    public static GroupData Of(DataSnapshot data, string? group, Taxon? aggregate, SquareSize size, IReadOnlyList<Period> periods, Quality quality)
    {
        var taxa = TaxaOf(data, group, aggregate);
        var maps = taxa.Select(taxon => PresenceFold.Fold(data.Cube(taxon, size), periods, quality)).ToList();
        var indexOfTaxon = IndexByNumber(data, taxa);
        var visits = data.VisitLists(group, size);
        var squares = maps.SelectMany(map => map.Squares.Select(found => found.Square))
            .Concat(visits.Where(visit => periods.Any(period => period.Contains(visit.Day, visit.Day))).Select(visit => visit.Square))
            .Distinct().OrderBy(square => square.Code).ToList();
        var index = squares.Select((square, i) => (square, i)).ToDictionary(pair => pair.square, pair => pair.i);
        var plane = PlaneOf(squares);
        var survey = new GroupSurvey(
            [.. squares.Select(square => OnPlane(square, plane))], taxa.Count,
            [.. periods.Select((period, p) => PeriodOf(period, p, maps, visits, index, indexOfTaxon))]);
        return new(survey, squares, taxa, plane);
    }

    private static List<Taxon> TaxaOf(DataSnapshot data, string? group, Taxon? aggregate)
    {
        var ofGroup = data.Taxa.Where(taxon => taxon.Group == group).ToList();
        var within = aggregate is null ? [] : data.WithMembers(aggregate).Select(taxon => taxon.Number).ToHashSet();
        return [.. ofGroup.Where(taxon => taxon.Number == aggregate?.Number || (!within.Contains(taxon.Number) && !data.Members(taxon).Any()))];
    }

    /// <summary>The index of every taxon number; of members of an aggregate that takes their place, the aggregate's.</summary>
    private static Dictionary<int, int> IndexByNumber(DataSnapshot data, List<Taxon> taxa)
    {
        var index = new Dictionary<int, int>();
        for (var i = 0; i < taxa.Count; i++)
        {
            foreach (var member in data.WithMembers(taxa[i]))
                index.TryAdd(member.Number, i);
        }

        return index;
    }

    private static SurveyPeriod PeriodOf(
        Period period, int p, List<PresenceMap> maps, IReadOnlyList<VisitList> visits, Dictionary<Square, int> index, Dictionary<int, int> indexOfTaxon)
    {
        var finds = maps.SelectMany((map, taxon) => map.Squares
            .Where(found => found.PerPeriod[p].Records > 0)
            .Select(found => (index[found.Square], taxon, found.PerPeriod[p].Records)));
        var within = visits
            .Where(visit => period.Contains(visit.Day, visit.Day))
            .Select(visit => (index[visit.Square], visit.Day, visit.Recorder, Array.FindAll(visit.Taxa, indexOfTaxon.ContainsKey).Select(number => indexOfTaxon[number]).ToArray()))
            .ToList();
        var found = maps.SelectMany(map => map.Squares).Select(square => square.PerPeriod[p]).Where(count => count.Records > 0).ToList();
        var years = found.Select(count => count.FirstYear).Concat(found.Select(count => count.LastYear))
            .Concat(within.Select(visit => DateOnly.FromDayNumber(visit.Day).Year)).DefaultIfEmpty().ToList();
        return new(
            period.Text,
            period.FirstDay == int.MinValue ? years.Min() : DateOnly.FromDayNumber(period.FirstDay).Year,
            period.EndDay == int.MaxValue ? years.Max() : DateOnly.FromDayNumber(period.EndDay - 1).Year,
            FoundTable.Of(index.Count, maps.Count, finds), VisitTable.Of(index.Count, within));
    }

    private static INationalGrid PlaneOf(List<Square> squares)
    {
        var grids = squares.Select(square => square.Grid).Distinct().ToList();
        return NationalGrid.Get(grids is [var only] ? only : squares.Count == 0 ? GridId.British : GridId.European);
    }

    private static SurveySquare OnPlane(Square square, INationalGrid plane)
    {
        var own = NationalGrid.Get(square.Grid);
        var corners = SquareOutline.OnOwnPlane(square);
        PlanePoint At(int corner)
        {
            var point = own.Id == plane.Id ? corners[corner] : plane.FromLatLon(own.ToLatLon(corners[corner]));
            return new(point.Easting / MetresPerKm, point.Northing / MetresPerKm);
        }

        return new(At(0), At(1), At(2), At(3));
    }
}
