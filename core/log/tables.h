// SPDX-License-Identifier: GPL-3.0-or-later
// How athletes, lifts, devices and blocks stand in their tables, and conditions in theirs.
#pragma once

#include "core/log/columns.h"
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

/// The columns of conditions, wherever they stand.
template <class Row, class Visitor>
void conditionColumns(Row& conditions, Visitor& visit) {
    visit("device", conditions.device);
    visit("place", conditions.place);
    visit("surface", conditions.surface);
    visit("footwear", conditions.footwear);
    visit("technique", conditions.technique);
    visit("not_comparable", conditions.notComparable);
}

/// What most of them share: a name of its own, by which they are listed.
struct NamedTable {
    static constexpr const char* order = "name COLLATE NOCASE, name";
    static constexpr const char* ownToEach = "name = ?2"; ///< what no other row may share
    static constexpr std::string_view alsoWeighs = {};    ///< beside its checksum, in its tally
    static constexpr bool hasParts = false; ///< rows of other tables that its value holds
};

// What differs: what is said of them, and their columns.

template <>
struct Table<AthleteId> : NamedTable {
    using Value = Athlete;
    static constexpr const char* one = "athlete";
    static constexpr Says says{.gone = "That athlete is not in the log any more.",
                               .goneUnchanged =
                                   "That athlete is not in the log any more. Nothing was changed.",
                               .there = "That athlete is in the log already. Nothing was changed.",
                               .freeName = "a name that no other athlete has",
                               .damaged = "the entry of the athlete '%1' is not as it was written",
                               .numbered = "athlete %1"};
    static constexpr const char* table = "athletes";
    static constexpr std::string_view alsoWeighs = "loads_checksum"; // written later
    static constexpr char checksummedAs = 'A';
    template <class Row, class Visitor>
    static void columns(Row& athlete, Visitor& visit) {
        visit("name", athlete.name);
        visit("note", athlete.note);
    }
};

template <>
struct Table<DeviceId> : NamedTable {
    using Value = Device;
    static constexpr const char* one = "device";
    static constexpr Says says{.gone = "That device is not in the log any more.",
                               .goneUnchanged =
                                   "That device is not in the log any more. Nothing was changed.",
                               .there = "That device is in the log already. Nothing was changed.",
                               .freeName = "a name that no other device has",
                               .damaged = "the entry of the device '%1' is not as it was written",
                               .numbered = "device %1"};
    static constexpr const char* table = "devices";
    static constexpr char checksummedAs = 'D';
    template <class Row, class Visitor>
    static void columns(Row& device, Visitor& visit) {
        visit("name", device.name);
        visit("note", device.note);
    }
};

template <>
struct Table<BlockId> : NamedTable {
    using Value = Block;
    static constexpr const char* one = "block";
    static constexpr Says says{.gone = "That block is not in the log any more.",
                               .goneUnchanged =
                                   "That block is not in the log any more. Nothing was changed.",
                               .there = "That block is in the log already. Nothing was changed.",
                               .freeName = "a name and first day that no other block has",
                               .damaged = "the entry of the block '%1' is not as it was written",
                               .numbered = "block %1"};
    static constexpr const char* table = "blocks";
    static constexpr const char* order = "first_day, last_day, name COLLATE NOCASE, name";
    static constexpr const char* ownToEach = "name = ?2 AND first_day = ?3";
    static constexpr char checksummedAs = 'B';
    template <class Row, class Visitor>
    static void columns(Row& block, Visitor& visit) {
        visit("name", block.name);
        visit("first_day", block.first);
        visit("last_day", block.last);
        visit("ceiling_g", block.ceiling);
        visit("note", block.note);
        visit.later("trained", block.trained);
        visit.laterGroup("a_week", block.aWeek, [](auto& aWeek, auto& column) {
            column("fewest_a_week", aWeek.fewest);
            column("most_a_week", aWeek.most);
        });
    }
};

template <>
struct Table<LiftId> : NamedTable {
    using Value = Lift;
    static constexpr const char* one = "lift";
    static constexpr Says says{.gone = "That lift is not in the log any more.",
                               .goneUnchanged =
                                   "That lift is not in the log any more. Nothing was changed.",
                               .there = "That lift is in the log already. Nothing was changed.",
                               .freeName = "a name that no other lift has",
                               .damaged = "the entry of the lift '%1' is not as it was written",
                               .numbered = "lift %1"};
    static constexpr const char* table = "lifts";
    static constexpr char checksummedAs = 'L';
    template <class Row, class Visitor>
    static void columns(Row& lift, Visitor& visit) {
        visit("name", lift.name);
        visit("kind", lift.kind);
        visit("rule", lift.rule);
        visit("ballistic", lift.ballistic);
        visit.later("moves_body", lift.movesBody);
        visit.group(lift.mvt, [](auto& mvt, auto& column) {
            column("mvt", mvt.value);
            column("mvt_sd", mvt.sd);
            column("mvt_origin", mvt.origin);
            column("mvt_source", mvt.source);
        });
        visit("smallest_velocity", lift.smallestVelocity);
        visit("smallest_one_rm", lift.smallestOneRm);
        visit("note", lift.note);
    }
};

/// What is wrong with a row whose checksum does not hold.
template <class Id>
Words notAsWritten(const typename Table<Id>::Value& value) {
    return say(Table<Id>::says.damaged, value.name);
}

} // namespace slopebook::log
