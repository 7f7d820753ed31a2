namespace RangeMap.Store;

internal static class TaxonSql
{
    public const string ReadTaxa = """
        SELECT number, id, scientific_name AS ScientificName, authorship, rank, vernacular_name AS VernacularName, parent_id AS ParentId,
            taxon_group AS "Group", aggregate_id AS AggregateId, generalise_to AS GeneraliseTo, first_year AS FirstYear, notes
        FROM taxon ORDER BY number
        """;

    public const string ReadSynonyms =
        "SELECT s.id, s.name AS ScientificName, s.authorship, s.vernacular_name AS VernacularName, t.id AS AcceptedId FROM synonym AS s JOIN taxon AS t ON t.number = s.taxon ORDER BY s.id";

    public const string KeepTaxon = """
        INSERT INTO taxon (id, scientific_name, authorship, rank, vernacular_name, parent_id, taxon_group, aggregate_id, generalise_to, first_year, notes)
        VALUES (@Id, @ScientificName, @Authorship, @Rank, @VernacularName, @ParentId, @Group, @AggregateId, @GeneraliseTo, @FirstYear, @Notes)
        ON CONFLICT (id) DO UPDATE SET scientific_name = excluded.scientific_name, authorship = excluded.authorship, rank = excluded.rank,
            vernacular_name = excluded.vernacular_name, parent_id = excluded.parent_id, taxon_group = excluded.taxon_group,
            aggregate_id = excluded.aggregate_id, generalise_to = excluded.generalise_to, first_year = excluded.first_year, notes = excluded.notes
        RETURNING number
        """;

    /// <summary>Adds a taxon that a file of records named; one that the list has meanwhile keeps all that the list says of it.</summary>
    public const string AddTaxon = """
        INSERT INTO taxon (id, scientific_name, rank, notes) VALUES (@Id, @ScientificName, @Rank, @Notes)
        ON CONFLICT (id) DO UPDATE SET id = excluded.id RETURNING number
        """;

    public const string KeepSynonym = """
        INSERT INTO synonym (id, name, authorship, vernacular_name, taxon)
        SELECT @Id, @ScientificName, @Authorship, @VernacularName, number FROM taxon WHERE id = @AcceptedId
        ON CONFLICT (id) DO UPDATE SET name = excluded.name, authorship = excluded.authorship, vernacular_name = excluded.vernacular_name,
            taxon = excluded.taxon
        """;
}
