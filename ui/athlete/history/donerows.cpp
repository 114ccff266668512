// SPDX-License-Identifier: GPL-3.0-or-later
// What an athlete did, read from the log, in the words of a table.
#include "core/answers/battery.h"
#include "core/log/heads.h"
#include "core/model/errors.h"
#include "core/questions/questions.h"
#include "ui/athlete/history/everything.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <algorithm>
#include <iterator>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

/// Names by key, read once.
struct Known {
    std::vector<Stored<LiftId, Lift>> lifts;
    std::vector<Stored<TestKindId, TestKind>> kinds;
    std::vector<Stored<DeviceId, Device>> devices;
    std::vector<Stored<BlockId, Block>> blocks;
    LoadUnit unit = LoadUnit::Kilograms;
};

template <class Id, class Value>
const Stored<Id, Value>* byKey(const std::vector<Stored<Id, Value>>& all, Id id) {
    const auto found = std::ranges::find(all, id, &Stored<Id, Value>::id);
    return found == all.end() ? nullptr : &*found;
}

QString conditionsIn(const Conditions& under, const Known& known) {
    QStringList all;
    if (under.device)
        if (const auto* device = byKey(known.devices, *under.device))
            all << text(device->value.name);
    for (const std::string* one : {&under.place, &under.surface, &under.footwear, &under.technique})
        if (!one->empty())
            all << text(*one);
    if (!under.notComparable.empty())
        all << EverythingModel::tr("not comparable: %1").arg(text(under.notComparable));
    return all.join(", "_L1);
}

/// Lightest and heaviest load, how many sets, and the lightest that was not lifted.
QString setsText(const std::vector<const Set*>& sets, const Known& known) {
    std::vector<double> lifted;
    std::optional<double> tried;
    for (const Set* set : sets) {
        const double load = kilograms(set->load);
        if (!set->excluded.empty()) // told with its reason, as a note
            continue;
        if (set->outcome == Outcome::Lifted)
            lifted.push_back(load);
        else
            tried = std::min(tried.value_or(load), load);
    }
    QStringList all;
    if (!lifted.empty()) {
        const auto [least, most] = std::ranges::minmax(lifted);
        const QString loads =
            least == most ? loadWithUnit(most, known.unit)
                          : EverythingModel::tr("%1 to %2")
                                .arg(loadNumber(least, known.unit), loadWithUnit(most, known.unit));
        all << (lifted.size() == 1
                    ? EverythingModel::tr("%1, 1 set").arg(loads)
                    : EverythingModel::tr("%1, %2 sets").arg(loads).arg(lifted.size()));
    }
    if (tried)
        all << EverythingModel::tr("%1 not lifted").arg(loadWithUnit(*tried, known.unit));
    return all.join("; "_L1);
}

QString resultText(const Stored<TestKindId, TestKind>& kind, const BatterySession& session) {
    QStringList all;
    for (const BodySide side : answers::sidesOf(kind.value))
        if (const auto value = answers::testValue(kind, session, side)) {
            const QString figure =
                number(value->value, kind.value.decimals) + u' ' + text(kind.value.unit);
            all << (side == BodySide::Left    ? EverythingModel::tr("left %1").arg(figure)
                    : side == BodySide::Right ? EverythingModel::tr("right %1").arg(figure)
                                              : figure);
        }
    return all.join(", "_L1);
}

QString gapText(const Gap& gap, const Known& known) {
    QString what;
    if (gap.lift)
        if (const auto* lift = byKey(known.lifts, *gap.lift))
            what = text(lift->value.name);
    if (gap.kind)
        if (const auto* kind = byKey(known.kinds, *gap.kind))
            what = testText(kind->value.name);
    if (gap.load)
        what += u", "_s + massWithUnit(*gap.load, known.unit);
    if (gap.side != BodySide::Both)
        what += gap.side == BodySide::Left ? EverythingModel::tr(", left")
                                           : EverythingModel::tr(", right");
    return what;
}

void addNote(QStringList& notes, const std::string& note) {
    if (const QString words = text(note); !words.isEmpty() && !notes.contains(words))
        notes << words;
}

void addLifts(std::vector<DoneRow>& rows, const DoneRow& common, const log::SessionRecord& record,
              const Known& known) {
    std::vector<LiftId> order;
    for (const log::PlacedSet& placed : record.sets)
        if (std::ranges::find(order, placed.lift) == order.end())
            order.push_back(placed.lift);
    for (const LiftId lift : order) {
        DoneRow row = common;
        row.lift = lift;
        if (const auto* named = byKey(known.lifts, lift))
            row.what = text(named->value.name);
        std::vector<const Set*> sets;
        QStringList notes;
        addNote(notes, record.head.value.note);
        for (const log::PlacedSet& placed : record.sets)
            if (placed.lift == lift) {
                sets.push_back(&placed.set);
                addNote(notes, placed.set.note);
                addNote(notes, placed.set.reason);
                addNote(notes, placed.set.excluded);
            }
        row.result = setsText(sets, known);
        for (const LiftConditions& under : record.conditions)
            if (under.lift == lift)
                row.conditions = conditionsIn(under.conditions, known);
        row.note = notes.join("; "_L1);
        rows.push_back(std::move(row));
    }
}

void addTests(std::vector<DoneRow>& rows, const DoneRow& common, const log::SessionRecord& record,
              const Known& known) {
    const SessionHead& head = record.head.value;
    const BatterySession session{.session = record.head.id,
                                 .athlete = head.athlete,
                                 .date = head.date,
                                 .ordinal = head.ordinal,
                                 .bodyMass = head.bodyMass,
                                 .repeatOf = head.repeatOf,
                                 .battery = record.battery};
    for (const TestAttempts& test : record.battery.tests) {
        const auto* kind = byKey(known.kinds, test.kind);
        if (!kind || test.attempts.empty())
            continue;
        DoneRow row = common;
        row.what = testText(kind->value.name);
        row.result = resultText(*kind, session);
        row.conditions = conditionsIn(test.conditions, known);
        QStringList notes;
        addNote(notes, head.note);
        for (const Attempt& attempt : test.attempts) {
            addNote(notes, attempt.note);
            addNote(notes, attempt.excluded);
        }
        row.note = notes.join("; "_L1);
        rows.push_back(std::move(row));
    }
    for (const Gap& gap : record.battery.gaps) {
        DoneRow row = common;
        row.lift = gap.lift;
        row.what = gapText(gap, known);
        row.result = EverythingModel::tr("not possible");
        row.note = text(gap.reason);
        rows.push_back(std::move(row));
    }
}

} // namespace

std::vector<DoneRow> doneBy(const log::Log& log, AthleteId athlete, LoadUnit unit) {
    const Known known{log.lifts(), log.testKinds(), log.devices(), log.blocks(), unit};
    auto heads = log::headsAsTheyStand(log, athlete); // each is looked at below
    std::ranges::stable_sort(heads, [](const auto& a, const auto& b) {
        return std::pair(a.value.date, a.value.ordinal) > std::pair(b.value.date, b.value.ordinal);
    });
    std::vector<DoneRow> rows;
    for (const auto& head : heads) {
        DoneRow common{.session = head.id,
                       .date = head.value.date,
                       .ordinal = head.value.ordinal,
                       .day = sessionText(head.value.date, head.value.ordinal)};
        if (const auto block = questions::blockOn(known.blocks, head.value.date))
            common.block = text(block->name);
        const std::size_t before = rows.size();
        try {
            const log::SessionRecord record = log.session(head.id);
            addLifts(rows, common, record, known);
            addTests(rows, common, record, known);
        } catch (const LogError& error) { // damage hides its own session, and none beside it
            rows.resize(before, common);
            DoneRow damaged = common;
            damaged.note = said(error);
            rows.push_back(std::move(damaged));
        }
        if (rows.size() == before && !head.value.note.empty()) { // a note alone is something, too
            common.note = text(head.value.note);
            rows.push_back(std::move(common));
        }
    }
    return rows;
}

} // namespace slopebook::ui
