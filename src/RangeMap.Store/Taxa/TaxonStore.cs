using Dapper;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Keeps the taxon list.</summary>
public sealed class TaxonStore(Database database, TimeProvider clock)
{
    /// <summary>The whole list.</summary>
    public TaxonList Read() => new(ReadTaxa(), ReadSynonyms());

    /// <summary>Every accepted taxon, by number.</summary>
    public IReadOnlyList<Taxon> ReadTaxa() => database.Use<IReadOnlyList<Taxon>>(connection =>
        [.. connection.Query<TaxonRow>(TaxonSql.ReadTaxa).Select(row => row.ToTaxon())]);

    /// <summary>Every other name of a taxon.</summary>
    public IReadOnlyList<Synonym> ReadSynonyms() => database.Use<IReadOnlyList<Synonym>>(connection =>
        [.. connection.Query<SynonymRow>(TaxonSql.ReadSynonyms).Select(row => row.ToSynonym())]);

    /// <summary>Scientific names by number, those of taxa that were merged into others too.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyDictionary<int, string> ReadNames() => database.Use<IReadOnlyDictionary<int, string>>(connection =>
        connection.Query<(long Number, string Name)>(TaxonSql.ReadNames).ToDictionary(row => (int)row.Number, row => row.Name));

    /// <summary>Adds taxa and synonyms, or updates those whose identifier is known; taxa that the list no longer names stay.</summary>
    /// <returns>The taxa with their numbers.</returns>
    /// <exception cref="StoreException">The database cannot be written to; nothing of the list is kept.</exception>
    public IReadOnlyList<Taxon> Keep(IEnumerable<Taxon> taxa, IEnumerable<Synonym> synonyms) => database.Use(connection =>
    {
        using var transaction = connection.BeginTransaction();
        var kept = taxa
            .Select(taxon => taxon with { Number = connection.ExecuteScalar<int>(TaxonSql.KeepTaxon, TaxonRow.Of(taxon), transaction) })
            .ToList();
        var standing = connection.Query<string>(TaxonSql.StandingIds, transaction: transaction).ToHashSet(StringComparer.Ordinal);
        // A taxon with records that the list now calls a synonym is no row of synonyms but a merge; see TaxonChangeStore.
        foreach (var synonym in synonyms.Where(synonym => !standing.Contains(synonym.Id)))
            connection.Execute(TaxonSql.KeepSynonym, synonym, transaction);
        Editions.Advance(connection, transaction, "taxon list", clock.GetUtcNow());
        transaction.Commit();
        return kept;
    });
}
