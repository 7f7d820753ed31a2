namespace RangeMap.Store;

internal static class TaxonChangeSql
{
    public const string FindTaxon = """
        SELECT number, id, scientific_name AS ScientificName, authorship, rank, aggregate_id AS AggregateId, replaced_by AS ReplacedBy FROM taxon WHERE id = @id
        """;

    public const string FindNumber = """
        SELECT number, id, scientific_name AS ScientificName, authorship, rank, aggregate_id AS AggregateId, replaced_by AS ReplacedBy FROM taxon WHERE number = @number
        """;

    public const string Restore = """
        UPDATE taxon SET scientific_name = @ScientificName, authorship = @Authorship, rank = @Rank, aggregate_id = @AggregateId, replaced_by = @ReplacedBy
        WHERE number = @Number
        """;

    public const string AddSynonym =
        "INSERT INTO synonym (id, name, authorship, taxon) VALUES (@Id, @Name, @Authorship, @Taxon)";

    public const string RemoveSynonym = "DELETE FROM synonym WHERE id = @id";

    public const string Add = """
        INSERT INTO taxon_change (kind, taxon, made_at, made_by, reason, words, before, decision_set)
        VALUES (@Kind, @Taxon, @MadeAt, @By, @Reason, @Words, @Before, @DecisionSet) RETURNING number
        """;

    public const string Mark = "UPDATE taxon_change SET undone_at = @At WHERE number = @Number";

    private const string Read = """
        SELECT c.number, c.kind, t.id AS TaxonId, t.scientific_name AS TaxonName, c.made_at AS MadeAt, c.made_by AS MadeBy, c.reason, c.words, c.before,
            c.decision_set AS DecisionSet, c.undone_at AS UndoneAt
        FROM taxon_change AS c JOIN taxon AS t ON t.number = c.taxon
        """;

    public const string ReadAll = $"{Read} ORDER BY c.number DESC";

    public const string ReadOne = $"{Read} WHERE c.number = @number";

    /// <summary>A change that is not the last on a taxon cannot be taken back before the later ones.</summary>
    public const string LaterOnTaxon = """
        SELECT MIN(number) FROM taxon_change WHERE number > @number AND undone_at IS NULL
            AND EXISTS (SELECT 1 FROM json_each(taxon_change.before) AS b WHERE json_extract(b.value, '$.Number') IN @numbers)
        """;

    /// <summary>The records of a taxon that a rule names; the conditions are those of <see cref="RecordSql.Condition"/> and these.</summary>
    public static string RecordsOf(IEnumerable<string> conditions) => $"""
        SELECT r.id, r.dataset, r.key_high AS KeyHigh, r.key_low AS KeyLow FROM record AS r LEFT JOIN word AS g ON g.number = r.stage
            LEFT JOIN word AS x ON x.number = r.sex
        WHERE {string.Join(" AND ", conditions)} ORDER BY r.id
        """;

    public const string OfTaxon = "r.taxon = @Taxon";

    public const string Stage = "g.text = @Stage";

    public const string Sex = "x.text = @Sex";
}
