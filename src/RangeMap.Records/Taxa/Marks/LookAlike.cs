namespace RangeMap.Records;

/// <summary>A taxon among those that a record may be mistaken for, with what the list says of it at the record's stage; for showing beside a record in review.</summary>
/// <param name="Taxon">The taxon.</param>
/// <param name="Marks">What separates it, each by the stage that the list gives; for every stage where the stage is null.</param>
/// <param name="Evidence">What suffices to name it.</param>
public sealed record LookAlike(Taxon Taxon, IReadOnlyList<StageEntry<string>> Marks, IReadOnlyList<StageEntry<string>> Evidence)
{
    /// <summary>
    /// The taxon itself and each that it is mistaken for, whichever of the two rows says so; the taxon alone where the list knows of none.
    /// </summary>
    /// <param name="list">The taxon list.</param>
    /// <param name="taxon">The taxon of a record.</param>
    /// <param name="stage">The record's stage, or null.</param>
    /// <param name="sex">The record's sex, or null.</param>
    public static IReadOnlyList<LookAlike> Of(TaxonList list, Taxon taxon, string? stage, string? sex) =>
        [.. new[] { taxon }
            .Concat(taxon.Marks.ConfusedWith.Select(id => list.FindById(id)).OfType<Taxon>())
            .Concat(list.Taxa.Where(other => other.Marks.ConfusedWith.Contains(taxon.Id, StringComparer.Ordinal)))
            .DistinctBy(t => t.Id)
            .Select(t => Describe(t, stage, sex))];

    private static LookAlike Describe(Taxon taxon, string? stage, string? sex) => new(
        taxon,
        WithGeneral(taxon.Marks.Marks, stage, sex),
        [.. WithGeneral(taxon.Marks.Evidence, stage, sex).Select(e => new StageEntry<string>(e.Stage, e.Value.Text))]);

    /// <summary>What holds for every stage is shown beside what holds for this one.</summary>
    private static StageEntry<T>[] WithGeneral<T>(StageTable<T> table, string? stage, string? sex) =>
        [.. table.Entries.Where(e => e.Stage is null).Concat(table.For(stage, sex)).Distinct()];
}
