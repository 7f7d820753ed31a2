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

    private static object? One(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }
}
