using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>A square in two periods.</summary>
/// <param name="Square">Its reference.</param>
/// <param name="Grid">Its side.</param>
/// <param name="From">The earlier period.</param>
/// <param name="To">The later period.</param>
/// <param name="Visits">Visits by group: a species is gained or lost only where its group was looked for in both periods.</param>
/// <param name="Taxa">The species found in either period, by name; aggregates stand for others and are left out.</param>
internal sealed record SquareChangeJson(string Square, string Grid, string From, string To, IReadOnlyList<GroupVisitsJson> Visits, IReadOnlyList<SpeciesChangeJson> Taxa)
{
    public static SquareChangeJson Of(SquareComparison answer) => new(
        answer.Square.ToString(), answer.Square.Size.ToText(), answer.Question.From.Text, answer.Question.To.Text,
        [.. answer.Visits.Select(visits => new GroupVisitsJson(visits.Group, visits.Before, visits.After))], [.. answer.Species.Select(SpeciesChangeJson.Of)]);
}

/// <summary>Visits of a group to a square.</summary>
/// <param name="Group">The group; null for taxa without one.</param>
/// <param name="Before">Visits in the earlier period.</param>
/// <param name="After">Visits in the later period.</param>
internal sealed record GroupVisitsJson(string? Group, int Before, int After);

/// <summary>What became of a species in a square.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="ScientificName">Scientific name.</param>
/// <param name="VernacularName">Everyday name.</param>
/// <param name="Group">Its group.</param>
/// <param name="Change">gained, lost, kept, not-surveyed-before or not-surveyed-after.</param>
/// <param name="Before">Records in the earlier period.</param>
/// <param name="After">Records in the later period.</param>
internal sealed record SpeciesChangeJson(
    string Id, string ScientificName, string? VernacularName, string? Group,
    [property: Words("gained", "lost", "kept", "not-surveyed-before", "not-surveyed-after")] string Change, int Before, int After)
{
    public static SpeciesChangeJson Of(SpeciesChange found) => new(
        found.Taxon.Id, found.Taxon.ScientificName, found.Taxon.VernacularName, found.Taxon.Group, FateWords.Of(found.Fate), found.Before, found.After);
}
