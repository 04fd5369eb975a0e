-- Each row carries a hash of what it says, a note's version also of the version before it; the program fills them in.
ALTER TABLE yards ADD COLUMN hash TEXT NOT NULL DEFAULT '';
ALTER TABLE hives ADD COLUMN hash TEXT NOT NULL DEFAULT '';
ALTER TABLE colonies ADD COLUMN hash TEXT NOT NULL DEFAULT '';
ALTER TABLE note_versions ADD COLUMN hash TEXT NOT NULL DEFAULT '';
ALTER TABLE settings ADD COLUMN hash TEXT NOT NULL DEFAULT '';
ALTER TABLE alerts ADD COLUMN hash TEXT NOT NULL DEFAULT '';

-- How many rows a table holds, and all their hashes in one, so that a row that is gone is missed.
CREATE TABLE sums (
    name TEXT NOT NULL PRIMARY KEY,
    held BIGINT NOT NULL,
    sum TEXT NOT NULL
);
