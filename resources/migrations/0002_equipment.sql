-- SPDX-License-Identifier: GPL-3.0-or-later
-- Named sets of equipment. Masses of pieces are whole units of 10 nanograms, in which kilograms (to
-- 11 decimals) and pounds (to 3) are both exact.

-- Kinds of keys may grow from here on without a new table each time.
CREATE TABLE keys_grown (
    -- The last key given out for a table: a key is never used again, so that an undo finds its own.
    kind TEXT NOT NULL PRIMARY KEY CHECK (kind <> ''),
    last INTEGER NOT NULL CHECK (last >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO keys_grown (kind, last) SELECT kind, last FROM keys;
DROP TABLE keys;
ALTER TABLE keys_grown RENAME TO keys;
INSERT INTO keys (kind, last) VALUES ('equipment', 0);

CREATE TABLE equipment (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL UNIQUE CHECK (trim(name) <> ''),
    -- the heaviest load that may be used
    ceiling_10ng INTEGER CHECK (ceiling_10ng > 0 AND ceiling_10ng < 100000000000000),
    note TEXT NOT NULL,
    -- of the row and its pieces in order
    checksum INTEGER NOT NULL
) STRICT;

CREATE TABLE equipment_pieces (
    equipment INTEGER NOT NULL REFERENCES equipment (id),
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    -- plate: goes on in pairs; alone: a load without a bar; added: goes on top of any load
    kind TEXT NOT NULL CHECK (kind IN ('bar', 'plate', 'alone', 'added')),
    name TEXT NOT NULL,
    mass_10ng INTEGER NOT NULL CHECK (mass_10ng > 0 AND mass_10ng < 100000000000000),
    -- as it was typed
    unit TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
    pairs INTEGER CHECK (pairs >= 1 AND pairs <= 50),
    PRIMARY KEY (equipment, ordinal),
    CHECK ((kind = 'plate') = (pairs IS NOT NULL))
) STRICT, WITHOUT ROWID;
