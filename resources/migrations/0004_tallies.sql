-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is missing is noticed as well as what is altered: of each kind of thing, how many there are
-- and a sum of their checksums in no order. tally() is the program's own (core/log/tally.h).

CREATE TABLE tallies (
    -- 0: what belongs to nobody; else the athlete's key
    owner INTEGER NOT NULL CHECK (owner >= 0),
    kind TEXT NOT NULL CHECK (kind <> ''),
    things INTEGER NOT NULL,
    -- modulo 2^64
    sum INTEGER NOT NULL,
    PRIMARY KEY (owner, kind)
) STRICT, WITHOUT ROWID;

INSERT INTO tallies SELECT 0, 'athlete', count(*), tally(checksum, loads_checksum) FROM athletes;
INSERT INTO tallies SELECT 0, 'lift', count(*), tally(checksum) FROM lifts;
INSERT INTO tallies SELECT 0, 'device', count(*), tally(checksum) FROM devices;
INSERT INTO tallies SELECT 0, 'block', count(*), tally(checksum) FROM blocks;
INSERT INTO tallies SELECT 0, 'equipment', count(*), tally(checksum) FROM equipment;
INSERT INTO tallies SELECT 0, 'test', count(*), tally(checksum) FROM tests;
INSERT INTO tallies
SELECT athletes.id, 'session', count(sessions.id), tally(sessions.checksum, sessions.battery_checksum)
FROM athletes LEFT JOIN sessions ON sessions.athlete = athletes.id
GROUP BY athletes.id;

-- The last keys stand there twice, the second time with every bit turned: they have no checksum.
CREATE TABLE keys_twice (
    -- The last key given out for a table: a key is never used again, so that an undo finds its own.
    kind TEXT NOT NULL PRIMARY KEY CHECK (kind <> ''),
    last INTEGER NOT NULL CHECK (last >= 0),
    turned INTEGER NOT NULL DEFAULT -1 CHECK (turned = ~last)
) STRICT, WITHOUT ROWID;
INSERT INTO keys_twice SELECT kind, last, ~last FROM keys;
DROP TABLE keys;
ALTER TABLE keys_twice RENAME TO keys;
