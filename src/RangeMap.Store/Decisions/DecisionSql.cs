namespace RangeMap.Store;

internal static class DecisionSql
{
    private const string Row =
        "number, decision_set AS DecisionSet, dataset, key_high AS KeyHigh, key_low AS KeyLow, basis, status, taxon";

    public const string DecidedKeys = "SELECT key_low FROM decision";

    public const string OfRecord =
        $"SELECT {Row} FROM decision WHERE key_high = @KeyHigh AND key_low = @KeyLow AND dataset = @Dataset ORDER BY number";

    public const string OfSet = $"SELECT {Row} FROM decision WHERE decision_set = @set ORDER BY number";

    public const string AddSet =
        "INSERT INTO decision_set (made_at, made_by, reason, reverses) VALUES (@MadeAt, @By, @Reason, @Reverses) RETURNING number";

    public const string Add = """
        INSERT INTO decision (decision_set, dataset, key_high, key_low, basis, status, taxon)
        VALUES (@DecisionSet, @Dataset, @KeyHigh, @KeyLow, @Basis, @Status, @Taxon)
        """;

    public const string FindRecord =
        $"SELECT {ImportSql.RowColumns} FROM record WHERE key_high = @KeyHigh AND key_low = @KeyLow AND dataset = @Dataset";

    public const string Stand = """
        UPDATE record SET taxon = @Taxon, status = @Status, doubts = @Doubts, sent_taxon = @SentTaxon, sent_status = @SentStatus WHERE id = @Id
        """;

    public const string FindSet = "SELECT number FROM decision_set WHERE number = @set";

    public const string FindReversal = "SELECT number FROM decision_set WHERE reverses = @set LIMIT 1";

    public const string History = """
        SELECT d.number, d.decision_set AS DecisionSet, s.made_at AS MadeAt, s.made_by AS MadeBy, s.reason, s.reverses, d.basis, d.status, t.id AS TaxonId,
            t.scientific_name AS TaxonName
        FROM decision AS d JOIN decision_set AS s ON s.number = d.decision_set LEFT JOIN taxon AS t ON t.number = d.taxon
        WHERE d.key_high = @KeyHigh AND d.key_low = @KeyLow AND d.dataset = @Dataset ORDER BY d.number
        """;

    public const string Sets = """
        SELECT s.number, s.made_at AS MadeAt, s.made_by AS MadeBy, s.reason, s.reverses, r.number AS ReversedBy,
            (SELECT COUNT(*) FROM decision WHERE decision_set = s.number) AS Records
        FROM decision_set AS s LEFT JOIN decision_set AS r ON r.reverses = s.number
        ORDER BY s.number DESC LIMIT @Limit
        """;

    public const string FindTaxon = "SELECT number FROM taxon WHERE id = @id";
}
