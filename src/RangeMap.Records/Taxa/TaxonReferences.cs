namespace RangeMap.Records;

/// <summary>Follows the references between the rows of a taxon list and refuses those to missing rows.</summary>
/// <param name="rows">The rows by taxonID; refused ones are taken out.</param>
/// <param name="known">Taxa that are loaded already.</param>
internal sealed class TaxonReferences(Dictionary<string, TaxonRow> rows, TaxonList known)
{
    /// <summary>Refuses rows that refer to a missing one, then those that referred to these, until none is left.</summary>
    public IReadOnlyList<Refusal> RefuseDangling()
    {
        var refusals = new List<Refusal>();
        while (true)
        {
            var found = rows.Values.Select(FindDangling).OfType<(TaxonRow Row, Refusal Refusal)>().ToList();
            foreach (var (row, refusal) in found)
            {
                rows.Remove(row.Taxon.Id);
                refusals.Add(refusal);
            }

            if (found.Count == 0)
                return refusals;
        }
    }

    /// <summary>Refuses an accepted name that another accepted row has with the same authorship.</summary>
    public IReadOnlyList<Refusal> RefuseHomonyms()
    {
        var repeated = rows.Values
            .Where(r => !r.IsSynonym)
            .GroupBy(r => $"{r.Taxon.ScientificName}\n{r.Taxon.Authorship}", StringComparer.OrdinalIgnoreCase)
            .SelectMany(g => g.OrderBy(r => r.Row).Skip(1).Select(r => (Row: r, First: g.Min(other => other.Line))))
            .ToList();
        foreach (var (row, _) in repeated)
            rows.Remove(row.Taxon.Id);
        return [.. repeated.Select(r => r.Row.Refuse(TaxonColumns.Name, r.Row.Taxon.ScientificName, $"The same name and authorship stand on line {r.First} under another taxonID. Make one the synonym of the other, or give their authorships.")),
            .. RefuseDangling()];
    }

    /// <summary>The accepted taxa, in the order of the file.</summary>
    public IEnumerable<Taxon> Accepted() => rows.Values.Where(r => !r.IsSynonym).OrderBy(r => r.Row).Select(r => r.Taxon);

    /// <summary>The synonyms, each with the accepted taxon at the end of its chain.</summary>
    public IEnumerable<Synonym> Synonyms() => rows.Values.Where(r => r.IsSynonym).OrderBy(r => r.Row).Select(r => r.ToSynonym(EndOfChain(r)!));

    private (TaxonRow, Refusal)? FindDangling(TaxonRow row)
    {
        foreach (var (field, id) in ReferencesOf(row))
        {
            if (!rows.ContainsKey(id) && known.FindById(id) is null)
                return (row, row.Refuse(field, id, $"The list has no taxon with the taxonID \"{id}\", or its row was refused."));
        }

        return row.IsSynonym && EndOfChain(row) is null
            ? (row, row.Refuse(TaxonColumns.Accepted, row.AcceptedId!, "The synonyms go round in a circle and never reach an accepted name."))
            : null;
    }

    private static IEnumerable<(string Field, string Id)> ReferencesOf(TaxonRow row) =>
        new (string Field, string? Id)[] { (TaxonColumns.Accepted, row.AcceptedId), (TaxonColumns.Parent, row.Taxon.ParentId), (TaxonColumns.Aggregate, row.Taxon.AggregateId) }
            .Where(r => r.Id is not null).Select(r => (r.Field, r.Id!))
            .Concat(row.Taxon.Marks.ConfusedWith.Select(id => (TaxonMarksText.ConfusedWith, id)));

    /// <summary>The taxonID of the accepted taxon at the end of a chain of synonyms; null if the chain is a circle.</summary>
    private string? EndOfChain(TaxonRow row)
    {
        for (var steps = 0; steps <= rows.Count; steps++)
        {
            if (!row.IsSynonym)
                return row.Taxon.Id;
            if (!rows.TryGetValue(row.AcceptedId!, out var next))
                return known.FindById(row.AcceptedId)?.Id;
            row = next;
        }

        return null;
    }
}
