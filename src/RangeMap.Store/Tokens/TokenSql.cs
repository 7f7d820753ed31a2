namespace RangeMap.Store;

internal static class TokenSql
{
    public const string Add = "INSERT INTO token (name, hash, rights, made_at) VALUES (@Name, @Hash, @Rights, @MadeAt) RETURNING number";

    public const string Find = "SELECT number, name, rights, last_used_at AS LastUsedAt FROM token WHERE hash = @Hash AND revoked_at IS NULL";

    public const string ReadAll =
        "SELECT number, name, rights, made_at AS MadeAt, last_used_at AS LastUsedAt, revoked_at AS RevokedAt FROM token ORDER BY number";

    public const string MarkUsed = "UPDATE token SET last_used_at = @At WHERE number = @Number";

    public const string Revoke = "UPDATE token SET revoked_at = @At WHERE number = @Number AND revoked_at IS NULL";
}
