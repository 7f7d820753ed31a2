namespace RangeMap.Store;

internal static class TaxonSql
{
    public const string ReadTaxa = """
        SELECT number, id, scientific_name AS ScientificName, authorship, rank, vernacular_name AS VernacularName, parent_id AS ParentId,
            taxon_group AS "Group", aggregate_id AS AggregateId, generalise_to AS GeneraliseTo, first_year AS FirstYear, notes
        FROM taxon WHERE replaced_by IS NULL ORDER BY number
        """;

    /// <summary>Names of all taxa by number, those that were merged into others too: a record may have been sent under one.</summary>
    public const string ReadNames = "SELECT number, scientific_name AS Name FROM taxon";

    /// <summary>Other names of taxa; a taxon that was merged is a name of the one that stands at the end of its merges, and so are its synonyms.</summary>
    public const string ReadSynonyms = """
        WITH RECURSIVE standing (number, stands) AS (
            SELECT number, number FROM taxon WHERE replaced_by IS NULL
            UNION ALL SELECT t.number, s.stands FROM taxon AS t JOIN standing AS s ON t.replaced_by = s.number
        )
        SELECT y.id, y.name AS ScientificName, y.authorship, y.vernacular_name AS VernacularName, t.id AS AcceptedId
        FROM synonym AS y JOIN standing AS s ON s.number = y.taxon JOIN taxon AS t ON t.number = s.stands
        UNION ALL
        SELECT m.id, m.scientific_name, m.authorship, m.vernacular_name, t.id
        FROM taxon AS m JOIN standing AS s ON s.number = m.number JOIN taxon AS t ON t.number = s.stands WHERE m.replaced_by IS NOT NULL
        ORDER BY 1
        """;

    public const string StandingIds = "SELECT id FROM taxon WHERE replaced_by IS NULL";

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
