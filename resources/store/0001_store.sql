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
    CONSTRAINT of_parent CHECK ((slopebook.parent_kind(kind) IS NULL) = (parent IS NULL)),
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

-- Functions name what they use in full and look up nothing else: neither a caller's temporary table
-- nor an operator of his own stands in for ours.

-- Waits until nobody else writes; held to the end of the transaction.
CREATE FUNCTION slopebook.hold() RETURNS void LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    PERFORM FROM slopebook.store FOR UPDATE;
END $$;

-- The first writing of a transaction makes a new n.
CREATE FUNCTION slopebook.count_up() RETURNS bigint LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
DECLARE now bigint;
BEGIN
    IF pg_trigger_depth() = 0 THEN
        RAISE EXCEPTION USING ERRCODE = '42501', MESSAGE = 'only a writing counts';
    END IF;
    IF current_setting('transaction_isolation') <> 'read committed' THEN
        RAISE EXCEPTION USING ERRCODE = 'SB003', MESSAGE = 'the store is written under READ COMMITTED alone';
    END IF;
    UPDATE slopebook.store AS s SET n = s.n + 1, writer = pg_current_xact_id(), began = transaction_timestamp() RETURNING s.n INTO now;
    INSERT INTO slopebook.ticks (n) VALUES (now);
    RETURN now;
END $$;

-- What is ours to say of a row, whoever writes it.
CREATE FUNCTION slopebook.stamp() RETURNS trigger LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    lift text;
    ordinal numeric;
    load numeric;
    sound boolean;
    counted boolean;
BEGIN
    IF TG_OP = 'UPDATE' THEN
        IF NEW.id <> OLD.id OR NEW.kind <> OLD.kind THEN
            RAISE EXCEPTION USING ERRCODE = 'SB005', MESSAGE = 'an atom stays what it is', DETAIL = OLD.id::text;
        END IF;
        -- what is written over must be known to who writes
        IF (OLD.trail[cardinality(OLD.trail)] = ANY (NEW.trail)) IS NOT TRUE THEN
            RAISE EXCEPTION USING ERRCODE = 'SB005', MESSAGE = 'stale', DETAIL = OLD.id::text;
        END IF;
        IF OLD.trail[cardinality(OLD.trail)] = NEW.trail[cardinality(NEW.trail)]
            AND (OLD.content IS DISTINCT FROM NEW.content OR OLD.alive <> NEW.alive OR OLD.parent IS DISTINCT FROM NEW.parent) THEN
            RAISE EXCEPTION USING ERRCODE = 'SB005', MESSAGE = 'changed without a revision', DETAIL = OLD.id::text;
        END IF;
    END IF;
    SELECT s.n, s.writer = pg_current_xact_id() AND s.began = transaction_timestamp() INTO NEW.version, counted
    FROM slopebook.store AS s;
    IF counted IS NOT TRUE THEN
        NEW.version := slopebook.count_up();
    END IF;
    NEW.author := session_user;
    IF NEW.kind = 'set' AND NEW.content IS NOT NULL THEN -- most of all that comes: looked at step by step, soonest done
        ordinal := (NEW.content -> 'ordinal')::numeric;
        load := (NEW.content -> 'load_g')::numeric;
        sound := ordinal >= 1 AND ordinal <= 1000000 AND ordinal = trunc(ordinal) AND load >= 0 AND load <= 2000000
            AND load = trunc(load) AND NEW.content ? 'lift' AND pg_column_size(NEW.content) <= 1000000
            AND NOT jsonb_path_exists(NEW.content, '$.velocities[*] ? (@.type() != "number" || @ <= 0 || @ >= 10)');
    ELSE
        sound := NEW.content IS NULL OR slopebook.sound(NEW.kind, NEW.content);
    END IF;
    IF sound IS NOT TRUE THEN
        RAISE EXCEPTION USING ERRCODE = '23514', MESSAGE = 'a content that no log holds', DETAIL = NEW.id::text;
    END IF;
    IF NEW.kind <> 'conflict' THEN
        lift := NEW.content ->> 'lift';
        NEW.about := coalesce(lift, NEW.content ->> 'test', NEW.content ->> 'athlete', NEW.content ->> 'repeat_of')::uuid;
        NEW.device := (NEW.content ->> 'device')::uuid;
    END IF;
    IF NOT NEW.alive OR NEW.kind = 'conflict' THEN
        NEW.key := NULL;
        RETURN NEW;
    END IF;
    NEW.key := encode(substr(sha256(convert_to(concat_ws(' ', NEW.kind, NEW.parent, CASE
        WHEN NEW.kind = 'set' THEN lift || ' ' || (NEW.content ->> 'ordinal')
        WHEN NEW.parent IS NULL AND NEW.kind <> 'block' THEN NEW.content ->> 'name'
        WHEN NEW.kind IN ('attempt', 'gap') THEN NEW.content ->> 'ordinal'
        WHEN NEW.kind = 'session' THEN (NEW.content ->> 'day') || ' ' || (NEW.content ->> 'ordinal')
        WHEN NEW.kind = 'block' THEN (NEW.content ->> 'first_day') || ' ' || (NEW.content ->> 'name')
        WHEN NEW.kind = 'check load' THEN lift || ' ' || (NEW.content ->> 'load_g')
        WHEN NEW.kind = 'roster' THEN (NEW.content ->> 'day') || ' ' || NEW.about
        ELSE NEW.about::text END), 'UTF8')), 1, 16), 'hex')::uuid;
    RETURN NEW;
END $$;

-- All that came in one statement, at once (a foreign key asks for each row, ten times as slowly): what it
-- speaks of is there, of the right kind, in its squad or everybody's; and lives, where it lives itself.
CREATE FUNCTION slopebook.look_at_references() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp SET plan_cache_mode = force_custom_plan AS $$
DECLARE bad uuid;
BEGIN
    SELECT c.id INTO bad FROM came AS c LEFT JOIN slopebook.atoms AS p ON p.id = c.parent
    WHERE c.parent IS NOT NULL AND (p.id IS NULL OR (c.alive AND NOT p.alive) OR p.squad <> c.squad
        OR p.kind <> slopebook.parent_kind(c.kind)) LIMIT 1;
    IF bad IS NULL THEN
        SELECT c.id INTO bad FROM came AS c LEFT JOIN slopebook.atoms AS p ON p.id = c.about
        WHERE c.about IS NOT NULL AND (p.id IS NULL OR (c.alive AND NOT p.alive)
            OR (c.alive AND p.squad NOT IN (c.squad, '00000000-0000-0000-0000-000000000000'))
            OR p.kind <> CASE WHEN c.content ? 'lift' THEN 'lift' WHEN c.content ? 'test' THEN 'test'
                WHEN c.content ? 'athlete' THEN 'athlete' ELSE 'session' END) LIMIT 1;
    END IF;
    IF bad IS NULL THEN
        SELECT c.id INTO bad FROM came AS c LEFT JOIN slopebook.atoms AS p ON p.id = c.device
        WHERE c.device IS NOT NULL AND (p.id IS NULL OR (c.alive AND NOT p.alive) OR p.kind <> 'device') LIMIT 1;
    END IF;
    IF bad IS NULL THEN
        SELECT c.id INTO bad FROM came AS c
            CROSS JOIN LATERAL jsonb_array_elements_text(CASE WHEN jsonb_typeof(c.content -> 'tests') = 'array'
                THEN c.content -> 'tests' ELSE '[]' END) AS test
            LEFT JOIN slopebook.atoms AS p ON p.id = test::uuid
        WHERE c.kind = 'station' AND (p.id IS NULL OR (c.alive AND NOT p.alive) OR p.kind <> 'test') LIMIT 1;
    END IF;
    IF bad IS NULL THEN
        SELECT c.id INTO bad FROM came AS c WHERE NOT c.alive AND (
            EXISTS (SELECT FROM slopebook.atoms AS k WHERE k.squad = c.squad AND k.parent = c.id AND k.alive)
            OR EXISTS (SELECT FROM slopebook.atoms AS k WHERE k.about = c.id AND k.alive)
            OR (c.kind = 'device' AND EXISTS (SELECT FROM slopebook.atoms AS k WHERE k.device = c.id AND k.alive))
            OR (c.kind = 'test' AND EXISTS (SELECT FROM slopebook.atoms AS k
                WHERE k.kind = 'station' AND k.alive AND k.content -> 'tests' ? c.id::text))) LIMIT 1;
    END IF;
    IF bad IS NULL THEN
        SELECT c.squad INTO bad FROM (SELECT DISTINCT squad FROM came) AS c
        WHERE NOT EXISTS (SELECT FROM slopebook.squads AS q WHERE q.id = c.squad) LIMIT 1;
    END IF;
    IF bad IS NOT NULL THEN
        RAISE EXCEPTION USING ERRCODE = 'SB002', MESSAGE = 'orphan', DETAIL = bad::text;
    END IF;
    RETURN NULL;
END $$;

-- Only who manages the store can erase, by hand: nothing that something speaks of.
CREATE FUNCTION slopebook.look_at_erased() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp SET plan_cache_mode = force_custom_plan AS $$
BEGIN
    IF EXISTS (SELECT FROM gone AS g JOIN slopebook.atoms AS k ON k.about = g.id OR k.device = g.id) THEN
        RAISE EXCEPTION USING ERRCODE = 'SB002', MESSAGE = 'something speaks of it';
    END IF;
    RETURN NULL;
END $$;
CREATE FUNCTION slopebook.look_at_squad() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    IF EXISTS (SELECT FROM slopebook.atoms AS a WHERE a.squad = OLD.id) THEN
        RAISE EXCEPTION USING ERRCODE = 'SB002', MESSAGE = 'a squad that is not empty';
    END IF;
    RETURN OLD;
END $$;
CREATE TRIGGER look_at_erased AFTER DELETE ON slopebook.atoms REFERENCING OLD TABLE AS gone
    FOR EACH STATEMENT EXECUTE FUNCTION slopebook.look_at_erased();
CREATE TRIGGER look_at_squad BEFORE DELETE ON slopebook.squads
    FOR EACH ROW EXECUTE FUNCTION slopebook.look_at_squad();

CREATE TRIGGER stamp BEFORE INSERT OR UPDATE ON slopebook.atoms
    FOR EACH ROW EXECUTE FUNCTION slopebook.stamp();
CREATE TRIGGER look_at_inserted AFTER INSERT ON slopebook.atoms REFERENCING NEW TABLE AS came
    FOR EACH STATEMENT EXECUTE FUNCTION slopebook.look_at_references();
CREATE TRIGGER look_at_updated AFTER UPDATE ON slopebook.atoms REFERENCING NEW TABLE AS came
    FOR EACH STATEMENT EXECUTE FUNCTION slopebook.look_at_references();

-- What a push brings: as JSON, or, where it is much, in the caller's own temporary table "coming".
CREATE FUNCTION slopebook.coming(atoms jsonb) RETURNS TABLE (
    id uuid, squad uuid, kind text, parent uuid, alive boolean, trail uuid[], hashes uuid[], content jsonb)
    LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    IF atoms IS NULL THEN
        RETURN QUERY SELECT c.id, c.squad, c.kind, c.parent, c.alive, c.trail, c.hashes, c.content FROM pg_temp.coming AS c;
    ELSE
        RETURN QUERY SELECT * FROM jsonb_to_recordset(atoms) AS c (id uuid, squad uuid, kind text, parent uuid,
            alive boolean, trail uuid[], hashes uuid[], content jsonb);
    END IF;
END $$;

-- One push: one statement, one transaction, all or nothing. mark: the highest n that the desk knows, with
-- its tag. answer: 'ok', with the n of now; 'went back' (the store does not know the mark); 'stale', with
-- the atoms whose revision here the desk does not know. Nothing is counted where nothing was new. What
-- breaks a key (23505) or hangs on nothing (23503, SB002) is an error and writes nothing.
CREATE FUNCTION slopebook.push(layout int, mark_n bigint, mark_tag uuid, atoms jsonb,
                               OUT answer text, OUT n bigint, OUT tag uuid, OUT stale uuid[], OUT wrote bigint)
    LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
#variable_conflict use_column
BEGIN
    IF current_setting('transaction_isolation') <> 'read committed' THEN
        RAISE EXCEPTION USING ERRCODE = 'SB003', MESSAGE = 'the store is written under READ COMMITTED alone';
    END IF;
    PERFORM slopebook.hold();
    PERFORM FROM slopebook.store AS s WHERE s.layout = push.layout;
    IF NOT FOUND THEN
        RAISE EXCEPTION USING ERRCODE = 'SB004', MESSAGE = 'another layout';
    END IF;
    wrote := 0;
    PERFORM FROM slopebook.ticks AS t WHERE t.n = mark_n AND t.tag = mark_tag;
    IF NOT FOUND THEN
        answer := 'went back';
        RETURN;
    END IF;
    -- planned anew each time (EXECUTE): one set or a season's
    EXECUTE $sql$
        SELECT array_agg(c.id) FILTER (WHERE NOT s.trail[cardinality(s.trail)] = ANY (c.trail)
                AND NOT coalesce(c.trail[cardinality(c.trail)] = ANY (s.trail), false)),
            count(*) FILTER (WHERE s.id IS NULL OR NOT coalesce(c.trail[cardinality(c.trail)] = ANY (s.trail), false))
        FROM slopebook.coming($1) AS c LEFT JOIN slopebook.atoms AS s ON s.id = c.id
    $sql$ INTO stale, wrote USING push.atoms;
    IF stale IS NOT NULL THEN
        answer := 'stale';
        wrote := 0;
        RETURN;
    END IF;
    IF wrote > 0 THEN
        EXECUTE $sql$
            INSERT INTO slopebook.atoms (id, squad, kind, parent, alive, trail, hashes, content)
            SELECT c.id, c.squad, c.kind, c.parent, c.alive, c.trail, c.hashes, c.content
            FROM slopebook.coming($1) AS c LEFT JOIN slopebook.atoms AS s ON s.id = c.id
            WHERE s.id IS NULL OR NOT coalesce(c.trail[cardinality(c.trail)] = ANY (s.trail), false)
            ON CONFLICT (id) DO UPDATE SET parent = excluded.parent, alive = excluded.alive, trail = excluded.trail,
                hashes = excluded.hashes, content = excluded.content
        $sql$ USING push.atoms;
        SET CONSTRAINTS ALL IMMEDIATE;
    END IF;
    SELECT s.n, t.tag INTO n, tag FROM slopebook.store AS s JOIN slopebook.ticks AS t ON t.n = s.n;
    IF wrote > 0 THEN
        PERFORM pg_notify('slopebook', n::text);
    END IF;
    answer := 'ok';
END $$;

-- An athlete with all that hangs on him goes to another squad. Who asks may write in both, or manages the
-- store. Places on rosters of the old squad go. The name must be free in the new one.
CREATE FUNCTION slopebook.move_athlete(athlete uuid, squad uuid) RETURNS bigint LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    was uuid;
    now bigint;
    taken uuid[];
BEGIN
    PERFORM slopebook.hold();
    SELECT a.squad INTO was FROM slopebook.atoms AS a WHERE a.id = athlete AND a.kind = 'athlete';
    IF was IS NULL OR was = move_athlete.squad
        OR NOT (pg_has_role(session_user, 'slopebook_owner', 'member')
            OR 2 = (SELECT count(*) FROM slopebook.members AS m WHERE m.role = session_user AND m.may = 'write'
                AND m.squad IN (was, move_athlete.squad))) THEN
        RAISE EXCEPTION USING ERRCODE = '42501', MESSAGE = 'no such athlete to be moved there by this login';
    END IF;
    DELETE FROM slopebook.atoms AS a WHERE a.about = athlete AND a.kind = 'roster';
    WITH sessions AS (SELECT a.id FROM slopebook.atoms AS a WHERE a.squad = was AND a.parent = athlete),
        below AS (SELECT a.id FROM slopebook.atoms AS a JOIN sessions ON a.squad = was AND a.parent = sessions.id),
        them AS (SELECT athlete AS id UNION ALL SELECT id FROM sessions UNION ALL SELECT id FROM below)
    SELECT array_agg(id) INTO taken FROM (SELECT id FROM them UNION ALL SELECT a.id FROM slopebook.atoms AS a
        JOIN them ON a.kind = 'conflict' AND a.squad = was AND a.content ->> 'about' = them.id::text) AS every;
    UPDATE slopebook.atoms AS a SET squad = move_athlete.squad WHERE a.id = ANY (taken);
    SET CONSTRAINTS ALL IMMEDIATE;
    SELECT s.n INTO now FROM slopebook.store AS s;
    INSERT INTO slopebook.moved VALUES (was, athlete, now) ON CONFLICT ON CONSTRAINT moved_pkey DO UPDATE SET version = now;
    PERFORM pg_notify('slopebook', now::text);
    RETURN now;
END $$;

-- Who sees and writes what. Owners of tables are not asked: slopebook_owner manages.
ALTER TABLE slopebook.members ENABLE ROW LEVEL SECURITY;
ALTER TABLE slopebook.squads ENABLE ROW LEVEL SECURITY;
ALTER TABLE slopebook.atoms ENABLE ROW LEVEL SECURITY;
ALTER TABLE slopebook.moved ENABLE ROW LEVEL SECURITY;
CREATE POLICY own ON slopebook.members FOR SELECT USING (role = current_user);
CREATE POLICY own ON slopebook.squads FOR SELECT
    USING (id = ANY (ARRAY(SELECT m.squad FROM slopebook.members AS m WHERE m.role = current_user)));
CREATE POLICY own ON slopebook.moved FOR SELECT
    USING (squad = ANY (ARRAY(SELECT m.squad FROM slopebook.members AS m WHERE m.role = current_user)));
CREATE POLICY see ON slopebook.atoms FOR SELECT
    USING (squad = ANY (ARRAY(SELECT m.squad FROM slopebook.members AS m WHERE m.role = current_user)));
CREATE POLICY bring ON slopebook.atoms FOR INSERT
    WITH CHECK (squad = ANY (ARRAY(SELECT m.squad FROM slopebook.members AS m
        WHERE m.role = current_user AND m.may = 'write')));
CREATE POLICY alter_own ON slopebook.atoms FOR UPDATE
    USING (squad = ANY (ARRAY(SELECT m.squad FROM slopebook.members AS m
        WHERE m.role = current_user AND m.may = 'write')))
    WITH CHECK (squad = ANY (ARRAY(SELECT m.squad FROM slopebook.members AS m
        WHERE m.role = current_user AND m.may = 'write')));

-- For analysts: names, days and kilograms. Each shows what its reader may see (security_invoker).

-- Every rep that was written down; counts: whether it is part of its set's point.
CREATE VIEW slopebook.reps WITH (security_invoker = true) AS
SELECT q.name AS squad, a.content ->> 'name' AS athlete, slopebook.day(s.content ->> 'day') AS day,
    (s.content ->> 'ordinal')::int AS session, l.content ->> 'name' AS lift, (t.content ->> 'ordinal')::int AS set,
    (t.content ->> 'load_g')::float8 / 1000 AS load_kg, r.ordinal::int AS rep, r.velocity::float8 AS velocity,
    coalesce(t.content ->> 'excluded', '') AS set_excluded,
    coalesce(t.content -> 'reps_excluded' ->> r.ordinal::text, '') AS excluded,
    coalesce(t.content ->> 'excluded', '') = '' AND coalesce(t.content -> 'reps_excluded' ->> r.ordinal::text, '') = ''
        AND coalesce(t.content ->> 'outcome', 'lifted') = 'lifted' AS counts,
    a.id AS athlete_id, s.id AS session_id, l.id AS lift_id, t.id AS set_id
FROM slopebook.atoms AS t
    JOIN slopebook.atoms AS s ON s.id = t.parent
    JOIN slopebook.atoms AS a ON a.id = s.parent
    JOIN slopebook.atoms AS l ON l.id = t.about
    JOIN slopebook.squads AS q ON q.id = t.squad
    CROSS JOIN LATERAL jsonb_array_elements(t.content -> 'velocities') WITH ORDINALITY AS r (velocity, ordinal)
WHERE t.kind = 'set' AND t.alive;

-- Every set that counts: the velocity of its fastest counting rep, or their mean, as the lift has it. The
-- load of a lift that moves the body is with the body mass; without one there is no point.
CREATE VIEW slopebook.points WITH (security_invoker = true) AS
SELECT q.name AS squad, a.content ->> 'name' AS athlete, slopebook.day(s.content ->> 'day') AS day,
    (s.content ->> 'ordinal')::int AS session, l.content ->> 'name' AS lift, (t.content ->> 'ordinal')::int AS set,
    ((t.content ->> 'load_g')::float8 + CASE WHEN (l.content ->> 'moves_body')::boolean
        THEN (s.content ->> 'body_mass_g')::float8 ELSE 0 END) / 1000 AS load_kg,
    p.velocity, coalesce((t.content ->> 'maximum')::boolean, false) AS maximum,
    a.id AS athlete_id, s.id AS session_id, l.id AS lift_id, t.id AS set_id
FROM slopebook.atoms AS t
    JOIN slopebook.atoms AS s ON s.id = t.parent
    JOIN slopebook.atoms AS a ON a.id = s.parent
    JOIN slopebook.atoms AS l ON l.id = t.about
    JOIN slopebook.squads AS q ON q.id = t.squad
    CROSS JOIN LATERAL (
        SELECT CASE WHEN l.content ->> 'rule' = 'mean' THEN avg(r.velocity::float8) ELSE max(r.velocity::float8) END AS velocity
        FROM jsonb_array_elements(t.content -> 'velocities') WITH ORDINALITY AS r (velocity, ordinal)
        WHERE coalesce(t.content -> 'reps_excluded' ->> r.ordinal::text, '') = '') AS p
WHERE t.kind = 'set' AND t.alive AND coalesce(t.content ->> 'excluded', '') = ''
    AND coalesce(t.content ->> 'outcome', 'lifted') = 'lifted' AND p.velocity IS NOT NULL
    AND (NOT coalesce((l.content ->> 'moves_body')::boolean, false) OR s.content ? 'body_mass_g');

-- The line of each lift of each session, v = v0 + slope load: ordinary least squares, every point alike,
-- as the program's own profile has it. residual_sd has n - 2 degrees of freedom; two points have none.
CREATE VIEW slopebook.lines WITH (security_invoker = true) AS
SELECT squad, athlete, day, session, lift, count(*)::int AS n, count(DISTINCT load_kg)::int AS loads,
    min(load_kg) AS lightest_kg, max(load_kg) AS heaviest_kg,
    regr_intercept(velocity, load_kg) AS v0, regr_slope(velocity, load_kg) AS slope, regr_r2(velocity, load_kg) AS r2,
    CASE WHEN count(*) > 2 THEN sqrt(greatest(regr_syy(velocity, load_kg)
        - regr_sxy(velocity, load_kg) * regr_slope(velocity, load_kg), 0) / (count(*) - 2)) END AS residual_sd,
    athlete_id, session_id, lift_id
FROM slopebook.points
GROUP BY squad, athlete, day, session, lift, athlete_id, session_id, lift_id
HAVING count(DISTINCT load_kg) > 1;

-- Every attempt of a test as it was read, and the test's formula that makes its value.
CREATE VIEW slopebook.attempts WITH (security_invoker = true) AS
SELECT q.name AS squad, a.content ->> 'name' AS athlete, slopebook.day(s.content ->> 'day') AS day,
    (s.content ->> 'ordinal')::int AS session, k.content ->> 'name' AS test, (t.content ->> 'ordinal')::int AS attempt,
    coalesce(t.content ->> 'side', 'both') AS side, (t.content ->> 'value')::float8 AS value,
    (t.content ->> 'contact')::float8 AS contact, k.content ->> 'unit' AS unit,
    coalesce(k.content ->> 'formula', 'value') AS formula, coalesce(t.content ->> 'excluded', '') AS excluded,
    a.id AS athlete_id, s.id AS session_id, k.id AS test_id, t.id AS attempt_id
FROM slopebook.atoms AS t
    JOIN slopebook.atoms AS s ON s.id = t.parent
    JOIN slopebook.atoms AS a ON a.id = s.parent
    JOIN slopebook.atoms AS k ON k.id = t.about
    JOIN slopebook.squads AS q ON q.id = t.squad
WHERE t.kind = 'attempt' AND t.alive;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA slopebook FROM PUBLIC;
GRANT USAGE ON SCHEMA slopebook TO slopebook_coach, slopebook_analyst;
GRANT SELECT ON ALL TABLES IN SCHEMA slopebook TO slopebook_coach, slopebook_analyst;
GRANT EXECUTE ON FUNCTION slopebook.day(text) TO slopebook_coach, slopebook_analyst;
GRANT EXECUTE ON FUNCTION slopebook.whole(jsonb, bigint, bigint), slopebook.sound(text, jsonb),
    slopebook.parent_kind(text), slopebook.hold(), slopebook.count_up(), slopebook.coming(jsonb),
    slopebook.push(int, bigint, uuid, jsonb), slopebook.move_athlete(uuid, uuid) TO slopebook_coach;
-- what the triggers set nobody says; an atom is never erased by a coach: it is removed, and says so
GRANT INSERT (id, squad, kind, parent, alive, trail, hashes, content),
    UPDATE (parent, alive, trail, hashes, content) ON slopebook.atoms TO slopebook_coach;
