using Microsoft.Data.Sqlite;
using RangeMap.TestKit;

namespace RangeMap.Maps.Tests.Exports;

/// <summary>GeoPackages after OGC 12-128r18, looked at by SQLite itself and by GDAL.</summary>
public sealed class GeoPackageTests
{
    [Fact]
    public async Task TheFileIsAWholeGeoPackage()
    {
        using var folder = new TemporaryFolder();
        var file = await WriteAsync(folder, ExportTables.Presence, 40);
        using var connection = new SqliteConnection($"Data Source={file};Mode=ReadOnly;Pooling=False");
        connection.Open();
        Assert.Equal(0x47504B47L, One(connection, "PRAGMA application_id"));
        Assert.Equal(10300L, One(connection, "PRAGMA user_version"));
        Assert.Equal("ok", One(connection, "PRAGMA integrity_check"));
        Assert.Null(One(connection, "PRAGMA foreign_key_check"));
        Assert.Equal(4L, One(connection, "SELECT COUNT(*) FROM gpkg_spatial_ref_sys WHERE srs_id IN (-1, 0, 4326, 27700)"));
        Assert.Equal(40L, One(connection, "SELECT COUNT(*) FROM presence WHERE hex(substr(geom, 1, 2)) = '4750'"));
        Assert.Equal(1L, One(connection, "SELECT COUNT(*) FROM gpkg_contents WHERE min_x < max_x AND min_y < max_y AND last_change = '2026-11-25T12:00:00.000Z'"));
    }

    [Theory]
    [InlineData("presence")]
    [InlineData("records")]
    public async Task TheSpatialIndexHoldsTheBoxOfEveryFeatureAndIsUsed(string name)
    {
        using var folder = new TemporaryFolder();
        var file = await WriteAsync(folder, ExportTables.All.Single(known => known.Name == name), 400);
        using var connection = new SqliteConnection($"Data Source={file};Mode=ReadOnly;Pooling=False");
        connection.Open();
        var index = $"rtree_{name}_geom";
        Assert.Equal("ok", One(connection, $"SELECT rtreecheck('{index}')"));
        Assert.Equal(400L, One(connection, $"SELECT COUNT(*) FROM {name} JOIN {index} ON fid = id"));
        Assert.Equal(1L, One(connection, $"SELECT COUNT(*) FROM gpkg_extensions WHERE table_name = '{name}' AND column_name = 'geom' AND extension_name = 'gpkg_rtree_index' AND scope = 'write-only'"));
        Assert.Equal(6L, One(connection, $"SELECT COUNT(*) FROM sqlite_master WHERE type = 'trigger' AND name LIKE '{index}%'"));
        Assert.Contains("VIRTUAL TABLE INDEX", Plan(connection, $"SELECT fid FROM {name} WHERE fid IN (SELECT id FROM {index} WHERE maxx >= -2 AND minx <= -1 AND maxy >= 54 AND miny <= 55)"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task GdalKnowsTheIndexAndFindsByItWhatItFindsWithout()
    {
        if (!Programs.Has("ogr2ogr"))
            Assert.Skip("ogr2ogr (GDAL) is not installed.");
        using var folder = new TemporaryFolder();
        var file = await WriteAsync(folder, ExportTables.Presence, 400);
        Assert.Equal("1", await CountAsync(file, "SELECT HasSpatialIndex('presence', 'geom') AS n"));
        const string Box = "ST_MaxX(geom) >= -4 AND ST_MinX(geom) <= -2 AND ST_MaxY(geom) >= 52 AND ST_MinY(geom) <= 53";
        var all = int.Parse(await CountAsync(file, $"SELECT COUNT(*) AS n FROM presence WHERE {Box}"), System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(all, 1, 399);
        Assert.Contains($"Feature Count: {all}", await Programs.RunAsync("ogrinfo", ["-ro", "-so", "-al", "-spat", "-4", "52", "-2", "53", file], "."), StringComparison.Ordinal);
        // Its triggers keep the index true when GDAL removes and moves features.
        await Programs.RunAsync("ogrinfo", [file, "-sql", "DELETE FROM presence WHERE fid <= 100"], ".");
        await Programs.RunAsync("ogrinfo", [file, "-sql", "UPDATE presence SET geom = (SELECT geom FROM presence WHERE fid = 400) WHERE fid = 101"], ".");
        Assert.Equal("300", await CountAsync(file, "SELECT COUNT(*) AS n FROM rtree_presence_geom"));
        Assert.Equal("1", await CountAsync(file, "SELECT COUNT(DISTINCT minx) AS n FROM rtree_presence_geom WHERE id IN (101, 400)"));
    }

    [Theory]
    [InlineData("presence", "Polygon")]
    [InlineData("records", "Point")]
    public async Task GdalReadsGeoPackageAndGeoJson(string name, string geometry)
    {
        if (!Programs.Has("ogrinfo"))
            Assert.Skip("ogrinfo (GDAL) is not installed.");
        using var folder = new TemporaryFolder();
        var table = ExportTables.All.Single(known => known.Name == name);
        var json = folder.File("t.geojson");
        await TableExport.WriteAsync(json, ExportFormat.GeoJson, table, SomeRows.Source, SomeRows.Of(table, 40));
        foreach (var file in (string[])[await WriteAsync(folder, table, 40), json])
        {
            var said = await Programs.RunAsync("ogrinfo", ["-ro", "-so", "-al", file], ".");
            Assert.Contains($"Geometry: {geometry}", said, StringComparison.Ordinal);
            Assert.Contains("Feature Count: 40", said, StringComparison.Ordinal);
            Assert.DoesNotContain("Warning", said, StringComparison.Ordinal);
        }
    }

    private static async Task<string> WriteAsync(TemporaryFolder folder, ExportTable table, int rows)
    {
        var file = folder.File("t.gpkg");
        await TableExport.WriteAsync(file, ExportFormat.GeoPackage, table, SomeRows.Source, SomeRows.Of(table, rows));
        return file;
    }

    /// <summary>The number that a question through GDAL gives as n.</summary>
    private static async Task<string> CountAsync(string file, string sql)
    {
        var said = await Programs.RunAsync("ogrinfo", ["-ro", "-q", file, "-sql", sql], ".");
        return said[(said.LastIndexOf("= ", StringComparison.Ordinal) + 2)..].Trim();
    }

    private static string Plan(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "EXPLAIN QUERY PLAN " + sql;
        using var reader = command.ExecuteReader();
        var steps = new List<string>();
        while (reader.Read())
            steps.Add(reader.GetString(3));
        return string.Join('\n', steps);
    }

    private static object? One(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
