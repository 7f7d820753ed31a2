using Dapper;

namespace RangeMap.Store;

/// <summary>Keeps the regions that a user loaded.</summary>
public sealed class RegionStore(Database database)
{
    /// <summary>The property under which the name stands in each kept feature.</summary>
    public const string NameProperty = "name";

    /// <summary>Every region, by name.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<StoredRegion> ReadAll() => database.Use<IReadOnlyList<StoredRegion>>(connection => connection.Query<StoredRegion>(RegionSql.ReadAll).AsList());

    /// <summary>Adds regions, or replaces those of the same name.</summary>
    /// <param name="regions">Name and feature collection of each.</param>
    /// <param name="now">When they are loaded.</param>
    /// <exception cref="StoreException">The database cannot be written to; none is kept.</exception>
    public void Keep(IEnumerable<(string Name, string GeoJson)> regions, DateTimeOffset now) => database.Use(connection =>
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        var at = UtcText.Of(now);
        foreach (var (name, geoJson) in regions)
            connection.Execute(RegionSql.Keep, new { Name = name, GeoJson = geoJson, At = at }, transaction);
        Editions.Advance(connection, transaction, "regions", now);
        transaction.Commit();
        return true;
    });

    /// <summary>Removes a region; false when there is none of the name.</summary>
    /// <param name="name">The region.</param>
    /// <param name="now">When it is removed.</param>
    /// <exception cref="StoreException">The database cannot be written to.</exception>
    public bool Remove(string name, DateTimeOffset now) => database.Use(connection =>
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        if (connection.Execute(RegionSql.Remove, new { name }, transaction) == 0)
            return false;
        Editions.Advance(connection, transaction, "regions", now);
        transaction.Commit();
        return true;
    });
}

/// <summary>A region that a user loaded.</summary>
public sealed record StoredRegion
{
    /// <summary>Its name.</summary>
    public string Name { get; init; } = "";

    /// <summary>A GeoJSON feature collection in longitude and latitude.</summary>
    public string GeoJson { get; init; } = "";

    /// <summary>When it was loaded, ISO 8601 in UTC.</summary>
    public string LoadedAt { get; init; } = "";
}
