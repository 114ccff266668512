-- SPDX-License-Identifier: GPL-3.0-or-later
-- Who sees and writes what. Owners of tables are not asked: who owns the database manages the store.
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

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA slopebook FROM PUBLIC;

-- What a login may in this store at all, 'read', 'write' or NULL; in which squads is said by members.
-- The one list of rights: all that it had before is taken away first. A login that has rights here
-- cannot be dropped, the server says why.
CREATE FUNCTION slopebook.admit(login name, may text) RETURNS void LANGUAGE plpgsql
    SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    EXECUTE format('REVOKE ALL ON SCHEMA slopebook FROM %1$I;'
        'REVOKE ALL ON ALL TABLES IN SCHEMA slopebook FROM %1$I;'
        'REVOKE ALL ON ALL FUNCTIONS IN SCHEMA slopebook FROM %1$I', login);
    IF may IS NULL THEN
        RETURN;
    END IF;
    EXECUTE format('GRANT USAGE ON SCHEMA slopebook TO %1$I;'
        'GRANT SELECT ON ALL TABLES IN SCHEMA slopebook TO %1$I;'
        'GRANT EXECUTE ON FUNCTION slopebook.whole(jsonb, bigint, bigint), slopebook.counted(jsonb),'
        ' slopebook.number(jsonb), slopebook.list(jsonb), slopebook.day(text), slopebook.velocity(jsonb) TO %1$I', login);
    IF may = 'write' THEN
        -- what the triggers set nobody says; an atom is never erased by a coach: it is removed, and says so
        EXECUTE format('GRANT INSERT (id, squad, kind, parent, alive, trail, hashes, content),'
            ' UPDATE (parent, alive, trail, hashes, content) ON slopebook.atoms TO %1$I;'
            'GRANT EXECUTE ON FUNCTION slopebook.parent_kind(text), slopebook.hold(), slopebook.end_if_idle(),'
            ' slopebook.coming(jsonb), slopebook.push(int, bigint, uuid, jsonb),'
            ' slopebook.move_athlete(uuid, uuid) TO %1$I', login);
    END IF;
END $$;
REVOKE ALL ON FUNCTION slopebook.admit(name, text) FROM PUBLIC;
