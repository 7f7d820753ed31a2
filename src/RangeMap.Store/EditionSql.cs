namespace RangeMap.Store;

internal static class EditionSql
{
    public const string Newest = "SELECT number, made_at AS MadeAt FROM edition ORDER BY number DESC LIMIT 1";

    public const string Advance = "INSERT INTO edition (number, made_at, cause) SELECT MAX(number) + 1, @MadeAt, @Cause FROM edition";
}
