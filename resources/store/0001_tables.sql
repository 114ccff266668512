-- SPDX-License-Identifier: GPL-3.0-or-later
-- The shared store in which many desks meet: PostgreSQL 15 or newer. Run once, in one transaction,
-- by who owns this database, or is a member of the role that does. Who owns the database owns it all,
-- by PostgreSQL's own role for that (pg_database_owner, of which nobody has to be made a member). No
-- role is made here: roles are the whole server's, and two stores on one server would share them.
-- Rights are given in this database alone, to each login by name (admit()).
-- Everything that travels is an atom in one table: its rules (revisions, keys, what it hangs on, who
-- sees it) are the same for every kind, and stand here once. What an atom says is its content, a JSON
-- object with the columns of the log's own tables; analysts read the views at the end.

-- a schema is made by the database's owner himself: pg_database_owner has no right to the database
DO $$
BEGIN
    EXECUTE pg_catalog.format('SET LOCAL ROLE %I', (SELECT pg_catalog.pg_get_userbyid(d.datdba)
        FROM pg_catalog.pg_database AS d WHERE d.datname = pg_catalog.current_database()));
END $$;
CREATE SCHEMA slopebook AUTHORIZATION pg_database_owner;
SET LOCAL ROLE pg_database_owner;
SET LOCAL search_path = pg_catalog, pg_temp;

-- One row. n counts the writings: a row that is locked until the writing ends, so that who reads up to n
-- has read all up to n. (A sequence gives its numbers out before they are committed: a reader misses rows.)
CREATE TABLE slopebook.store (
    one boolean PRIMARY KEY DEFAULT true CHECK (one),
    id uuid NOT NULL DEFAULT gen_random_uuid(),
    layout int NOT NULL,
    n bigint NOT NULL DEFAULT 0,
    -- the transaction that made n what it is: its number, which another server may give out again, and its begin
    writer xid8,
    began timestamptz
);
INSERT INTO slopebook.store (layout) VALUES (1);

-- Each n with a tag of its own: a store that went back to a backup, and grew again, has other tags.
CREATE TABLE slopebook.ticks (n bigint PRIMARY KEY, tag uuid NOT NULL DEFAULT gen_random_uuid());
INSERT INTO slopebook.ticks (n) VALUES (0);

CREATE TABLE slopebook.squads (
    id uuid PRIMARY KEY DEFAULT gen_random_uuid(),
    name text NOT NULL UNIQUE CHECK (btrim(name) <> '' AND char_length(name) <= 200)
);
-- Lifts, tests and devices are the whole institute's: an athlete who moves takes along what was lifted.
INSERT INTO slopebook.squads VALUES ('00000000-0000-0000-0000-000000000000', 'Everybody');

CREATE TABLE slopebook.members (
    role name NOT NULL,
    squad uuid NOT NULL REFERENCES slopebook.squads (id),
    may text NOT NULL CHECK (may IN ('read', 'write')),
    PRIMARY KEY (role, squad)
);

-- The kind of what an atom hangs on; nothing where it stands by itself.
CREATE FUNCTION slopebook.parent_kind(kind text) RETURNS text IMMUTABLE PARALLEL SAFE
    RETURN CASE
        WHEN kind IN ('session', 'check load') THEN 'athlete'
        WHEN kind IN ('set', 'lift conditions', 'test conditions', 'attempt', 'gap') THEN 'session'
        WHEN kind = 'roster' THEN 'station'
    END;

CREATE TABLE slopebook.atoms (
    id uuid PRIMARY KEY,
    squad uuid NOT NULL,
    kind text NOT NULL CHECK (kind IN ('athlete', 'lift', 'device', 'block', 'test', 'equipment', 'station', 'session',
        'lift conditions', 'test conditions', 'set', 'attempt', 'gap', 'check load', 'roster', 'conflict')),
    parent uuid,
    -- what else it speaks of, read from its content: a lift, a test, an athlete, the session it repeats
    about uuid,
    device uuid,
    -- what it shares with no other live one of its squad, shortened; NULL when it is removed
    key uuid,
    -- the n of its last writing, set here alone
    version bigint NOT NULL,
    author name NOT NULL,
    alive boolean NOT NULL,
    -- its revisions, the last one its own, and the hash of the content at each
    trail uuid[] NOT NULL,
    hashes uuid[] NOT NULL,
    -- NULL of what was removed before a log kept what such things had said
    content jsonb,
    UNIQUE (squad, id),
    CONSTRAINT key_taken UNIQUE (squad, key) DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT of_squad CHECK ((kind IN ('lift', 'test', 'device')) = (squad = '00000000-0000-0000-0000-000000000000')),
    CONSTRAINT of_parent CHECK ((slopebook.parent_kind(kind) IS NULL) = (parent IS NULL) OR content IS NULL),
    CONSTRAINT whole_trail CHECK (cardinality(trail) BETWEEN 1 AND 2000000 AND cardinality(hashes) = cardinality(trail)
        AND array_position(trail, NULL) IS NULL AND array_position(hashes, NULL) IS NULL),
    CONSTRAINT said CHECK (content IS NOT NULL OR NOT alive),
    CONSTRAINT parent_there FOREIGN KEY (squad, parent) REFERENCES slopebook.atoms (squad, id) DEFERRABLE INITIALLY DEFERRED
);
CREATE INDEX atoms_by_news ON slopebook.atoms (squad, version);
CREATE INDEX atoms_by_parent ON slopebook.atoms (squad, parent) WHERE parent IS NOT NULL;
CREATE INDEX atoms_by_about ON slopebook.atoms (about) WHERE about IS NOT NULL;
CREATE INDEX atoms_by_device ON slopebook.atoms (device) WHERE device IS NOT NULL;
CREATE INDEX atoms_of_few ON slopebook.atoms (kind, squad)
    WHERE kind IN ('athlete', 'lift', 'test', 'device', 'station', 'conflict');

-- An athlete who went to another squad, for the desks of the one that was left.
CREATE TABLE slopebook.moved (
    squad uuid NOT NULL REFERENCES slopebook.squads (id),
    athlete uuid NOT NULL REFERENCES slopebook.atoms (id),
    version bigint NOT NULL,
    PRIMARY KEY (squad, athlete)
);
