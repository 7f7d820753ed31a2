namespace RangeMap.Store;

internal static class AcceptedNameSql
{
    public const string ReadAll = """
        SELECT a.name, t.id AS TaxonId, t.scientific_name AS TaxonName, a.accepted_by AS AcceptedBy, a.accepted_at AS AcceptedAt
        FROM accepted_name AS a JOIN taxon AS t ON t.number = a.taxon ORDER BY a.name
        """;

    public const string Accept = """
        INSERT INTO accepted_name (name, taxon, accepted_by, accepted_at) SELECT @Name, number, @By, @At FROM taxon WHERE id = @TaxonId
        ON CONFLICT (name) DO UPDATE SET taxon = excluded.taxon, accepted_by = excluded.accepted_by, accepted_at = excluded.accepted_at
        """;

    public const string Forget = "DELETE FROM accepted_name WHERE name = @Name";
}
