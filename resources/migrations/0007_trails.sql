-- SPDX-License-Identifier: GPL-3.0-or-later
-- What each thing has been, so that logs which were changed apart can meet: its trail, what it said
-- last where it was removed, and what the coach has still to choose between; and of a log that
-- meets a store, what it knows of it. The tallies of things do not change: one that was never
-- changed has no trail written down, and weighs what it weighed.

CREATE TABLE atoms_now (
    -- known to the program; to look it up in a list of words took as long as the rest of the row
    kind TEXT NOT NULL CHECK (kind <> ''),
    one INTEGER NOT NULL,
    two INTEGER NOT NULL,
    three INTEGER NOT NULL,
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    hash BLOB NOT NULL CHECK (length(hash) = 16),
    -- its steps (core/log/trail.h), 32 bytes each; NULL: it came as it is, in one step
    trail BLOB CHECK (length(trail) >= 64 AND length(trail) % 32 = 0),
    PRIMARY KEY (kind, one, two, three)
) STRICT, WITHOUT ROWID;
INSERT INTO atoms_now SELECT kind, one, two, three, uuid, hash, NULL FROM atoms;
DROP TABLE atoms;
ALTER TABLE atoms_now RENAME TO atoms;
CREATE INDEX atoms_by_uuid ON atoms (uuid);

-- NULL: it came, and was removed, in two steps
ALTER TABLE removed_atoms ADD COLUMN trail BLOB CHECK (length(trail) >= 64 AND length(trail) % 32 = 0);
-- what it said last (core/log/contents.h); NULL: it was removed before that was kept
ALTER TABLE removed_atoms ADD COLUMN content BLOB CHECK (length(content) > 0);
CREATE INDEX removed_atoms_by_uuid ON removed_atoms (uuid);

-- Two logs changed a thing apart: what lost, until the coach has chosen. Each is an atom too, and
-- travels.
CREATE TABLE conflicts (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    -- the thing's UUID
    about BLOB NOT NULL CHECK (length(about) = 16),
    -- of what lost
    revision BLOB NOT NULL CHECK (length(revision) = 16),
    why TEXT NOT NULL CHECK (why <> ''),
    -- whether what lost was still there
    lived INTEGER NOT NULL CHECK (lived IN (0, 1)),
    -- what lost; empty where nobody has it any more
    content BLOB NOT NULL
) STRICT;
CREATE INDEX conflicts_by_about ON conflicts (about);
INSERT INTO keys (kind, last, turned) VALUES ('conflict', 0, -1);

-- The store that this log meets: one row, or none.
CREATE TABLE store (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    id BLOB NOT NULL CHECK (length(id) = 16),
    -- where it is, as libpq takes it; never a password
    connection TEXT NOT NULL CHECK (connection <> ''),
    -- to which what is new here goes
    squad BLOB NOT NULL CHECK (length(squad) = 16),
    -- when the last meeting ended, in UTC: 2026-03-14T09:30:00Z; empty: there was none
    met TEXT NOT NULL
) STRICT;

-- The squads that are here, each with the version up to which it was taken.
CREATE TABLE squads (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (name <> ''),
    may TEXT NOT NULL CHECK (may IN ('read', 'write')),
    taken INTEGER NOT NULL CHECK (taken >= 0)
) STRICT, WITHOUT ROWID;

-- Moments of the store that this log has seen: by them it notices that the store went back.
CREATE TABLE marks (
    n INTEGER PRIMARY KEY CHECK (n >= 0),
    tag BLOB NOT NULL CHECK (length(tag) = 16)
) STRICT;

-- What the store has, as far as this log knows.
CREATE TABLE sent (
    uuid BLOB NOT NULL PRIMARY KEY CHECK (length(uuid) = 16),
    squad BLOB NOT NULL CHECK (length(squad) = 16),
    version INTEGER NOT NULL CHECK (version >= 0),
    revision BLOB NOT NULL CHECK (length(revision) = 16)
) STRICT, WITHOUT ROWID;
CREATE INDEX sent_by_version ON sent (version);

-- What it has not, or not as it is now; kept in a log that meets a store.
CREATE TABLE unsent (
    uuid BLOB NOT NULL PRIMARY KEY CHECK (length(uuid) = 16),
    -- to which it goes, if not to where it was or where the new goes
    squad BLOB CHECK (length(squad) = 16)
) STRICT, WITHOUT ROWID;

INSERT INTO tallies (owner, kind, things, sum)
VALUES (0, 'store', 0, 0), (0, 'squad', 0, 0), (0, 'mark', 0, 0), (0, 'sent', 0, 0),
    (0, 'unsent', 0, 0);
