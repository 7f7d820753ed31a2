-- What people decided on records. Rows are added and never changed or removed; a reversal is a decision too.
CREATE TABLE decision_set (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    reason TEXT NOT NULL,
    reverses INTEGER REFERENCES decision_set (number)
) STRICT;

-- A decision belongs to the identity of a record, so that it stays when the record's import is taken back and comes into
-- force again with the record. The basis is what was decided upon: taxon, place and date as sent. A NULL leaves what was sent.
CREATE TABLE decision (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    decision_set INTEGER NOT NULL REFERENCES decision_set (number),
    dataset INTEGER NOT NULL REFERENCES dataset (number),
    key_high INTEGER NOT NULL,
    key_low INTEGER NOT NULL,
    basis INTEGER NOT NULL,
    status INTEGER,
    taxon INTEGER REFERENCES taxon (number)
) STRICT;
CREATE INDEX decision_of_key ON decision (key_high);
CREATE INDEX decision_in_set ON decision (decision_set);

-- What the file said, where a decision says otherwise.
ALTER TABLE record ADD COLUMN sent_taxon INTEGER;
ALTER TABLE record ADD COLUMN sent_status INTEGER;
ALTER TABLE replaced_record ADD COLUMN sent_taxon INTEGER;
ALTER TABLE replaced_record ADD COLUMN sent_status INTEGER;

-- The queue: records that nobody has looked at and that have doubts. Few, so the index stays small.
CREATE INDEX record_in_queue ON record (doubts, id) WHERE status = 0 AND doubts <> 0;
