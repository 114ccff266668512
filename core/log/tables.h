// SPDX-License-Identifier: GPL-3.0-or-later
// How athletes, lifts, devices and blocks stand in their tables.
#pragma once

#include "core/log/query.h"
#include "core/model/ids.h"
#include "core/model/lift.h"
#include "core/model/people.h"
#include "core/model/phrases/log.h"
#include "core/model/words.h"

namespace slopebook::log {

/// What is said of one of a table.
struct Says {
    Phrase gone, goneUnchanged, there, freeName;
    Phrase damaged;  ///< of its name
    Phrase numbered; ///< of its number, where its name is not known
};

/// What differs between the four: their SQL (values first, then checksum, then id) and columns
/// (id and checksum, then the values; `exists`: the name and what the row weighs in its tally).
template <class Id>
struct Table;

template <>
struct Table<AthleteId> {
    using Value = Athlete;
    static constexpr const char* one = "athlete";
    static constexpr Says says{.gone = "That athlete is not in the log any more.",
                               .goneUnchanged =
                                   "That athlete is not in the log any more. Nothing was changed.",
                               .there = "That athlete is in the log already. Nothing was changed.",
                               .freeName = "a name that no other athlete has",
                               .damaged = "the entry of the athlete '%1' is not as it was written",
                               .numbered = "athlete %1"};
    static constexpr const char* select = "SELECT id, checksum, name, note FROM athletes "
                                          "ORDER BY name COLLATE NOCASE, name";
    static constexpr const char* selectOne =
        "SELECT id, checksum, name, note FROM athletes WHERE id = ?";
    static constexpr const char* exists =
        "SELECT name, checksum, loads_checksum FROM athletes WHERE id = ?";
    static constexpr const char* taken = "SELECT 1 FROM athletes WHERE id <> ?1 AND name = ?2";
    static constexpr const char* insert =
        "INSERT INTO athletes (name, note, checksum, id, loads_checksum) VALUES (?, ?, ?, ?, 0)";
    static constexpr const char* update =
        "UPDATE athletes SET name = ?, note = ?, checksum = ? WHERE id = ?";
    static constexpr const char* erase = "DELETE FROM athletes WHERE id = ?";
    static Value read(const Query& row) { return {.name = row.text(2), .note = row.text(3)}; }
    static int bind(Query& query, const Value& value) {
        query.bind(1, value.name);
        query.bind(2, value.note);
        return 2;
    }
};

template <>
struct Table<DeviceId> {
    using Value = Device;
    static constexpr const char* one = "device";
    static constexpr Says says{.gone = "That device is not in the log any more.",
                               .goneUnchanged =
                                   "That device is not in the log any more. Nothing was changed.",
                               .there = "That device is in the log already. Nothing was changed.",
                               .freeName = "a name that no other device has",
                               .damaged = "the entry of the device '%1' is not as it was written",
                               .numbered = "device %1"};
    static constexpr const char* select = "SELECT id, checksum, name, note FROM devices "
                                          "ORDER BY name COLLATE NOCASE, name";
    static constexpr const char* exists = "SELECT name, checksum FROM devices WHERE id = ?";
    static constexpr const char* taken = "SELECT 1 FROM devices WHERE id <> ?1 AND name = ?2";
    static constexpr const char* insert =
        "INSERT INTO devices (name, note, checksum, id) VALUES (?, ?, ?, ?)";
    static constexpr const char* update =
        "UPDATE devices SET name = ?, note = ?, checksum = ? WHERE id = ?";
    static constexpr const char* erase = "DELETE FROM devices WHERE id = ?";
    static Value read(const Query& row) { return {.name = row.text(2), .note = row.text(3)}; }
    static int bind(Query& query, const Value& value) {
        query.bind(1, value.name);
        query.bind(2, value.note);
        return 2;
    }
};

template <>
struct Table<BlockId> {
    using Value = Block;
    static constexpr const char* one = "block";
    static constexpr Says says{.gone = "That block is not in the log any more.",
                               .goneUnchanged =
                                   "That block is not in the log any more. Nothing was changed.",
                               .there = "That block is in the log already. Nothing was changed.",
                               .freeName = "a name and first day that no other block has",
                               .damaged = "the entry of the block '%1' is not as it was written",
                               .numbered = "block %1"};
    static constexpr const char* select =
        "SELECT id, checksum, name, first_day, last_day, ceiling_g, note FROM blocks "
        "ORDER BY first_day, last_day, name COLLATE NOCASE, name";
    static constexpr const char* exists = "SELECT name, checksum FROM blocks WHERE id = ?";
    static constexpr const char* taken =
        "SELECT 1 FROM blocks WHERE id <> ?1 AND name = ?2 AND first_day = ?3";
    static constexpr const char* insert =
        "INSERT INTO blocks (name, first_day, last_day, ceiling_g, note, checksum, id) "
        "VALUES (?, ?, ?, ?, ?, ?, ?)";
    static constexpr const char* update =
        "UPDATE blocks SET name = ?, first_day = ?, last_day = ?, ceiling_g = ?, note = ?, "
        "checksum = ? WHERE id = ?";
    static constexpr const char* erase = "DELETE FROM blocks WHERE id = ?";
    static Value read(const Query& row) {
        return {.name = row.text(2),
                .first = row.date(3),
                .last = row.date(4),
                .ceiling = row.optionalMass(5),
                .note = row.text(6)};
    }
    static int bind(Query& query, const Value& value) {
        query.bind(1, value.name);
        query.bind(2, value.first);
        query.bind(3, value.last);
        query.bind(4, value.ceiling);
        query.bind(5, value.note);
        return 5;
    }
};

inline std::optional<Mvt> readMvt(const Query& row) {
    if (row.null(6))
        return std::nullopt;
    return Mvt{.value = row.real(6),
               .sd = row.optionalReal(7),
               .origin = row.text(8) == "published" ? Mvt::Origin::Published : Mvt::Origin::Coach,
               .source = row.text(9)};
}

template <>
struct Table<LiftId> {
    using Value = Lift;
    static constexpr const char* one = "lift";
    static constexpr Says says{.gone = "That lift is not in the log any more.",
                               .goneUnchanged =
                                   "That lift is not in the log any more. Nothing was changed.",
                               .there = "That lift is in the log already. Nothing was changed.",
                               .freeName = "a name that no other lift has",
                               .damaged = "the entry of the lift '%1' is not as it was written",
                               .numbered = "lift %1"};
    static constexpr const char* select =
        "SELECT id, checksum, name, kind, rule, ballistic, mvt, mvt_sd, mvt_origin, mvt_source, "
        "smallest_velocity, smallest_one_rm, note FROM lifts ORDER BY name COLLATE NOCASE, name";
    static constexpr const char* selectOne =
        "SELECT id, checksum, name, kind, rule, ballistic, mvt, mvt_sd, mvt_origin, mvt_source, "
        "smallest_velocity, smallest_one_rm, note FROM lifts WHERE id = ?";
    static constexpr const char* exists = "SELECT name, checksum FROM lifts WHERE id = ?";
    static constexpr const char* taken = "SELECT 1 FROM lifts WHERE id <> ?1 AND name = ?2";
    static constexpr const char* insert =
        "INSERT INTO lifts (name, kind, rule, ballistic, mvt, mvt_sd, mvt_origin, mvt_source, "
        "smallest_velocity, smallest_one_rm, note, checksum, id) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    static constexpr const char* update =
        "UPDATE lifts SET name = ?, kind = ?, rule = ?, ballistic = ?, mvt = ?, mvt_sd = ?, "
        "mvt_origin = ?, mvt_source = ?, smallest_velocity = ?, smallest_one_rm = ?, note = ?, "
        "checksum = ? WHERE id = ?";
    static constexpr const char* erase = "DELETE FROM lifts WHERE id = ?";
    // Words that are none become a default here and fail the checksum right after.
    static Value read(const Query& row) {
        return {.name = row.text(2),
                .kind = velocityKindFromWord(row.text(3)).value_or(VelocityKind::Mean),
                .rule = pointRuleFromWord(row.text(4)).value_or(PointRule::Fastest),
                .ballistic = row.flag(5),
                .mvt = readMvt(row),
                .smallestVelocity = row.optionalReal(10),
                .smallestOneRm = row.optionalReal(11),
                .note = row.text(12)};
    }
    static int bind(Query& query, const Value& value) {
        query.bind(1, value.name);
        query.bind(2, std::string(word(value.kind)));
        query.bind(3, std::string(word(value.rule)));
        query.bind(4, value.ballistic);
        if (value.mvt) {
            query.bind(5, value.mvt->value);
            query.bind(6, value.mvt->sd);
            query.bind(7, std::string(value.mvt->origin == Mvt::Origin::Published ? "published"
                                                                                  : "coach"));
            query.bind(8, value.mvt->source);
        }
        query.bind(9, value.smallestVelocity);
        query.bind(10, value.smallestOneRm);
        query.bind(11, value.note);
        return 11;
    }
};

/// What is wrong with a row whose checksum does not hold.
template <class Id>
Words notAsWritten(const typename Table<Id>::Value& value) {
    return say(Table<Id>::says.damaged, value.name);
}

} // namespace slopebook::log
