// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/logbook.h"

#include "core/log/otherswatch.h"
#include "core/log/splitdays.h"
#include "core/model/errors.h"
#include "core/questions/keptcontext.h"
#include "ui/edits/batteryedit.h"
#include "ui/edits/checkloadsedit.h"
#include "ui/edits/entryedit.h"
#include "ui/edits/rosteredit.h"
#include "ui/edits/sessionedits.h"
#include "ui/edits/setedits.h"
#include "ui/edits/valueedits.h"

#include <map>
#include <utility>

namespace slopebook::ui {

struct Logbook::Impl {
    Logbook& book;
    log::Log log;
    log::OthersWatch others;
    bool stepBack = false; ///< the undo or redo under way failed and is to be taken back
    EditHost host;
    std::map<LiftId, questions::KeptContext> contexts;
    QUndoStack stack; // last: its edits go before the host that they know

    Impl(Logbook& owner, log::Log opened)
        : book(owner), log(std::move(opened)),
          others(log), host{log, [this](What what, qint64 session) { tell(what, session); },
                            [this](const QString& message) { Q_EMIT book.failed(message); },
                            [this] { stepBack = true; }} {}

    /// What others wrote meanwhile is told at the next look: what is entered waits for no page. But
    /// where it is refused, what the page shows may be behind.
    template <class Work>
    auto write(const Work& work) {
        try {
            return work();
        } catch (...) {
            lookAgain();
            throw;
        }
    }
    void lookAgain() const {
        try {
            book.lookForOthersWrites();
        } catch (const LogError&) { // NOLINT(bugprone-empty-catch): what was refused is told
        }
    }
    void tell(What what, qint64 session) { Q_EMIT book.changed(what, session); }
    void push(Edit* edit, What what, qint64 session = 0) {
        stack.push(edit);
        tell(what, session);
    }
    std::optional<Step> step(int at) const {
        const auto* edit = dynamic_cast<const Edit*>(stack.command(at));
        return edit ? std::optional(stepOf(*edit, log, book.loadUnit())) : std::nullopt;
    }
    template <class Id, class Value>
    Id add(const Value& value, const QString& text) {
        const Id id = write([&] { return log.add(value); });
        push(new AddEdit<Id, Value>(host, text, id, value), whatOf(id));
        return id;
    }
    template <class Id, class Value>
    void change(Id id, const Value& value, const QString& text) {
        const Value before = stored(log, id);
        if (before == value)
            return;
        write([&] { log.change(id, value); });
        push(new ChangeEdit<Id, Value>(host, text, id, before, value), whatOf(id));
    }
};

Logbook::Logbook(log::Log log, QObject* parent)
    : QObject(parent), m_impl(std::make_unique<Impl>(*this, std::move(log))) {
    // A step that failed stays where it was in the stack: the edit knows that it still stands (or
    // still does not) and passes the way back without touching the disk.
    connect(&m_impl->stack, &QUndoStack::indexChanged, this, [this, last = 0](int index) mutable {
        const int before = std::exchange(last, index);
        if (!std::exchange(m_impl->stepBack, false))
            return;
        if (index < before)
            m_impl->stack.redo();
        else
            m_impl->stack.undo();
    });
}

Logbook::~Logbook() {
    m_impl->stack.disconnect(); // it says that it is empty now, to those who may be going too
}

const log::Log& Logbook::log() const {
    return m_impl->log;
}

const questions::LiftContext& Logbook::context(LiftId lift) const {
    return m_impl->contexts.try_emplace(lift, lift).first->second.of(m_impl->log);
}

std::shared_ptr<const questions::LiftContext> Logbook::sharedContext(LiftId lift) const {
    return std::make_shared<const questions::LiftContext>(context(lift));
}

QUndoStack* Logbook::undoStack() {
    return &m_impl->stack;
}

std::optional<Logbook::Step> Logbook::nextUndo() const {
    return m_impl->step(m_impl->stack.index() - 1);
}

std::optional<Logbook::Step> Logbook::nextRedo() const {
    return m_impl->step(m_impl->stack.index());
}

AthleteId Logbook::addAthlete(const Athlete& athlete) {
    return m_impl->add<AthleteId>(athlete, tr("add athlete"));
}

LiftId Logbook::addLift(const Lift& lift) {
    return m_impl->add<LiftId>(lift, tr("add lift"));
}

DeviceId Logbook::addDevice(const Device& device) {
    return m_impl->add<DeviceId>(device, tr("add device"));
}

BlockId Logbook::addBlock(const Block& block) {
    return m_impl->add<BlockId>(block, tr("add training block"));
}

EquipmentId Logbook::addEquipment(const Equipment& equipment) {
    return m_impl->add<EquipmentId>(equipment, tr("add set of equipment"));
}

SessionId Logbook::addSession(const SessionHead& session,
                              const std::vector<LiftConditions>& conditions) {
    SessionId id{};
    m_impl->write([&] {
        m_impl->log.together([&] {
            id = m_impl->log.add(session);
            for (const LiftConditions& one : conditions)
                m_impl->log.setConditions(id, one.lift, one.conditions);
        });
    });
    m_impl->push(new AddSessionEdit(m_impl->host, m_impl->log.session(id)), What::Sessions,
                 raw(id));
    return id;
}

std::vector<SetId> Logbook::addSets(SessionId session, LiftId lift, const std::vector<Set>& sets,
                                    const std::optional<Conditions>& under) {
    std::vector<SetId> ids;
    std::vector<log::PlacedSet> placed;
    m_impl->write([&] {
        m_impl->log.together([&] {
            if (under)
                m_impl->log.setConditions(session, lift, *under);
            for (const Set& set : sets) {
                ids.push_back(m_impl->log.add(session, lift, set));
                placed.push_back(m_impl->log.set(ids.back()));
            }
        });
    });
    m_impl->push(new AddSetsEdit(m_impl->host, std::move(placed), under), What::Sets, raw(session));
    return ids;
}

TestKindId Logbook::addTestKind(const TestKind& kind) {
    return m_impl->add<TestKindId>(kind, tr("add test"));
}

StationId Logbook::addStation(const Station& station) {
    return m_impl->add<StationId>(station, tr("add station"));
}

void Logbook::changeStation(StationId id, const Station& station) {
    m_impl->change(id, station, tr("change station"));
}

// A station goes with its rosters, which come back with it.
void Logbook::removeStation(StationId id) {
    const Station before = stored(m_impl->log, id);
    std::vector<Roster> rosters = m_impl->log.rosters(id);
    m_impl->write([&] { m_impl->log.remove(id); });
    m_impl->push(new RemoveStationEdit(m_impl->host, id, before, std::move(rosters)),
                 What::Stations);
}

void Logbook::setRoster(const Roster& roster) {
    const Roster before = m_impl->log.roster(roster.station, roster.day);
    if (before == roster)
        return;
    m_impl->write([&] { m_impl->log.setRoster(roster); });
    m_impl->push(new RosterEdit(m_impl->host, before, roster), What::Stations);
}

WrittenEntry Logbook::enter(const Entry& entry) {
    Entered entered = m_impl->write([&] { return ui::enter(m_impl->log, entry); });
    WrittenEntry written{entered.session, {}};
    for (const log::PlacedSet& set : entered.sets)
        written.sets.push_back(set.id);
    auto* edit = new EntryEdit(m_impl->host, entry.text, std::move(entered));
    m_impl->push(edit, edit->what(), raw(written.session));
    return written;
}

void Logbook::changeTestKind(TestKindId id, const TestKind& kind) {
    m_impl->change(id, kind, tr("change test"));
}

void Logbook::removeTestKind(TestKindId id) {
    const TestKind before = stored(m_impl->log, id);
    m_impl->write([&] { m_impl->log.remove(id); });
    m_impl->push(new RemoveEdit<TestKindId, TestKind>(m_impl->host, tr("remove test"), id, before),
                 What::Tests);
}

void Logbook::setBattery(SessionId session, const Battery& battery, const QString& text) {
    const Battery before = m_impl->log.battery(session);
    m_impl->write([&] { m_impl->log.setBattery(session, battery); });
    const Battery after = m_impl->log.battery(session);
    if (before == after)
        return;
    m_impl->push(new BatteryEdit(m_impl->host, text, session, before, after), What::Battery,
                 raw(session));
}

void Logbook::changeAthlete(AthleteId id, const Athlete& athlete) {
    m_impl->change(id, athlete, tr("change athlete"));
}

void Logbook::changeLift(LiftId id, const Lift& lift) {
    m_impl->change(id, lift, tr("change lift"));
}

void Logbook::changeDevice(DeviceId id, const Device& device) {
    m_impl->change(id, device, tr("change device"));
}

void Logbook::changeBlock(BlockId id, const Block& block) {
    m_impl->change(id, block, tr("change training block"));
}

void Logbook::changeEquipment(EquipmentId id, const Equipment& equipment) {
    m_impl->change(id, equipment, tr("change set of equipment"));
}

void Logbook::changeSession(SessionId id, const SessionHead& session,
                            const std::optional<LiftConditions>& conditions) {
    HeadChange change{.before = m_impl->log.session(id).head.value, .after = session};
    if (conditions) {
        change.lift = conditions->lift;
        change.conditionsBefore = m_impl->log.conditions(id, conditions->lift);
        change.conditionsAfter = conditions->conditions;
    }
    if (change.before == change.after && change.conditionsBefore == change.conditionsAfter)
        return;
    m_impl->write([&] { change.make(m_impl->log, id); });
    m_impl->push(new ChangeSessionEdit(m_impl->host, id, std::move(change)), What::Sessions,
                 raw(id));
}

void Logbook::joinSessions(SessionId into, SessionId from) {
    JoinSessionsEdit::Records was;
    log::Log& log = m_impl->log;
    m_impl->write([&] {
        log.together([&] {
            was.into = log.session(into);
            was.from = log.session(from);
            log::joinSessions(log, {.into = into, .from = from});
            was.joined = log.session(into);
        });
    });
    m_impl->push(new JoinSessionsEdit(m_impl->host, std::move(was)), What::Sessions, raw(into));
}

void Logbook::setConditions(SessionId session, LiftId lift, const Conditions& conditions) {
    changeSession(session, m_impl->log.session(session).head.value,
                  LiftConditions{.lift = lift, .conditions = conditions});
}

void Logbook::changeSet(SetId id, const Set& set) {
    const log::PlacedSet before = m_impl->log.set(id);
    if (before.set == set)
        return;
    m_impl->write([&] { m_impl->log.change(id, set); });
    m_impl->push(new ChangeSetEdit(m_impl->host, before, set), What::Sets, raw(before.session));
}

void Logbook::removeBlock(BlockId id) {
    const Block before = stored(m_impl->log, id);
    m_impl->write([&] { m_impl->log.remove(id); });
    m_impl->push(
        new RemoveEdit<BlockId, Block>(m_impl->host, tr("remove training block"), id, before),
        What::Blocks);
}

void Logbook::removeEquipment(EquipmentId id) {
    const Equipment before = stored(m_impl->log, id);
    m_impl->write([&] { m_impl->log.remove(id); });
    m_impl->push(new RemoveEdit<EquipmentId, Equipment>(m_impl->host, tr("remove set of equipment"),
                                                        id, before),
                 What::Equipment);
}

void Logbook::removeSession(SessionId id) {
    log::SessionRecord before = m_impl->log.session(id);
    m_impl->write([&] { m_impl->log.remove(id); });
    m_impl->push(new RemoveSessionEdit(m_impl->host, std::move(before)), What::Sessions, raw(id));
}

void Logbook::removeSet(SetId id) {
    const log::PlacedSet before = m_impl->log.set(id);
    m_impl->write([&] { m_impl->log.remove(id); });
    m_impl->push(new RemoveSetEdit(m_impl->host, before), What::Sets, raw(before.session));
}

void Logbook::setCheckLoads(AthleteId athlete, LiftId lift, const std::vector<Mass>& loads) {
    const std::vector<Mass> before = m_impl->log.checkLoads(athlete, lift);
    m_impl->write([&] { m_impl->log.setCheckLoads(athlete, lift, loads); });
    const std::vector<Mass> after = m_impl->log.checkLoads(athlete, lift);
    if (before == after)
        return;
    m_impl->push(new CheckLoadsEdit(m_impl->host, athlete, lift, before, after), What::CheckLoads);
}

void Logbook::lookForOthersWrites() {
    try {
        if (!m_impl->others.wrote(m_impl->log))
            return;
    } catch (const LogError& error) {
        if (error.kind() == LogError::Kind::Busy)
            return; // another window is just writing: the next look sees it
        throw;
    }
    Q_EMIT changed(What::Everything, 0);
}

void Logbook::applyOutsideUndo(const std::function<void(log::Log&)>& work, bool dryRun) {
    if (dryRun) {
        work(m_impl->log);
        return;
    }
    m_impl->log.together([&] { work(m_impl->log); });
    m_impl->stack.clear();
    try { // work beside this connection, an import, is told of here
        m_impl->others.pass(m_impl->log);
    } catch (const LogError&) { // NOLINT(bugprone-empty-catch): then it is told of twice
    }
    m_impl->tell(What::Everything, 0);
}

} // namespace slopebook::ui
