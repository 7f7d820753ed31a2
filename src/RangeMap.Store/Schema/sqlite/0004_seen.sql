-- What the naturalist saw: length in millimetres, and words that many records share. The link to the evidence and the
-- remarks stay with the row as it was sent.
ALTER TABLE record ADD COLUMN length_mm REAL;
ALTER TABLE record ADD COLUMN evidence INTEGER;
ALTER TABLE record ADD COLUMN host INTEGER;
ALTER TABLE record ADD COLUMN behaviour INTEGER;
ALTER TABLE replaced_record ADD COLUMN length_mm REAL;
ALTER TABLE replaced_record ADD COLUMN evidence INTEGER;
ALTER TABLE replaced_record ADD COLUMN host INTEGER;
ALTER TABLE replaced_record ADD COLUMN behaviour INTEGER;
