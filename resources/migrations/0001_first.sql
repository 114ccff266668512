-- SPDX-License-Identifier: GPL-3.0-or-later
-- The log's first layout. Loads are whole grams, velocities m/s, dates ISO 8601 text, yes and no 1
-- and 0. checksum columns hold a CRC-64 of what stands in the row and what hangs on it: SQLite does
-- not notice damaged content by itself.

CREATE TABLE keys (
    -- The last key given out for a table: a key is never used again, so that an undo finds its own.
    kind TEXT NOT NULL PRIMARY KEY CHECK (kind IN ('athlete', 'lift', 'device', 'block', 'session', 'set')),
    last INTEGER NOT NULL CHECK (last >= 0)
) STRICT, WITHOUT ROWID;

INSERT INTO keys (kind, last)
VALUES ('athlete', 0), ('lift', 0), ('device', 0), ('block', 0), ('session', 0), ('set', 0);

CREATE TABLE athletes (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (trim(name) <> ''),
    note TEXT NOT NULL,
    checksum INTEGER NOT NULL,
    -- of the athlete's rows in check_loads
    loads_checksum INTEGER NOT NULL
) STRICT;

CREATE TABLE lifts (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (trim(name) <> ''),
    kind TEXT NOT NULL CHECK (kind IN ('mean', 'propulsive', 'peak')),
    -- which rep makes a set's point
    rule TEXT NOT NULL CHECK (rule IN ('fastest', 'mean')),
    ballistic INTEGER NOT NULL CHECK (ballistic IN (0, 1)),
    mvt REAL CHECK (mvt > 0 AND mvt < 10),
    mvt_sd REAL CHECK (mvt_sd >= 0 AND mvt_sd < 10),
    mvt_origin TEXT CHECK (mvt_origin IN ('coach', 'published')),
    mvt_source TEXT,
    smallest_velocity REAL CHECK (smallest_velocity > 0 AND smallest_velocity < 10),
    smallest_one_rm REAL CHECK (smallest_one_rm > 0 AND smallest_one_rm <= 2000),
    note TEXT NOT NULL,
    checksum INTEGER NOT NULL,
    CHECK ((mvt IS NULL) = (mvt_origin IS NULL) AND (mvt IS NULL) = (mvt_source IS NULL)),
    CHECK (mvt IS NOT NULL OR mvt_sd IS NULL)
) STRICT;

CREATE TABLE devices (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (trim(name) <> ''),
    note TEXT NOT NULL,
    checksum INTEGER NOT NULL
) STRICT;

CREATE TABLE blocks (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (trim(name) <> ''),
    first_day TEXT NOT NULL CHECK (length(first_day) = 10 AND first_day IS date(first_day)),
    last_day TEXT NOT NULL CHECK (length(last_day) = 10 AND last_day IS date(last_day)),
    -- the heaviest load that was at hand
    ceiling_g INTEGER CHECK (ceiling_g > 0 AND ceiling_g <= 2000000),
    note TEXT NOT NULL,
    checksum INTEGER NOT NULL,
    UNIQUE (name, first_day),
    CHECK (first_day <= last_day)
) STRICT;

CREATE TABLE sessions (
    -- Kept in the order in which they are read: one athlete's days after another's.
    athlete INTEGER NOT NULL REFERENCES athletes (id),
    day TEXT NOT NULL CHECK (length(day) = 10 AND day IS date(day)),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    id INTEGER NOT NULL UNIQUE CHECK (id > 0),
    device INTEGER REFERENCES devices (id),
    body_mass_g INTEGER CHECK (body_mass_g > 0 AND body_mass_g <= 2000000),
    repeat_of INTEGER REFERENCES sessions (id) CHECK (repeat_of <> id),
    -- of what a line is made from: this row's columns above, and the sets' columns up to counting
    line_checksum INTEGER NOT NULL,
    -- of everything: the whole row, its sets and their reps in order
    checksum INTEGER NOT NULL,
    place TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (athlete, day, ordinal)
) STRICT, WITHOUT ROWID;

CREATE INDEX sessions_by_repeat ON sessions (repeat_of);
CREATE INDEX sessions_by_device ON sessions (device);

CREATE TABLE sets (
    session INTEGER NOT NULL REFERENCES sessions (id),
    lift INTEGER NOT NULL REFERENCES lifts (id),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    load_g INTEGER NOT NULL CHECK (load_g >= 0 AND load_g <= 2000000),
    -- The set's point, made from its reps under the lift's rule; NULL when the set does not count.
    point REAL CHECK (point > 0 AND point < 10),
    -- a successful true maximum
    maximum INTEGER NOT NULL CHECK (maximum IN (0, 1)),
    -- how many reps the point is made of
    counting INTEGER NOT NULL CHECK (counting >= 0),
    id INTEGER NOT NULL UNIQUE CHECK (id > 0),
    -- the reason; empty when the set counts
    excluded TEXT NOT NULL,
    note TEXT NOT NULL,
    PRIMARY KEY (session, lift, ordinal),
    CHECK ((point IS NULL) = (counting = 0)),
    CHECK (excluded = '' OR point IS NULL)
) STRICT, WITHOUT ROWID;

CREATE TABLE reps (
    set_id INTEGER NOT NULL REFERENCES sets (id),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    velocity REAL NOT NULL CHECK (velocity > 0 AND velocity < 10),
    -- the reason; empty when the rep counts
    excluded TEXT NOT NULL,
    PRIMARY KEY (set_id, ordinal)
) STRICT, WITHOUT ROWID;

CREATE TABLE check_loads (
    athlete INTEGER NOT NULL REFERENCES athletes (id),
    lift INTEGER NOT NULL REFERENCES lifts (id),
    load_g INTEGER NOT NULL CHECK (load_g >= 0 AND load_g <= 2000000),
    PRIMARY KEY (athlete, lift, load_g)
) STRICT, WITHOUT ROWID;
