using System.Globalization;
using Dapper;

namespace RangeMap.Store;

/// <summary>Settings that people change while the server runs. No change is lost by the next, so that each can be taken back; every change is a new edition.</summary>
public sealed class SettingHistory(Database database, TimeProvider clock)
{
    /// <summary>The changes of a setting, newest first; the first of them holds.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<SettingChange> Read(string name) => database.Use<IReadOnlyList<SettingChange>>(connection => connection.Query<SettingChange>(SettingHistorySql.Read, new { name }).AsList());

    /// <summary>Changes a setting.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="value">What it is from now on; null for what the program brings.</param>
    /// <param name="by">Who changes it.</param>
    /// <param name="reason">Why.</param>
    /// <param name="seen">Number of the change that the person saw as the newest, 0 for none; null where nobody looked.</param>
    /// <exception cref="StoreException">Somebody else changed it meanwhile, or the database cannot be written to.</exception>
    public void Change(string name, string? value, string by, string reason, long? seen = null) => database.Use(connection =>
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        var newest = connection.ExecuteScalar<long?>(SettingHistorySql.Newest, new { name }, transaction) ?? 0;
        if (seen is { } number && number != newest)
            throw new StoreException("Somebody else changed this meanwhile.", "Look at what holds now, then change it again; nothing was changed.");
        var now = clock.GetUtcNow();
        connection.Execute(SettingHistorySql.Add, new { name, value, at = UtcText.Of(now), by, reason }, transaction);
        Editions.Advance(connection, transaction, string.Create(CultureInfo.InvariantCulture, $"setting {name}"), now);
        transaction.Commit();
        return 0;
    });
}

/// <summary>A change of a setting.</summary>
public sealed record SettingChange
{
    /// <summary>Number by which it can be gone back to.</summary>
    public long Number { get; init; }

    /// <summary>What the setting was from then on; null for what the program brings.</summary>
    public string? Value { get; init; }

    /// <summary>When, ISO 8601 in UTC.</summary>
    public string MadeAt { get; init; } = "";

    /// <summary>Who.</summary>
    public string MadeBy { get; init; } = "";

    /// <summary>Why.</summary>
    public string Reason { get; init; } = "";
}
