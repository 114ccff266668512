-- SPDX-License-Identifier: GPL-3.0-or-later
-- A block's story, and two ways in for what is asked of everybody: the sessions of some days, and
-- the true maxima of a lift.

-- what was done in it, in the coach's words
ALTER TABLE blocks ADD COLUMN trained TEXT NOT NULL DEFAULT '';
-- sessions a week as planned, in halves; alike where one number was said
ALTER TABLE blocks ADD COLUMN fewest_a_week REAL
    CHECK (fewest_a_week >= 0.5 AND fewest_a_week <= 21
        AND fewest_a_week * 2 = round(fewest_a_week * 2));
ALTER TABLE blocks ADD COLUMN most_a_week REAL
    CHECK (most_a_week >= fewest_a_week AND most_a_week <= 21
        AND most_a_week * 2 = round(most_a_week * 2))
    CHECK ((most_a_week IS NULL) = (fewest_a_week IS NULL));

CREATE INDEX sessions_by_day ON sessions (day);
CREATE INDEX maxima_by_lift ON sets (lift, session) WHERE maximum = 1;
