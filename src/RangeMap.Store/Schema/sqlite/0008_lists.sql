-- Whether a record stands on a list of all taxa of the group that were found on the visit.
ALTER TABLE record ADD COLUMN complete_list INTEGER NOT NULL DEFAULT 0;
ALTER TABLE replaced_record ADD COLUMN complete_list INTEGER NOT NULL DEFAULT 0;

-- JSON: what was noticed about the file, in sentences; and what was stated about it beside columns and dates.
ALTER TABLE batch ADD COLUMN notes TEXT;
ALTER TABLE batch ADD COLUMN options TEXT;
