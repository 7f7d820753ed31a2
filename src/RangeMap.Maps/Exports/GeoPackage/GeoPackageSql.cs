namespace RangeMap.Maps;

/// <summary>The statements that make a GeoPackage: SQL is the file format here, and no data of the server are read or changed by it.</summary>
internal static class GeoPackageSql
{
    /// <summary>"GPKG" as the application id, version 1.3; the file is written once, so no journal is kept.</summary>
    public const string Prepare = """
        PRAGMA page_size = 4096;
        PRAGMA journal_mode = OFF;
        PRAGMA synchronous = OFF;
        PRAGMA application_id = 1196444487;
        PRAGMA user_version = 10300;
        """;

    public const string Tables = """
        CREATE TABLE gpkg_spatial_ref_sys (
            srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY, organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL,
            definition TEXT NOT NULL, description TEXT);
        CREATE TABLE gpkg_contents (
            table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT UNIQUE, description TEXT DEFAULT '',
            last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')), min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE,
            srs_id INTEGER, CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
        CREATE TABLE gpkg_geometry_columns (
            table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL,
            CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE (table_name),
            CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
            CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id));
        CREATE TABLE gpkg_extensions (
            table_name TEXT, column_name TEXT, extension_name TEXT NOT NULL, definition TEXT NOT NULL, scope TEXT NOT NULL,
            CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name));
        CREATE TABLE gpkg_metadata (
            id INTEGER CONSTRAINT m_pk PRIMARY KEY ASC NOT NULL, md_scope TEXT NOT NULL DEFAULT 'dataset', md_standard_uri TEXT NOT NULL,
            mime_type TEXT NOT NULL DEFAULT 'text/xml', metadata TEXT NOT NULL DEFAULT '');
        CREATE TABLE gpkg_metadata_reference (
            reference_scope TEXT NOT NULL, table_name TEXT, column_name TEXT, row_id_value INTEGER,
            timestamp DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')), md_file_id INTEGER NOT NULL, md_parent_id INTEGER,
            CONSTRAINT crmr_mfi_fk FOREIGN KEY (md_file_id) REFERENCES gpkg_metadata(id), CONSTRAINT crmr_mpi_fk FOREIGN KEY (md_parent_id) REFERENCES gpkg_metadata(id));
        """;

    public const string AddSystem = "INSERT INTO gpkg_spatial_ref_sys VALUES ($name, $id, $organization, $number, $definition, $description)";

    public const string AddContents =
        "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change, min_x, min_y, max_x, max_y, srs_id) VALUES ($table, 'features', $title, $description, $changed, $west, $south, $east, $north, 4326)";

    public const string AddGeometry = "INSERT INTO gpkg_geometry_columns VALUES ($table, 'geom', $type, 4326, 0, 0)";

    public const string AddMetadataExtension = """
        INSERT INTO gpkg_extensions VALUES ('gpkg_metadata', NULL, 'gpkg_metadata', 'http://www.geopackage.org/spec120/#extension_metadata', 'read-write');
        INSERT INTO gpkg_extensions VALUES ('gpkg_metadata_reference', NULL, 'gpkg_metadata', 'http://www.geopackage.org/spec120/#extension_metadata', 'read-write');
        """;

    public const string AddMetadata = "INSERT INTO gpkg_metadata VALUES (1, 'dataset', 'http://www.w3.org/ns/csvw', 'application/json', $json)";

    public const string AddReference = "INSERT INTO gpkg_metadata_reference VALUES ('table', $table, NULL, NULL, $changed, 1, NULL)";

    /// <summary>The table of rows. Names come from the definitions of exports only, never from a user.</summary>
    public static string MakeTable(ExportTable table) =>
        $"CREATE TABLE \"{table.Name}\" (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom {GeometryType(table)} NOT NULL, {string.Join(", ", table.Columns.Select(column => $"\"{column.Name}\" {TypeOf(column.Kind)}"))})";

    /// <summary>The statement that adds a row: geometry first, then the columns in order.</summary>
    public static string AddRow(ExportTable table) =>
        $"INSERT INTO \"{table.Name}\" (geom, {string.Join(", ", table.Columns.Select(column => $"\"{column.Name}\""))}) VALUES ($geom, {string.Join(", ", table.Columns.Select((_, i) => FormattableString.Invariant($"$c{i}")))})";

    /// <summary>The geometry type of a table's rows.</summary>
    public static string GeometryType(ExportTable table) => table.Geometry == ExportGeometry.Square ? "POLYGON" : "POINT";

    private static string TypeOf(ExportKind kind) => kind switch
    {
        ExportKind.Whole => "INTEGER",
        ExportKind.Number => "DOUBLE",
        ExportKind.Day => "DATE",
        ExportKind.Truth => "BOOLEAN",
        _ => "TEXT",
    };
}
