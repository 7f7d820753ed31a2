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

    /// <summary>Adds taxa and synonyms, or updates those whose identifier is known; taxa that the list no longer names stay.</summary>
    /// <returns>The taxa with their numbers.</returns>
    /// <exception cref="StoreException">The database cannot be written to; nothing of the list is kept.</exception>
    public IReadOnlyList<Taxon> Keep(IEnumerable<Taxon> taxa, IEnumerable<Synonym> synonyms) => database.Use(connection =>
    {
        using var transaction = connection.BeginTransaction();
        var kept = taxa
            .Select(taxon => taxon with { Number = connection.ExecuteScalar<int>(TaxonSql.KeepTaxon, TaxonRow.Of(taxon), transaction) })
            .ToList();
        foreach (var synonym in synonyms)
            connection.Execute(TaxonSql.KeepSynonym, synonym, transaction);
        Editions.Advance(connection, transaction, "taxon list", clock.GetUtcNow());
        transaction.Commit();
        return kept;
    });
}
