-- A taxon that was merged into another: its names are names of the other from then on.
ALTER TABLE taxon ADD COLUMN replaced_by INTEGER REFERENCES taxon (number);

-- Renames, merges and splits of taxa, each with what stood before, so that it can be taken back.
CREATE TABLE taxon_change (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    kind TEXT NOT NULL,
    taxon INTEGER NOT NULL REFERENCES taxon (number),
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    words TEXT NOT NULL,
    before TEXT NOT NULL,
    decision_set INTEGER REFERENCES decision_set (number),
    undone_at TEXT
) STRICT;
