-- Settings that people change while the server runs: every change stays, the newest of a name holds. A null value is the program's own.
CREATE TABLE setting_change (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    value TEXT,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    reason TEXT NOT NULL
) STRICT;
