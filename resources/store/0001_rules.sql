-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is ours to say of whatever is written, by whomever; a push; an athlete who moves.
-- Functions name what they use in full and look up nothing else: neither a caller's temporary table
-- nor an operator of his own stands in for ours.

-- Who holds everybody else up and goes away is ended by the server: for the rest of this transaction
-- alone, and nobody else's.
CREATE FUNCTION slopebook.end_if_idle() RETURNS void LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    IF current_setting('idle_in_transaction_session_timeout') = '0' THEN
        PERFORM set_config('idle_in_transaction_session_timeout', '30s', true);
    END IF;
END $$;

-- Waits until nobody else writes; held to the end of the transaction.
CREATE FUNCTION slopebook.hold() RETURNS void LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    PERFORM slopebook.end_if_idle();
    PERFORM FROM slopebook.store FOR UPDATE;
END $$;

-- The first writing of a transaction makes a new n. For stamp() alone: no login may call it, not even
-- from a trigger on a table of its own.
CREATE FUNCTION slopebook.count_up() RETURNS bigint LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
DECLARE now bigint;
BEGIN
    PERFORM slopebook.end_if_idle();
    IF current_setting('transaction_isolation') <> 'read committed' THEN
        RAISE EXCEPTION USING ERRCODE = 'SB003', MESSAGE = 'the store is written under READ COMMITTED alone';
    END IF;
    UPDATE slopebook.store AS s SET n = s.n + 1, writer = pg_current_xact_id(), began = transaction_timestamp() RETURNING s.n INTO now;
    INSERT INTO slopebook.ticks (n) VALUES (now);
    RETURN now;
END $$;

-- What is ours to say of a row, whoever writes it. As the owner: it alone counts.
CREATE FUNCTION slopebook.stamp() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
    SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    lift text;
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
        sound := jsonb_typeof(NEW.content) = 'object' AND NEW.content ? 'lift'
            AND NEW.content - '{lift,ordinal,load_g,maximum,outcome,reason,rpe,excluded,note,velocities}'::text[] = '{}'
            AND slopebook.whole(NEW.content -> 'ordinal', 1, 1000000)
            AND (NOT NEW.content ? 'load_g' OR slopebook.whole(NEW.content -> 'load_g', 0, 2000000))
            AND NOT jsonb_path_exists(NEW.content, '$ ? (@.lift.type() != "string" || @.velocities.type() != "array"
                || exists(@.velocities[*].type() ? (@ != "number" && @ != "object"))
                || exists(@.velocities[*] ? (@.type() == "number" && (@ < 1e-300 || @ >= 10)))
                || exists(@.velocities[*] ? (@.type() == "object" && (!(@.velocity.type() == "number")
                    || !(@.velocity >= 1e-300 && @.velocity < 10) || @.excluded.type() != "string"
                    || exists(@.keyvalue() ? (@.key != "velocity" && @.key != "excluded"))))))')
            AND NOT jsonb_path_exists(NEW.content, '$ ? (@.maximum.type() != "boolean" || @.outcome.type() != "string"
                || @.reason.type() != "string" || @.excluded.type() != "string" || @.note.type() != "string"
                || @.rpe.type() != "number" || @.rpe < 0 || @.rpe > 100)')
            AND slopebook.short(NEW.content);
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
        SELECT array_agg(c.id) FILTER (WHERE s.id IS NOT NULL AND NOT s.trail[cardinality(s.trail)] = ANY (c.trail)
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
        OR NOT (pg_has_role(session_user, 'pg_database_owner', 'member')
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
