-- SPDX-License-Identifier: GPL-3.0-or-later
-- For analysts: names, days and kilograms. Each shows what its reader may see (security_invoker). No
-- content makes them fail: nothing is cast but by contents.sql's own functions.

-- Every rep that was written down; counts: whether it is part of its set's point.
CREATE VIEW slopebook.reps WITH (security_invoker = true) AS
SELECT q.name AS squad, a.content ->> 'name' AS athlete, slopebook.day(s.content ->> 'day') AS day,
    slopebook.counted(s.content -> 'ordinal') AS session, l.content ->> 'name' AS lift, slopebook.counted(t.content -> 'ordinal') AS set,
    coalesce(slopebook.number(t.content -> 'load_g'), 0) / 1000 AS load_kg, r.ordinal::int AS rep,
    slopebook.velocity(r.rep) AS velocity,
    coalesce(t.content ->> 'excluded', '') AS set_excluded,
    coalesce(r.rep ->> 'excluded', '') AS excluded,
    coalesce(t.content ->> 'excluded', '') = '' AND coalesce(r.rep ->> 'excluded', '') = ''
        AND coalesce(t.content ->> 'outcome', 'lifted') = 'lifted' AS counts,
    a.id AS athlete_id, s.id AS session_id, l.id AS lift_id, t.id AS set_id
FROM slopebook.atoms AS t
    JOIN slopebook.atoms AS s ON s.id = t.parent
    JOIN slopebook.atoms AS a ON a.id = s.parent
    JOIN slopebook.atoms AS l ON l.id = t.about
    JOIN slopebook.squads AS q ON q.id = t.squad
    CROSS JOIN LATERAL jsonb_array_elements(slopebook.list(t.content -> 'velocities')) WITH ORDINALITY AS r (rep, ordinal)
WHERE t.kind = 'set' AND t.alive;

-- Every set that counts: the velocity of its fastest counting rep, or their mean, as the lift has it. The
-- load of a lift that moves the body is with the body mass; without one there is no point.
CREATE VIEW slopebook.points WITH (security_invoker = true) AS
SELECT q.name AS squad, a.content ->> 'name' AS athlete, slopebook.day(s.content ->> 'day') AS day,
    slopebook.counted(s.content -> 'ordinal') AS session, l.content ->> 'name' AS lift, slopebook.counted(t.content -> 'ordinal') AS set,
    (coalesce(slopebook.number(t.content -> 'load_g'), 0) + CASE WHEN l.content -> 'moves_body' = 'true'
        THEN slopebook.number(s.content -> 'body_mass_g') ELSE 0 END) / 1000 AS load_kg,
    p.velocity, coalesce(t.content -> 'maximum' = 'true', false) AS maximum,
    a.id AS athlete_id, s.id AS session_id, l.id AS lift_id, t.id AS set_id
FROM slopebook.atoms AS t
    JOIN slopebook.atoms AS s ON s.id = t.parent
    JOIN slopebook.atoms AS a ON a.id = s.parent
    JOIN slopebook.atoms AS l ON l.id = t.about
    JOIN slopebook.squads AS q ON q.id = t.squad
    CROSS JOIN LATERAL (
        SELECT CASE WHEN l.content ->> 'rule' = 'mean' THEN avg(slopebook.velocity(r.rep))
            ELSE max(slopebook.velocity(r.rep)) END AS velocity
        FROM jsonb_array_elements(slopebook.list(t.content -> 'velocities')) AS r (rep)
        WHERE coalesce(r.rep ->> 'excluded', '') = '') AS p
WHERE t.kind = 'set' AND t.alive AND coalesce(t.content ->> 'excluded', '') = ''
    AND coalesce(t.content ->> 'outcome', 'lifted') = 'lifted' AND p.velocity IS NOT NULL
    AND (NOT coalesce(l.content -> 'moves_body' = 'true', false) OR slopebook.number(s.content -> 'body_mass_g') IS NOT NULL);

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
    slopebook.counted(s.content -> 'ordinal') AS session, k.content ->> 'name' AS test, slopebook.counted(t.content -> 'ordinal') AS attempt,
    coalesce(t.content ->> 'side', 'both') AS side, slopebook.number(t.content -> 'value') AS value,
    slopebook.number(t.content -> 'contact') AS contact, k.content ->> 'unit' AS unit,
    coalesce(k.content ->> 'formula', 'value') AS formula, coalesce(t.content ->> 'excluded', '') AS excluded,
    a.id AS athlete_id, s.id AS session_id, k.id AS test_id, t.id AS attempt_id
FROM slopebook.atoms AS t
    JOIN slopebook.atoms AS s ON s.id = t.parent
    JOIN slopebook.atoms AS a ON a.id = s.parent
    JOIN slopebook.atoms AS k ON k.id = t.about
    JOIN slopebook.squads AS q ON q.id = t.squad
WHERE t.kind = 'attempt' AND t.alive;
