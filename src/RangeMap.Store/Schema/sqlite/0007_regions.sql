-- Regions that the user loaded, each as a GeoJSON feature collection whose features bear the name.
CREATE TABLE region (
    name TEXT NOT NULL COLLATE NOCASE PRIMARY KEY,
    geojson TEXT NOT NULL,
    loaded_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
