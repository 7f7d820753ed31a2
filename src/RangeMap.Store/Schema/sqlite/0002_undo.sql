-- When a batch was taken back, ISO 8601 in UTC; the batch, its refusals and its rows as they were sent stay.
ALTER TABLE batch ADD COLUMN undone_at TEXT;
