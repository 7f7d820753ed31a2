-- Who may write over HTTP. Only a hash of each token is kept.
CREATE TABLE token (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    hash BLOB NOT NULL UNIQUE,
    rights TEXT NOT NULL,
    made_at TEXT NOT NULL,
    last_used_at TEXT,
    revoked_at TEXT
) STRICT;

-- How an import was made, for its report and for making it again.
ALTER TABLE batch ADD COLUMN made_by TEXT;
ALTER TABLE batch ADD COLUMN seconds REAL;
ALTER TABLE batch ADD COLUMN form TEXT;
ALTER TABLE batch ADD COLUMN stated TEXT;
ALTER TABLE batch ADD COLUMN citation TEXT;

-- Names that a person accepted once for a taxon of the list.
CREATE TABLE accepted_name (
    name TEXT NOT NULL COLLATE NOCASE PRIMARY KEY,
    taxon INTEGER NOT NULL REFERENCES taxon (number),
    accepted_by TEXT NOT NULL,
    accepted_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
