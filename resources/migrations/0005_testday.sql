-- SPDX-License-Identifier: GPL-3.0-or-later
-- The test day as it happens: what was measured under which conditions, loads that were not lifted,
-- how a set felt, stations and who is at them. Checksums of sessions are made anew by the program
-- once all of this stands (core/log/reseal.h); what was damaged stays so.

INSERT INTO keys (kind, last, turned) VALUES ('station', 0, -1);

-- the load of its line is the added load and the session's body mass
ALTER TABLE lifts ADD COLUMN moves_body INTEGER NOT NULL DEFAULT 0 CHECK (moves_body IN (0, 1));

-- of a test with two sides: both at once as well
ALTER TABLE tests ADD COLUMN both_too INTEGER NOT NULL DEFAULT 0
    CHECK (both_too = 0 OR (both_too = 1 AND two_sided = 1));
-- of the mean: so many best attempts; 0: all
ALTER TABLE tests ADD COLUMN best_of INTEGER NOT NULL DEFAULT 0
    CHECK (best_of = 0 OR (best_of >= 1 AND best_of <= 50 AND rule = 'mean'));

ALTER TABLE sets ADD COLUMN outcome TEXT NOT NULL DEFAULT 'lifted'
    CHECK (outcome = 'lifted' OR (outcome = 'not lifted' AND point IS NULL));
-- why it was not lifted
ALTER TABLE sets ADD COLUMN reason TEXT NOT NULL DEFAULT ''
    CHECK (reason = '' OR outcome = 'not lifted');
-- perceived effort, from 1 to 10 in halves
ALTER TABLE sets ADD COLUMN rpe REAL CHECK (rpe >= 1 AND rpe <= 10 AND rpe * 2 = round(rpe * 2));

-- of a lift one load only
ALTER TABLE gaps ADD COLUMN load_g INTEGER
    CHECK (load_g IS NULL OR (load_g >= 0 AND load_g <= 2000000 AND lift IS NOT NULL));

CREATE TABLE lift_conditions (
    session INTEGER NOT NULL REFERENCES sessions (id),
    lift INTEGER NOT NULL REFERENCES lifts (id),
    device INTEGER REFERENCES devices (id),
    place TEXT NOT NULL,
    surface TEXT NOT NULL,
    footwear TEXT NOT NULL,
    technique TEXT NOT NULL,
    -- the reason why it stands beside no other day of the lift; empty: it may
    not_comparable TEXT NOT NULL,
    PRIMARY KEY (session, lift)
) STRICT, WITHOUT ROWID;

CREATE TABLE test_conditions (
    session INTEGER NOT NULL REFERENCES sessions (id),
    test INTEGER NOT NULL REFERENCES tests (id),
    device INTEGER REFERENCES devices (id),
    place TEXT NOT NULL,
    surface TEXT NOT NULL,
    footwear TEXT NOT NULL,
    technique TEXT NOT NULL,
    -- the reason why it stands beside no other day of the test; empty: it may
    not_comparable TEXT NOT NULL,
    PRIMARY KEY (session, test)
) STRICT, WITHOUT ROWID;

-- A session's device and place go to each lift that it holds, and its place and its battery's
-- context to each test. The program has made a device of each name that a context held.
INSERT INTO lift_conditions
SELECT DISTINCT sessions.id, sets.lift, sessions.device, sessions.place, '', '', '', ''
FROM sessions JOIN sets ON sets.session = sessions.id
WHERE sessions.device IS NOT NULL OR sessions.place <> '';

INSERT INTO test_conditions
SELECT DISTINCT sessions.id, attempts.test,
    CASE WHEN ifnull(contexts.device, '') <> '' THEN
        (SELECT id FROM devices WHERE same_name(name, contexts.device) ORDER BY id LIMIT 1)
    -- what no lift was measured with was the tests' own
    WHEN NOT EXISTS (SELECT 1 FROM sets WHERE session = sessions.id) THEN sessions.device END,
    sessions.place, ifnull(contexts.surface, ''), ifnull(contexts.footwear, ''),
    ifnull(contexts.technique, ''), ''
FROM sessions JOIN attempts ON attempts.session = sessions.id
LEFT JOIN contexts ON contexts.session = sessions.id
WHERE contexts.session IS NOT NULL OR sessions.device IS NOT NULL OR sessions.place <> '';
DELETE FROM test_conditions
WHERE device IS NULL AND place = '' AND surface = '' AND footwear = '' AND technique = '';

CREATE INDEX lift_conditions_by_lift ON lift_conditions (lift);
CREATE INDEX lift_conditions_by_device ON lift_conditions (device);
CREATE INDEX test_conditions_by_test ON test_conditions (test);
CREATE INDEX test_conditions_by_device ON test_conditions (device);

CREATE TABLE sessions_now (
    -- Kept in the order in which they are read: one athlete's days after another's.
    athlete INTEGER NOT NULL REFERENCES athletes (id),
    day TEXT NOT NULL CHECK (length(day) = 10 AND day IS date(day)),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    id INTEGER NOT NULL UNIQUE CHECK (id > 0),
    body_mass_g INTEGER CHECK (body_mass_g > 0 AND body_mass_g <= 2000000),
    repeat_of INTEGER REFERENCES sessions (id) CHECK (repeat_of <> id),
    -- of what a line is made from: this row's columns above, the conditions of its lifts, and the
    -- sets' columns up to counting
    line_checksum INTEGER NOT NULL,
    -- of everything but its battery: the whole row, its lifts' conditions, sets and reps in order
    checksum INTEGER NOT NULL,
    -- of its tests' conditions, its attempts and gaps; NULL where it has none
    battery_checksum INTEGER,
    note TEXT NOT NULL,
    PRIMARY KEY (athlete, day, ordinal)
) STRICT, WITHOUT ROWID;

-- What no lift and no test of the session can say is kept in its note.
INSERT INTO sessions_now
SELECT athlete, day, ordinal, id, body_mass_g, repeat_of, line_checksum, checksum, battery_checksum,
    sessions.note || CASE WHEN left_over = '' THEN '' WHEN sessions.note = '' THEN left_over
                     ELSE '; ' || left_over END
FROM sessions JOIN (
    SELECT s.id AS of,
        CASE WHEN EXISTS (SELECT 1 FROM attempts WHERE session = s.id) THEN
            CASE WHEN ifnull(c.device, '') = ''
                OR EXISTS (SELECT 1 FROM sets WHERE session = s.id) THEN ''
            -- two devices, and only tests to have been measured
            ELSE words_of((SELECT name FROM devices
                           WHERE id = s.device AND NOT same_name(name, c.device))) END
        WHEN EXISTS (SELECT 1 FROM sets WHERE session = s.id) THEN words_of(
            c.device, c.surface, c.footwear, c.technique)
        ELSE words_of((SELECT name FROM devices WHERE id = s.device), s.place,
            c.device, c.surface, c.footwear, c.technique) END AS left_over
    FROM sessions AS s LEFT JOIN contexts AS c ON c.session = s.id
) ON of = sessions.id;

DROP TABLE contexts;
DROP TABLE sessions;
ALTER TABLE sessions_now RENAME TO sessions;
CREATE INDEX sessions_by_repeat ON sessions (repeat_of);

CREATE TABLE stations (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (trim(name) <> ''),
    -- what is done here: a lift, or the tests of station_tests
    lift INTEGER REFERENCES lifts (id),
    device INTEGER REFERENCES devices (id),
    place TEXT NOT NULL,
    surface TEXT NOT NULL,
    footwear TEXT NOT NULL,
    technique TEXT NOT NULL,
    not_comparable TEXT NOT NULL,
    -- planned for each athlete; 0: as many as the ladder has
    sets INTEGER NOT NULL CHECK (sets >= 0 AND sets <= 50),
    -- an entered set makes it the next one's turn
    rotates INTEGER NOT NULL CHECK (rotates IN (0, 1)),
    note TEXT NOT NULL,
    -- of the row, its tests and its ladder in order
    checksum INTEGER NOT NULL
) STRICT;

CREATE INDEX stations_by_lift ON stations (lift);
CREATE INDEX stations_by_device ON stations (device);

CREATE TABLE station_tests (
    station INTEGER NOT NULL REFERENCES stations (id),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    test INTEGER NOT NULL REFERENCES tests (id),
    PRIMARY KEY (station, ordinal),
    UNIQUE (station, test)
) STRICT, WITHOUT ROWID;

CREATE INDEX station_tests_by_test ON station_tests (test);

-- the ladder
CREATE TABLE station_loads (
    station INTEGER NOT NULL REFERENCES stations (id),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    load_g INTEGER NOT NULL CHECK (load_g >= 0 AND load_g <= 2000000),
    PRIMARY KEY (station, ordinal)
) STRICT, WITHOUT ROWID;

-- who is at a station on a day
CREATE TABLE rosters (
    station INTEGER NOT NULL REFERENCES stations (id),
    day TEXT NOT NULL CHECK (length(day) = 10 AND day IS date(day)),
    -- of its athletes in order
    checksum INTEGER NOT NULL,
    PRIMARY KEY (station, day)
) STRICT, WITHOUT ROWID;

CREATE TABLE roster_athletes (
    station INTEGER NOT NULL,
    day TEXT NOT NULL,
    -- the order of their turns
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    athlete INTEGER NOT NULL REFERENCES athletes (id),
    PRIMARY KEY (station, day, ordinal),
    UNIQUE (station, day, athlete),
    FOREIGN KEY (station, day) REFERENCES rosters (station, day)
) STRICT, WITHOUT ROWID;

CREATE INDEX roster_athletes_by_athlete ON roster_athletes (athlete);

INSERT INTO tallies (owner, kind, things, sum) VALUES (0, 'station', 0, 0), (0, 'roster', 0, 0);
