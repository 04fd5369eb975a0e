-- Bodies are JSON in the words of the apiary; the columns beside them are keys and what is searched by.
-- Only BIGINT and TEXT, so that the same statements run on another database.

CREATE TABLE yards (
    id TEXT NOT NULL PRIMARY KEY,
    changed_at BIGINT NOT NULL,
    body TEXT NOT NULL
);

CREATE TABLE hives (
    id TEXT NOT NULL PRIMARY KEY,
    yard TEXT NOT NULL REFERENCES yards (id),
    -- Order of walking, from 0.
    place BIGINT NOT NULL,
    -- When it was taken out of the yard; null while it stands there.
    left_at BIGINT,
    body TEXT NOT NULL
);
CREATE INDEX hives_of_yard ON hives (yard, place);

CREATE TABLE colonies (
    id TEXT NOT NULL PRIMARY KEY,
    yard TEXT NOT NULL REFERENCES yards (id),
    hive TEXT NOT NULL REFERENCES hives (id),
    place BIGINT NOT NULL,
    left_at BIGINT,
    body TEXT NOT NULL
);
CREATE INDEX colonies_of_yard ON colonies (yard, place);
CREATE INDEX colonies_of_hive ON colonies (hive);

-- Rows are added, never changed. The row of the greatest serial says how a note stands.
-- A colony need not be known: a note that comes before its yard is kept.
CREATE TABLE note_versions (
    version TEXT NOT NULL PRIMARY KEY,
    serial BIGINT NOT NULL UNIQUE,
    note TEXT NOT NULL,
    visit TEXT NOT NULL,
    colony TEXT NOT NULL,
    at BIGINT NOT NULL,
    recorded_at BIGINT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('made', 'edited', 'withdrawn', 'restored')),
    -- The version that this one takes back.
    undoes TEXT UNIQUE REFERENCES note_versions (version),
    author TEXT NOT NULL,
    body TEXT NOT NULL
);
CREATE INDEX versions_of_note ON note_versions (note, serial);
CREATE INDEX notes_of_colony ON note_versions (colony, at);

CREATE TABLE settings (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
);

CREATE TABLE alerts (
    serial BIGINT NOT NULL PRIMARY KEY,
    yard TEXT NOT NULL,
    -- Empty for an alert about the yard as a whole.
    colony TEXT NOT NULL,
    word TEXT NOT NULL,
    at BIGINT NOT NULL
);
CREATE INDEX alerts_of_yard ON alerts (yard, colony, serial);
