using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Dapper;

namespace RangeMap.Store;

/// <summary>Makes, knows and revokes the tokens by which programs and people write over HTTP. The secret itself is told once and never kept.</summary>
public sealed class TokenStore(Database database, TimeProvider clock)
{
    /// <summary>Begins every token, so that one that leaked can be recognised for what it is.</summary>
    public const string Prefix = "rangemap-";

    private const int SecretBytes = 32;
    private static readonly TimeSpan NoteUseEvery = TimeSpan.FromHours(1);

    /// <summary>Makes a token.</summary>
    /// <param name="name">Whose it is; stands in the history of decisions.</param>
    /// <param name="rights">What it allows.</param>
    /// <returns>The token, which cannot be had again.</returns>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public (long Number, string Secret) Make(string name, IReadOnlyList<string> rights)
    {
        var secret = Prefix + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
        var number = database.Use(connection => connection.ExecuteScalar<long>(
            TokenSql.Add, new { Name = name, Hash = HashOf(secret), Rights = string.Join(' ', rights), MadeAt = Now() }));
        return (number, secret);
    }

    /// <summary>The token of a secret; null when there is none or it was revoked.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public KnownToken? Find(string secret)
    {
        if (!secret.StartsWith(Prefix, StringComparison.Ordinal) || secret.Length != Prefix.Length + 2 * SecretBytes)
            return null;
        return database.Use(connection =>
        {
            var found = connection.QuerySingleOrDefault<KnownToken>(TokenSql.Find, new { Hash = HashOf(secret) });
            // Noted now and then: a write for every request would queue behind an import.
            if (found is not null && IsOld(found.LastUsedAt))
                connection.Execute(TokenSql.MarkUsed, new { found.Number, At = Now() });
            return found;
        });
    }

    /// <summary>All tokens, the revoked ones too.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<KnownToken> ReadAll() => database.Use<IReadOnlyList<KnownToken>>(connection => connection.Query<KnownToken>(TokenSql.ReadAll).AsList());

    /// <summary>Revokes a token; false when there is none of this number that still counts.</summary>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public bool Revoke(long number) => database.Use(connection => connection.Execute(TokenSql.Revoke, new { Number = number, At = Now() }) > 0);

    private bool IsOld(string? usedAt) =>
        usedAt is null || clock.GetUtcNow() - DateTimeOffset.Parse(usedAt, CultureInfo.InvariantCulture) > NoteUseEvery;

    private string Now() => UtcText.Of(clock.GetUtcNow());

    private static byte[] HashOf(string secret) => SHA256.HashData(Encoding.UTF8.GetBytes(secret));
}

/// <summary>A token without its secret.</summary>
public sealed record KnownToken
{
    /// <summary>Its number.</summary>
    public long Number { get; init; }

    /// <summary>Whose it is.</summary>
    public string Name { get; init; } = "";

    /// <summary>What it allows, words with spaces between.</summary>
    public string Rights { get; init; } = "";

    /// <summary>When it was made, ISO 8601 in UTC.</summary>
    public string MadeAt { get; init; } = "";

    /// <summary>When it was used last, to the hour or so.</summary>
    public string? LastUsedAt { get; init; }

    /// <summary>When it was revoked; null while it counts.</summary>
    public string? RevokedAt { get; init; }
}
