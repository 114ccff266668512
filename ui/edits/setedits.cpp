// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/setedits.h"

#include "ui/words/format.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {
void putBack(log::Log& log, const log::PlacedSet& set) {
    log.add(set.session, set.lift, set.set, set.ordinal, set.id);
}

void takeOut(log::Log& log, const log::PlacedSet& set) {
    if (log.set(set.id) != set)
        refuseChangedElsewhere();
    log.remove(set.id);
}

QString listedLoads(const std::vector<log::PlacedSet>& sets, LoadUnit unit) {
    constexpr std::size_t most = 3;
    QStringList loads;
    for (const log::PlacedSet& set : sets) {
        if (static_cast<std::size_t>(loads.size()) == most) {
            loads << QStringLiteral("\u2026");
            break;
        }
        loads << massWithUnit(set.set.load, unit);
    }
    return loads.join(QStringLiteral(", "));
}

QString changeText(const Set& before, const Set& after) {
    if (before.excluded.empty() != after.excluded.empty())
        return after.excluded.empty() ? QCoreApplication::translate("Edit", "include set")
                                      : QCoreApplication::translate("Edit", "exclude set");
    return QCoreApplication::translate("Edit", "change set");
}
} // namespace

AddSetsEdit::AddSetsEdit(EditHost& host, std::vector<log::PlacedSet> added,
                         std::optional<Conditions> under)
    : Edit(host, added.size() == 1 ? QCoreApplication::translate("Edit", "add set")
                                   : QCoreApplication::translate("Edit", "add sets")),
      m_sets(std::move(added)), m_under(std::move(under)) {}

QString AddSetsEdit::object(LoadUnit unit) const {
    return listedLoads(m_sets, unit);
}

void AddSetsEdit::apply() {
    log().together([this] {
        if (m_under)
            log().setConditions(m_sets.front().session, m_sets.front().lift, *m_under);
        for (const log::PlacedSet& set : m_sets)
            putBack(log(), set);
    });
}

void AddSetsEdit::takeBack() {
    log().together([this] {
        for (const log::PlacedSet& set : m_sets)
            takeOut(log(), set);
        // Where no other set has come under them, or they were changed, since.
        const SessionId session = m_sets.front().session;
        const LiftId lift = m_sets.front().lift;
        if (m_under && log().sets(session, lift).empty() &&
            log().conditions(session, lift) == *m_under)
            log().setConditions(session, lift, {});
    });
}

RemoveSetEdit::RemoveSetEdit(EditHost& host, log::PlacedSet removed)
    : Edit(host, QCoreApplication::translate("Edit", "remove set")), m_set(std::move(removed)) {}

QString RemoveSetEdit::object(LoadUnit unit) const {
    return listedLoads({m_set}, unit);
}

void RemoveSetEdit::apply() {
    takeOut(log(), m_set);
}

void RemoveSetEdit::takeBack() {
    putBack(log(), m_set);
}

ChangeSetEdit::ChangeSetEdit(EditHost& host, log::PlacedSet before, Set after)
    : Edit(host, changeText(before.set, after)), m_before(std::move(before)),
      m_after(std::move(after)) {}

QString ChangeSetEdit::object(LoadUnit unit) const {
    return listedLoads({m_before}, unit);
}

void ChangeSetEdit::turn(const Set& from, const Set& to) {
    if (log().set(m_before.id).set != from)
        refuseChangedElsewhere();
    log().change(m_before.id, to);
}

} // namespace slopebook::ui
