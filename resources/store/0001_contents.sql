-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a content may say, and reading it without ever failing: a coach with a login can write by hand
-- what no log would, and a view that one content makes fail shows nobody anything any more.

CREATE FUNCTION slopebook.whole(number jsonb, lowest bigint, highest bigint) RETURNS boolean IMMUTABLE PARALLEL SAFE
    RETURN CASE WHEN jsonb_typeof(number) = 'number'
        THEN number::numeric BETWEEN lowest AND highest AND number::numeric = trunc(number::numeric) ELSE false END;

-- Nothing where it is no whole number, or none that an integer holds.
CREATE FUNCTION slopebook.counted(number jsonb) RETURNS int IMMUTABLE PARALLEL SAFE
    RETURN CASE WHEN slopebook.whole(number, -2000000000, 2000000000) THEN number::int END;

-- Nothing where it is no number, or none that a measurement is. What is nearer to nought than any
-- measurement is nought: a line through it would be a division by nothing.
CREATE FUNCTION slopebook.number(number jsonb) RETURNS float8 IMMUTABLE PARALLEL SAFE
    RETURN CASE WHEN jsonb_typeof(number) = 'number' THEN CASE
        WHEN number BETWEEN '1e-30' AND '1e9' OR number BETWEEN '-1e9' AND '-1e-30' THEN number::float8
        WHEN number BETWEEN '-1e-30' AND '1e-30' THEN 0 END END;

-- No parts where it is no list.
CREATE FUNCTION slopebook.list(parts jsonb) RETURNS jsonb IMMUTABLE PARALLEL SAFE
    RETURN CASE WHEN jsonb_typeof(parts) = 'array' THEN parts ELSE '[]' END;

-- Nothing where it is no day of the calendar. A log knows a year 0 (ISO 8601), which is 1 BC here.
CREATE FUNCTION slopebook.day(day text) RETURNS date IMMUTABLE STRICT PARALLEL SAFE
    RETURN CASE WHEN day ~ '^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$'
        AND substr(day, 9, 2)::int <= CASE substr(day, 6, 2)
            WHEN '02' THEN CASE WHEN substr(day, 1, 4)::int % 4 = 0
                AND (substr(day, 1, 4)::int % 100 <> 0 OR substr(day, 1, 4)::int % 400 = 0) THEN 29 ELSE 28 END
            WHEN '04' THEN 30 WHEN '06' THEN 30 WHEN '09' THEN 30 WHEN '11' THEN 30 ELSE 31 END
        THEN make_date(coalesce(nullif(substr(day, 1, 4)::int, 0), -1), substr(day, 6, 2)::int, substr(day, 9, 2)::int) END;

-- Of a rep: a number, or, where more is said of it, an object with one. (Not STRICT: it would not be
-- put in the place where it is asked for, and a view take three times as long.)
CREATE FUNCTION slopebook.velocity(rep jsonb) RETURNS float8 IMMUTABLE PARALLEL SAFE
    RETURN CASE jsonb_typeof(rep)
        WHEN 'number' THEN CASE WHEN rep BETWEEN '1e-30' AND '10' THEN rep::float8 END
        WHEN 'object' THEN slopebook.number(rep -> 'velocity') END;

-- What a kind's content may say (of a set: stamp()), and of which type it is: of a list one of what
-- stands in it. The columns of the log's own tables (core/log/contentcolumns.h).
CREATE FUNCTION slopebook.shape(kind text) RETURNS jsonb IMMUTABLE PARALLEL SAFE
    RETURN CASE
        WHEN kind IN ('athlete', 'device') THEN '{"name": "text", "note": "text"}'
        WHEN kind = 'lift' THEN '{"name": "text", "kind": "text", "rule": "text", "ballistic": "flag", "moves_body": "flag",
            "mvt": "number", "mvt_sd": "number", "mvt_origin": "text", "mvt_source": "text",
            "smallest_velocity": "number", "smallest_one_rm": "number", "note": "text"}'
        WHEN kind = 'block' THEN '{"name": "text", "first_day": "day", "last_day": "day", "ceiling_g": "whole",
            "note": "text", "trained": "text", "fewest_a_week": "whole", "most_a_week": "whole"}'
        WHEN kind = 'test' THEN '{"name": "text", "unit": "text", "higher_is_better": "flag", "two_sided": "flag",
            "both_too": "flag", "rule": "text", "best_of": "whole", "attempts": "whole", "formula": "text",
            "decimals": "whole", "noise": "number", "noise_percent": "flag", "noise_source": "text",
            "smallest": "number", "smallest_source": "text", "note": "text"}'
        WHEN kind = 'equipment' THEN '{"name": "text", "ceiling_10ng": "whole", "note": "text",
            "bars": ["whole", {"bar": "whole", "name": "text", "unit": "text"}],
            "plates": ["whole", {"plate": "whole", "pairs": "whole", "unit": "text"}],
            "fixed": ["whole", {"fixed": "whole", "use": "text", "name": "text", "unit": "text"}]}'
        WHEN kind = 'station' THEN '{"name": "text", "lift": "uuid", "tests": ["uuid"], "device": "uuid", "place": "text",
            "surface": "text", "footwear": "text", "technique": "text", "not_comparable": "text",
            "ladder_g": ["whole"], "sets": "whole", "rotates": "flag", "note": "text"}'
        WHEN kind = 'session' THEN '{"day": "day", "ordinal": "whole", "body_mass_g": "whole", "repeat_of": "uuid",
            "note": "text", "into": "uuid"}'
        WHEN kind IN ('lift conditions', 'test conditions') THEN '{"lift": "uuid", "test": "uuid", "device": "uuid",
            "place": "text", "surface": "text", "footwear": "text", "technique": "text", "not_comparable": "text"}'
        WHEN kind = 'attempt' THEN '{"test": "uuid", "ordinal": "whole", "side": "text", "value": "number",
            "contact": "number", "note": "text", "excluded": "text"}'
        WHEN kind = 'gap' THEN '{"ordinal": "whole", "test": "uuid", "lift": "uuid", "load_g": "whole", "side": "text",
            "reason": "text"}'
        WHEN kind = 'check load' THEN '{"lift": "uuid", "load_g": "whole"}'
        WHEN kind = 'roster' THEN '{"day": "day", "ordinal": "whole", "athlete": "uuid"}'
        WHEN kind = 'conflict' THEN '{"about": "uuid", "revision": "uuid", "why": "text", "lived": "flag", "content": "text"}'
        END::jsonb;

CREATE FUNCTION slopebook.fits(shape jsonb, said jsonb) RETURNS boolean LANGUAGE plpgsql IMMUTABLE PARALLEL SAFE
    SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    IF jsonb_typeof(shape) = 'object' THEN
        RETURN jsonb_typeof(said) = 'object' AND NOT EXISTS (SELECT FROM jsonb_each(
            CASE WHEN jsonb_typeof(said) = 'object' THEN said ELSE '{}' END) AS e
            WHERE slopebook.fits(shape -> e.key, e.value) IS NOT TRUE);
    ELSIF jsonb_typeof(shape) = 'array' THEN
        RETURN jsonb_typeof(said) = 'array' AND NOT EXISTS (SELECT FROM jsonb_array_elements(slopebook.list(said)) AS e (part)
            WHERE NOT EXISTS (SELECT FROM jsonb_array_elements(shape) AS s (one) WHERE slopebook.fits(s.one, e.part)));
    END IF;
    CASE shape #>> '{}'
        WHEN 'text' THEN RETURN jsonb_typeof(said) = 'string';
        WHEN 'flag' THEN RETURN jsonb_typeof(said) = 'boolean';
        WHEN 'whole' THEN RETURN slopebook.whole(said, -1000000000000000, 1000000000000000);
        WHEN 'number' THEN RETURN jsonb_typeof(said) = 'number'
            AND (said = '0' OR abs(said::numeric) BETWEEN 1e-300 AND 1e15);
        WHEN 'uuid' THEN RETURN jsonb_typeof(said) = 'string'
            AND said #>> '{}' ~ '^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$';
        WHEN 'day' THEN RETURN jsonb_typeof(said) = 'string' AND slopebook.day(said #>> '{}') IS NOT NULL;
        ELSE RETURN false;
    END CASE;
END $$;

-- At most a million bytes; where it is kept shortened, of what it is when it is read.
CREATE FUNCTION slopebook.short(content jsonb) RETURNS boolean IMMUTABLE PARALLEL SAFE
    RETURN pg_column_size(content) <= 3000 OR octet_length(content::text) <= 1000000;

-- Whether a content of that kind can be (of a set: stamp()): the types, and the ranges that every log
-- keeps to. A desk looks further.
CREATE FUNCTION slopebook.sound(kind text, content jsonb) RETURNS boolean IMMUTABLE PARALLEL SAFE
    RETURN coalesce(slopebook.short(content) AND slopebook.fits(slopebook.shape(kind), content) AND CASE
        WHEN kind IN ('athlete', 'lift', 'device', 'test', 'equipment', 'station') THEN btrim(content ->> 'name') <> ''
        WHEN kind = 'block'
            THEN btrim(content ->> 'name') <> ''
                AND slopebook.day(content ->> 'first_day') <= slopebook.day(content ->> 'last_day')
        WHEN kind = 'session'
            THEN content ? 'day' AND slopebook.whole(content -> 'ordinal', 1, 1000000)
                AND (NOT content ? 'body_mass_g' OR slopebook.whole(content -> 'body_mass_g', 1, 2000000))
        WHEN kind = 'attempt'
            THEN content ? 'test' AND slopebook.whole(content -> 'ordinal', 1, 1000000)
                AND (content -> 'value')::numeric > 0 AND (content -> 'value')::numeric < 1000000
        WHEN kind = 'gap'
            THEN (content ? 'lift') <> (content ? 'test') AND slopebook.whole(content -> 'ordinal', 1, 1000000)
        WHEN kind = 'lift conditions' THEN content ? 'lift' AND NOT content ? 'test'
        WHEN kind = 'test conditions' THEN content ? 'test' AND NOT content ? 'lift'
        WHEN kind = 'check load'
            THEN content ? 'lift' AND slopebook.whole(content -> 'load_g', 0, 2000000)
        WHEN kind = 'roster' THEN content ? 'athlete' AND content ? 'day'
        WHEN kind = 'conflict' THEN content ? 'about'
        ELSE false END, false);
