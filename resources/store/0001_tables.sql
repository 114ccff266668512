-- SPDX-License-Identifier: GPL-3.0-or-later
-- The shared store in which many desks meet: PostgreSQL 15 or newer. Run once, in one transaction,
-- by who may make roles and a schema in this database; afterwards slopebook_owner owns it all.
-- Everything that travels is an atom in one table: its rules (revisions, keys, what it hangs on, who
-- sees it) are the same for every kind, and stand here once. What an atom says is its content, a JSON
-- object with the columns of the log's own tables; analysts read the views at the end.

DO $$
DECLARE made text;
BEGIN
    FOREACH made IN ARRAY ARRAY['slopebook_owner', 'slopebook_coach', 'slopebook_analyst'] LOOP
        IF NOT EXISTS (SELECT FROM pg_catalog.pg_roles WHERE rolname = made) THEN
            EXECUTE pg_catalog.format('CREATE ROLE %I NOLOGIN', made);
        END IF;
    END LOOP;
    IF NOT pg_catalog.pg_has_role(current_user, 'slopebook_owner', 'member') THEN
        EXECUTE pg_catalog.format('GRANT slopebook_owner TO %I', current_user);
    END IF;
    EXECUTE pg_catalog.format('GRANT CREATE ON DATABASE %I TO slopebook_owner', pg_catalog.current_database());
    -- who went away in the middle holds nobody up
    EXECUTE pg_catalog.format('ALTER DATABASE %I SET idle_in_transaction_session_timeout = %L',
                              pg_catalog.current_database(), '30s');
END $$;
-- who manages the store makes coaches and analysts
GRANT slopebook_coach, slopebook_analyst TO slopebook_owner WITH ADMIN OPTION;

CREATE SCHEMA slopebook AUTHORIZATION slopebook_owner;
SET LOCAL ROLE slopebook_owner;
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

CREATE FUNCTION slopebook.day(day text) RETURNS date IMMUTABLE STRICT PARALLEL SAFE
    RETURN CASE WHEN day ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$'
        THEN make_date(substr(day, 1, 4)::int, substr(day, 6, 2)::int, substr(day, 9, 2)::int) END;

-- Of a rep: a number, or, where more is said of it, an object with one.
CREATE FUNCTION slopebook.velocity(rep jsonb) RETURNS float8 IMMUTABLE STRICT PARALLEL SAFE
    RETURN CASE WHEN jsonb_typeof(rep) = 'number' THEN rep ELSE rep -> 'velocity' END::float8;

CREATE FUNCTION slopebook.whole(number jsonb, lowest bigint, highest bigint) RETURNS boolean IMMUTABLE PARALLEL SAFE
    RETURN CASE WHEN jsonb_typeof(number) = 'number'
        THEN number::numeric BETWEEN lowest AND highest AND number::numeric = trunc(number::numeric) ELSE false END;

-- Whether a content of that kind can be (of a set: stamp()): the ranges that every log keeps to. A desk
-- looks further.
CREATE FUNCTION slopebook.sound(kind text, content jsonb) RETURNS boolean IMMUTABLE PARALLEL SAFE
    RETURN coalesce(jsonb_typeof(content) = 'object' AND pg_column_size(content) <= 1000000 AND CASE
        WHEN kind IN ('athlete', 'lift', 'device', 'test', 'equipment', 'station')
            THEN jsonb_typeof(content -> 'name') = 'string' AND btrim(content ->> 'name') <> ''
        WHEN kind = 'block'
            THEN btrim(content ->> 'name') <> ''
                AND slopebook.day(content ->> 'first_day') <= slopebook.day(content ->> 'last_day')
        WHEN kind = 'session'
            THEN slopebook.day(content ->> 'day') IS NOT NULL
                AND slopebook.whole(content -> 'ordinal', 1, 1000000)
                AND (NOT content ? 'body_mass_g' OR slopebook.whole(content -> 'body_mass_g', 1, 2000000))
        WHEN kind = 'attempt'
            THEN content ? 'test' AND slopebook.whole(content -> 'ordinal', 1, 1000000)
                AND jsonb_typeof(content -> 'value') = 'number'
                AND NOT jsonb_path_exists(content, '$.value ? (@ <= 0 || @ >= 1000000)')
        WHEN kind = 'gap'
            THEN (content ? 'lift') <> (content ? 'test') AND slopebook.whole(content -> 'ordinal', 1, 1000000)
        WHEN kind = 'lift conditions' THEN content ? 'lift'
        WHEN kind = 'test conditions' THEN content ? 'test'
        WHEN kind = 'check load'
            THEN content ? 'lift' AND slopebook.whole(content -> 'load_g', 0, 2000000)
        WHEN kind = 'roster' THEN content ? 'athlete' AND slopebook.day(content ->> 'day') IS NOT NULL
        WHEN kind = 'conflict' THEN content ? 'about'
        ELSE false END, false);

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
    CONSTRAINT whole_trail CHECK (cardinality(trail) BETWEEN 1 AND 100000 AND cardinality(hashes) = cardinality(trail)
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
