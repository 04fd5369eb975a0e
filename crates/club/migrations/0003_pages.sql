-- How members come in by the pages, where their yards lie as far as anybody else is told, and what the club may count.

-- A member's key and their sessions: the hash alone is kept, which opens nothing. No member reads these two.
CREATE TABLE club.key (
    member UUID NOT NULL PRIMARY KEY REFERENCES club.member,
    hash BYTEA NOT NULL UNIQUE,
    made_at TIMESTAMPTZ NOT NULL
);

CREATE TABLE club.session (
    hash BYTEA NOT NULL PRIMARY KEY,
    member UUID NOT NULL REFERENCES club.member,
    begun_at TIMESTAMPTZ NOT NULL,
    used_at TIMESTAMPTZ NOT NULL
);
CREATE INDEX session_of_member ON club.session (member);

-- The coarse cell in which a yard lies, counted from the equator and from Greenwich; none of one handed in before there were any.
ALTER TABLE club.yard ADD COLUMN cell_north INT, ADD COLUMN cell_east INT;

-- Winters of a yard that are over and of which every colony is told, by the year of their autumn.
CREATE TABLE club.winter (
    yard UUID NOT NULL REFERENCES club.yard,
    year INT NOT NULL,
    colonies BIGINT NOT NULL CHECK (colonies > 0),
    lost BIGINT NOT NULL CHECK (lost BETWEEN 0 AND colonies),
    PRIMARY KEY (yard, year)
);

-- A yard whose winters its owner lets the club count: in sums alone.
CREATE TABLE club.counted (
    yard UUID NOT NULL PRIMARY KEY REFERENCES club.yard
);

ALTER TABLE club.key ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.session ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.winter ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.counted ENABLE ROW LEVEL SECURITY;

CREATE POLICY readable ON club.winter FOR SELECT TO snowhum_member USING (yard IN (SELECT club.yards_read()));
CREATE POLICY readable ON club.counted FOR SELECT TO snowhum_member USING (yard IN (SELECT club.yards_read()));
CREATE POLICY gives ON club.counted FOR INSERT TO snowhum_member WITH CHECK (yard IN (SELECT club.own_yards()));
CREATE POLICY takes_back ON club.counted FOR DELETE TO snowhum_member USING (yard IN (SELECT club.own_yards()));

GRANT SELECT ON club.winter, club.counted TO snowhum_member;
GRANT INSERT, DELETE ON club.counted TO snowhum_member;
