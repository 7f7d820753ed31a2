namespace RangeMap.Store;

internal static class RegionSql
{
    public const string ReadAll = "SELECT name, geojson AS GeoJson, loaded_at AS LoadedAt FROM region ORDER BY name";

    public const string Keep = """
        INSERT INTO region (name, geojson, loaded_at) VALUES (@Name, @GeoJson, @At)
        ON CONFLICT (name) DO UPDATE SET geojson = excluded.geojson, loaded_at = excluded.loaded_at
        """;

    public const string Remove = "DELETE FROM region WHERE name = @name";
}
