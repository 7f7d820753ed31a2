using Dapper;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Keeps the taxon list.</summary>
public sealed class TaxonStore(Database database, TimeProvider clock)
{
    /// <summary>Every accepted taxon, by number.</summary>
    public IReadOnlyList<Taxon> ReadTaxa()
    {
        using var connection = database.Connect();
        return [.. connection.Query<TaxonRow>(TaxonSql.ReadTaxa).Select(row => row.ToTaxon())];
    }

    /// <summary>Every other name of a taxon.</summary>
    public IReadOnlyList<StoredSynonym> ReadSynonyms()
    {
        using var connection = database.Connect();
        return connection.Query<StoredSynonym>(TaxonSql.ReadSynonyms).AsList();
    }

    /// <summary>Adds taxa and synonyms, or updates those whose identifier is known; taxa that the list no longer names stay.</summary>
    /// <returns>The taxa with their numbers.</returns>
    public IReadOnlyList<Taxon> Keep(IEnumerable<Taxon> taxa, IEnumerable<StoredSynonym> synonyms)
    {
        using var connection = database.Connect();
        using var transaction = connection.BeginTransaction();
        var kept = taxa
            .Select(taxon => taxon with { Number = connection.ExecuteScalar<int>(TaxonSql.KeepTaxon, TaxonRow.Of(taxon), transaction) })
            .ToList();
        foreach (var synonym in synonyms)
            connection.Execute(TaxonSql.KeepSynonym, synonym, transaction);
        Editions.Advance(connection, transaction, "taxon list", clock.GetUtcNow());
        transaction.Commit();
        return kept;
    }
}

/// <summary>Another name of an accepted taxon.</summary>
public sealed record StoredSynonym
{
    /// <summary>The taxonID of the name.</summary>
    public string Id { get; init; } = "";

    /// <summary>The name without authorship.</summary>
    public string Name { get; init; } = "";

    /// <summary>Authorship of the name.</summary>
    public string? Authorship { get; init; }

    /// <summary>taxonID of the accepted taxon.</summary>
    public string AcceptedId { get; init; } = "";
}
