-- SPDX-License-Identifier: GPL-3.0-or-later
-- The battery: the other tests of the day, their attempts, what was not possible, and what breaks a
-- comparison.

INSERT INTO keys (kind, last) VALUES ('test', 0);

-- of the session's rows in contexts, attempts and gaps; NULL where it has none
ALTER TABLE sessions ADD COLUMN battery_checksum INTEGER;

CREATE TABLE tests (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (trim(name) <> ''),
    unit TEXT NOT NULL CHECK (trim(unit) <> ''),
    higher_is_better INTEGER NOT NULL CHECK (higher_is_better IN (0, 1)),
    two_sided INTEGER NOT NULL CHECK (two_sided IN (0, 1)),
    -- which attempts make the day's value
    rule TEXT NOT NULL CHECK (rule IN ('best', 'mean')),
    -- planned on each side
    attempts INTEGER NOT NULL CHECK (attempts >= 1 AND attempts <= 50),
    formula TEXT NOT NULL
        CHECK (formula IN ('value', 'flight height', 'height rsi', 'flight rsi', 'per body mass')),
    decimals INTEGER NOT NULL CHECK (decimals >= 0 AND decimals <= 4),
    -- typical error, in the unit or in percent of the value
    noise REAL CHECK (noise > 0 AND noise < 1000000),
    noise_percent INTEGER CHECK (noise_percent IN (0, 1)),
    noise_source TEXT,
    -- the smallest change that matters, in the unit; an empty source is the coach's own
    smallest REAL CHECK (smallest > 0 AND smallest < 1000000),
    smallest_source TEXT NOT NULL,
    note TEXT NOT NULL,
    checksum INTEGER NOT NULL,
    CHECK ((noise IS NULL) = (noise_percent IS NULL) AND (noise IS NULL) = (noise_source IS NULL))
) STRICT;

CREATE TABLE contexts (
    session INTEGER PRIMARY KEY REFERENCES sessions (id),
    surface TEXT NOT NULL,
    device TEXT NOT NULL,
    footwear TEXT NOT NULL,
    technique TEXT NOT NULL
) STRICT;

CREATE TABLE attempts (
    session INTEGER NOT NULL REFERENCES sessions (id),
    -- in order of entry, over all tests of the session
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    test INTEGER NOT NULL REFERENCES tests (id),
    side TEXT NOT NULL CHECK (side IN ('both', 'left', 'right')),
    -- the first number of the test's formula, as it was read
    value REAL NOT NULL CHECK (value > 0 AND value < 1000000),
    -- contact time in s, where the formula takes it
    contact REAL CHECK (contact > 0 AND contact < 10),
    note TEXT NOT NULL,
    -- the reason; empty when the attempt counts
    excluded TEXT NOT NULL,
    PRIMARY KEY (session, ordinal)
) STRICT, WITHOUT ROWID;

CREATE INDEX attempts_by_test ON attempts (test);

CREATE TABLE gaps (
    session INTEGER NOT NULL REFERENCES sessions (id),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    -- a test or a lift that was not possible
    test INTEGER REFERENCES tests (id),
    lift INTEGER REFERENCES lifts (id),
    side TEXT NOT NULL CHECK (side IN ('both', 'left', 'right')),
    reason TEXT NOT NULL CHECK (trim(reason) <> ''),
    PRIMARY KEY (session, ordinal),
    CHECK ((test IS NULL) <> (lift IS NULL))
) STRICT, WITHOUT ROWID;

CREATE INDEX gaps_by_test ON gaps (test);
CREATE INDEX gaps_by_lift ON gaps (lift);
