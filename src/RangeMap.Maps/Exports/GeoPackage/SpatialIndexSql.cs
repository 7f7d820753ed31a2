namespace RangeMap.Maps;

/// <summary>
/// The spatial index of a layer: the extension gpkg_rtree_index (OGC 12-128r17, annex F.3), an R-tree that SQLite keeps, and the triggers by which any program that
/// edits the layer keeps it true. The triggers are those of the standard, word for word but for the names; they call functions that editing programs bring.
/// </summary>
internal static class SpatialIndexSql
{
    /// <summary>Names of the parameters of a box: west, east, south, north.</summary>
    public static readonly string[] Edges = ["$west", "$east", "$south", "$north"];

    public const string AddExtension =
        "INSERT INTO gpkg_extensions VALUES ($table, 'geom', 'gpkg_rtree_index', 'http://www.geopackage.org/spec120/#extension_rtree', 'write-only')";

    /// <summary>The empty index.</summary>
    public static string Make(ExportTable table) => $"CREATE VIRTUAL TABLE \"{Index(table)}\" USING rtree(id, minx, maxx, miny, maxy)";

    /// <summary>The statement that adds a row's box.</summary>
    public static string AddBox(ExportTable table) => $"INSERT INTO \"{Index(table)}\" VALUES ($fid, {string.Join(", ", Edges)})";

    /// <summary>The triggers.</summary>
    public static string Triggers(ExportTable table)
    {
        var (layer, index) = (table.Name, Index(table));
        return $"""
            CREATE TRIGGER "{index}_insert" AFTER INSERT ON "{layer}"
              WHEN (new."geom" NOT NULL AND NOT ST_IsEmpty(NEW."geom"))
            BEGIN
              INSERT OR REPLACE INTO "{index}" VALUES (NEW."fid", {Box});
            END;
            CREATE TRIGGER "{index}_update1" AFTER UPDATE OF "geom" ON "{layer}"
              WHEN OLD."fid" = NEW."fid" AND (NEW."geom" NOTNULL AND NOT ST_IsEmpty(NEW."geom"))
            BEGIN
              INSERT OR REPLACE INTO "{index}" VALUES (NEW."fid", {Box});
            END;
            CREATE TRIGGER "{index}_update2" AFTER UPDATE OF "geom" ON "{layer}"
              WHEN OLD."fid" = NEW."fid" AND (NEW."geom" ISNULL OR ST_IsEmpty(NEW."geom"))
            BEGIN
              DELETE FROM "{index}" WHERE id = OLD."fid";
            END;
            CREATE TRIGGER "{index}_update3" AFTER UPDATE ON "{layer}"
              WHEN OLD."fid" != NEW."fid" AND (NEW."geom" NOTNULL AND NOT ST_IsEmpty(NEW."geom"))
            BEGIN
              DELETE FROM "{index}" WHERE id = OLD."fid";
              INSERT OR REPLACE INTO "{index}" VALUES (NEW."fid", {Box});
            END;
            CREATE TRIGGER "{index}_update4" AFTER UPDATE ON "{layer}"
              WHEN OLD."fid" != NEW."fid" AND (NEW."geom" ISNULL OR ST_IsEmpty(NEW."geom"))
            BEGIN
              DELETE FROM "{index}" WHERE id IN (OLD."fid", NEW."fid");
            END;
            CREATE TRIGGER "{index}_delete" AFTER DELETE ON "{layer}"
              WHEN old."geom" NOT NULL
            BEGIN
              DELETE FROM "{index}" WHERE id = OLD."fid";
            END;
            """;
    }

    private const string Box = "ST_MinX(NEW.\"geom\"), ST_MaxX(NEW.\"geom\"), ST_MinY(NEW.\"geom\"), ST_MaxY(NEW.\"geom\")";

    private static string Index(ExportTable table) => $"rtree_{table.Name}_geom";
}
