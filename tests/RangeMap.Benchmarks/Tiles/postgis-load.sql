CREATE EXTENSION postgis;
CREATE TABLE square (id int PRIMARY KEY, reference text NOT NULL, grid text NOT NULL, geom geometry(Polygon, 27700) NOT NULL);
CREATE TABLE cube (taxon int NOT NULL, square int NOT NULL, year int NOT NULL, records int NOT NULL);
CREATE TABLE tile (id int PRIMARY KEY, taxon int NOT NULL, box geometry(Polygon, 27700) NOT NULL, drawn geometry(Polygon, 27700) NOT NULL);

\cd :folder
CREATE TEMP TABLE square_text (id int, reference text, grid text, geom text);
\copy square_text FROM 'square.csv' (FORMAT csv, DELIMITER ';')
INSERT INTO square SELECT id, reference, grid, ST_GeomFromEWKT(replace(geom, '|', ';')) FROM square_text;
\copy cube FROM 'cube.csv' (FORMAT csv, DELIMITER ';')
CREATE TEMP TABLE tile_text (id int, taxon int, west float8, south float8, east float8, north float8);
\copy tile_text FROM 'tile.csv' (FORMAT csv, DELIMITER ';')
-- Squares are drawn to 64 units of 4096 beyond the edge.
INSERT INTO tile SELECT id, taxon, ST_MakeEnvelope(west, south, east, north, 27700), ST_Expand(ST_MakeEnvelope(west, south, east, north, 27700), (east - west) / 64) FROM tile_text;

CREATE INDEX square_geom ON square USING gist (geom);
CREATE INDEX cube_taxon_square ON cube (taxon, square);
CLUSTER cube USING cube_taxon_square;
VACUUM ANALYZE;
