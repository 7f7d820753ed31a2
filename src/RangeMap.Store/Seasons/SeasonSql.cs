namespace RangeMap.Store;

internal static class SeasonSql
{
    /// <summary>Absences and rejected records say nothing of a season.</summary>
    public const string Read = """
        SELECT g.text AS Stage, x.text AS Sex, h.text AS Host, r.FirstDay, r.LastDay, r.status, r.doubts, r.Records
        FROM (
            SELECT stage, sex, host, first_day AS FirstDay, last_day AS LastDay, status, doubts, COUNT(*) AS Records
            FROM record WHERE taxon IN @Taxa AND present = 1 AND status <> 3 GROUP BY 1, 2, 3, 4, 5, 6, 7
        ) AS r LEFT JOIN word AS g ON g.number = r.stage LEFT JOIN word AS x ON x.number = r.sex LEFT JOIN word AS h ON h.number = r.host
        """;
}
