-- Days are numbers of days since 0001-01-01. Squares are the 64-bit codes of RangeMap.Grids.Square.
CREATE TABLE setting (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE taxon (
    number INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    scientific_name TEXT NOT NULL,
    authorship TEXT,
    rank TEXT,
    vernacular_name TEXT,
    parent_id TEXT,
    taxon_group TEXT,
    aggregate_id TEXT,
    generalise_to INTEGER,
    first_year INTEGER,
    notes TEXT NOT NULL DEFAULT '{}'
) STRICT;

CREATE TABLE synonym (
    id TEXT NOT NULL PRIMARY KEY,
    name TEXT NOT NULL,
    authorship TEXT,
    vernacular_name TEXT,
    taxon INTEGER NOT NULL REFERENCES taxon (number)
) STRICT, WITHOUT ROWID;

CREATE TABLE person (
    number INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE
) STRICT;

-- Short texts that many records share: stage, sex, site.
CREATE TABLE word (
    number INTEGER PRIMARY KEY,
    text TEXT NOT NULL UNIQUE
) STRICT;

CREATE TABLE dataset (
    number INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE
) STRICT;

CREATE TABLE batch (
    number INTEGER PRIMARY KEY,
    dataset INTEGER NOT NULL REFERENCES dataset (number),
    file_name TEXT NOT NULL,
    file_hash TEXT NOT NULL,
    imported_at TEXT NOT NULL,
    header TEXT NOT NULL,
    rows_read INTEGER NOT NULL DEFAULT 0,
    accepted INTEGER NOT NULL DEFAULT 0,
    refused INTEGER NOT NULL DEFAULT 0,
    updated INTEGER NOT NULL DEFAULT 0,
    unchanged INTEGER NOT NULL DEFAULT 0,
    mapping TEXT NOT NULL DEFAULT '{}',
    doubts TEXT NOT NULL DEFAULT '{}'
) STRICT;

-- The rows of a batch as they were sent, some thousand to a compressed block: nothing that a user gave is lost.
CREATE TABLE source_block (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batch (number),
    first_row INTEGER NOT NULL,
    row_count INTEGER NOT NULL,
    data BLOB NOT NULL
) STRICT;
CREATE INDEX source_block_of_row ON source_block (batch, first_row);

CREATE TABLE refusal (
    batch INTEGER NOT NULL REFERENCES batch (number),
    row_number INTEGER NOT NULL,
    line INTEGER NOT NULL,
    field TEXT NOT NULL,
    value TEXT NOT NULL,
    reason TEXT NOT NULL,
    raw TEXT NOT NULL,
    PRIMARY KEY (batch, row_number)
) STRICT, WITHOUT ROWID;

CREATE TABLE record (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL,
    row_number INTEGER NOT NULL,
    dataset INTEGER NOT NULL,
    key_high INTEGER NOT NULL,
    key_low INTEGER NOT NULL,
    content INTEGER NOT NULL,
    taxon INTEGER NOT NULL,
    square INTEGER NOT NULL,
    first_day INTEGER NOT NULL,
    last_day INTEGER NOT NULL,
    present INTEGER NOT NULL,
    status INTEGER NOT NULL,
    doubts INTEGER NOT NULL,
    recorder INTEGER,
    determiner INTEGER,
    stage INTEGER,
    sex INTEGER,
    individuals INTEGER,
    site INTEGER,
    latitude REAL,
    longitude REAL,
    uncertainty REAL
) STRICT;
CREATE INDEX record_of_key ON record (key_high);

-- What a record said before a later batch changed it.
CREATE TABLE replaced_record (
    replaced_by_batch INTEGER NOT NULL,
    id INTEGER NOT NULL,
    batch INTEGER NOT NULL,
    row_number INTEGER NOT NULL,
    dataset INTEGER NOT NULL,
    key_high INTEGER NOT NULL,
    key_low INTEGER NOT NULL,
    content INTEGER NOT NULL,
    taxon INTEGER NOT NULL,
    square INTEGER NOT NULL,
    first_day INTEGER NOT NULL,
    last_day INTEGER NOT NULL,
    present INTEGER NOT NULL,
    status INTEGER NOT NULL,
    doubts INTEGER NOT NULL,
    recorder INTEGER,
    determiner INTEGER,
    stage INTEGER,
    sex INTEGER,
    individuals INTEGER,
    site INTEGER,
    latitude REAL,
    longitude REAL,
    uncertainty REAL,
    PRIMARY KEY (replaced_by_batch, id)
) STRICT, WITHOUT ROWID;

-- The cube: per taxon, packed changes whose sum is the taxon's cube; likewise the visit log.
CREATE TABLE cube_segment (
    id INTEGER PRIMARY KEY,
    taxon INTEGER NOT NULL REFERENCES taxon (number),
    cells INTEGER NOT NULL,
    data BLOB NOT NULL
) STRICT;
CREATE INDEX cube_segment_of_taxon ON cube_segment (taxon);

CREATE TABLE visit_segment (
    id INTEGER PRIMARY KEY,
    entries INTEGER NOT NULL,
    data BLOB NOT NULL
) STRICT;

-- Counts every committed change; the same number always means the same data.
CREATE TABLE edition (
    number INTEGER PRIMARY KEY,
    made_at TEXT NOT NULL,
    cause TEXT NOT NULL
) STRICT;
INSERT INTO edition (number, made_at, cause) VALUES (0, '', 'empty');
