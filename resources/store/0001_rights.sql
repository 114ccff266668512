-- SPDX-License-Identifier: GPL-3.0-or-later
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

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA slopebook FROM PUBLIC;
GRANT USAGE ON SCHEMA slopebook TO slopebook_coach, slopebook_analyst;
GRANT SELECT ON ALL TABLES IN SCHEMA slopebook TO slopebook_coach, slopebook_analyst;
GRANT EXECUTE ON FUNCTION slopebook.day(text), slopebook.velocity(jsonb) TO slopebook_coach, slopebook_analyst;
GRANT EXECUTE ON FUNCTION slopebook.whole(jsonb, bigint, bigint), slopebook.sound(text, jsonb),
    slopebook.parent_kind(text), slopebook.hold(), slopebook.count_up(), slopebook.coming(jsonb),
    slopebook.push(int, bigint, uuid, jsonb), slopebook.move_athlete(uuid, uuid) TO slopebook_coach;
-- what the triggers set nobody says; an atom is never erased by a coach: it is removed, and says so
GRANT INSERT (id, squad, kind, parent, alive, trail, hashes, content),
    UPDATE (parent, alive, trail, hashes, content) ON slopebook.atoms TO slopebook_coach;
