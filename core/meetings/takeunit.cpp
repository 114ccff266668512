// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/takeunit.h"

#include "core/desks/part.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/asking.h"
#include "core/log/snapshot.h"
#include "core/log/storerows.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"
#include "core/meetings/units.h"
#include "core/model/errors.h"

#include <algorithm>
#include <exception>
#include <limits>
#include <optional>
#include <set>
#include <utility>

namespace slopebook::meetings {

namespace {
using desks::Desk;
using desks::Slot;
using desks::Slots;
using store::Atom;
using store::Sixteen;

/// What came, in the words of a meeting.
Desk deskOf(Slots& known, const std::vector<Arrived>& all, const Places& places) {
    Desk desk;
    for (const std::size_t i : places) {
        const log::Carried& said = all[i].said;
        const Slot slot = known.of(said.kind, said.uuid);
        desk.insert_or_assign(slot, desks::atomOf(known, said));
    }
    return desk;
}

/// A choice that this log has already, open or settled, is not listed once more.
void keepKnownChoices(log::Connection& db, const Slots& known, const Desk& before, Desk& after,
                      desks::Taken& taken) {
    std::erase_if(taken.touched, [&](Slot slot) {
        if (before.contains(slot) ||
            !std::holds_alternative<log::ConflictThing>(*after.at(slot).thing) ||
            !log::carried(db, known.uuid(slot)))
            return false;
        after.erase(slot);
        std::erase_if(taken.told, [&](const desks::Told& told) { return told.about == slot; });
        return true;
    });
}

/// What the store has, and whether it has it as it is here. Gives what was noted last.
std::optional<log::Sent> noteHeld(log::Connection& db, const Slots& known, const Desk& after,
                                  const std::vector<Arrived>& all, const Places& places) {
    std::vector<log::Sent> sent;
    std::vector<Sixteen> same;
    std::vector<log::Unsent> other;
    for (const std::size_t i : places) {
        const Atom& atom = *all[i].atom;
        const auto held = after.find(known.find(atom.uuid));
        if (held == after.end())
            continue;
        const log::Sent now{.uuid = atom.uuid,
                            .squad = atom.squad,
                            .version = atom.version,
                            .revision = atom.trail.back().revision};
        if (log::sentOf(db, atom.uuid) != now)
            sent.push_back(now);
        if (log::revisionOf(held->second.trail) == atom.trail.back().revision)
            same.push_back(atom.uuid);
        else
            other.push_back({.uuid = atom.uuid, .squad = atom.squad});
    }
    // what was only written anew with it says what the store has
    for (const auto& [slot, atom] : after) {
        const Sixteen& uuid = known.uuid(slot);
        const auto held = log::isUnsent(db, uuid) ? log::sentOf(db, uuid) : std::nullopt;
        if (held && held->revision == log::revisionOf(atom.trail))
            same.push_back(uuid);
    }
    log::putSent(db, sent);
    log::noteUnsent(db, other);
    log::eraseUnsent(db, same);
    return sent.empty() ? std::nullopt : std::optional(sent.back());
}

/// What the store has of it, and what of that is not this login's to write.
desks::MetBefore metBefore(log::Connection& db, const Slots& known, const Desk& before,
                           const std::vector<Arrived>& all, const Places& places) {
    const std::set<Sixteen> ours = writableSquads(db);
    desks::MetBefore met;
    for (const auto& [slot, atom] : before) {
        const auto sent = log::sentOf(db, known.uuid(slot));
        if (!sent || isKeptHere(*sent))
            continue;
        met.things.insert(slot);
        if (ours.contains(sent->squad))
            continue;
        met.notOurs.insert(slot);
        met.asStored.emplace(slot, sent->revision);
    }
    for (const std::size_t i : places)
        if (!ours.contains(all[i].atom->squad))
            met.notOurs.insert(known.find(all[i].atom->uuid));
    return met;
}

/// So many things that speak of one that goes are read within a small transaction.
constexpr std::size_t fewSpeak = 200;
constexpr std::size_t allSpeak = std::numeric_limits<int>::max();

/// One unit, from what the log holds to what it is to hold.
class Unit {
public:
    Unit(log::Log& log, const std::vector<Arrived>& all, const Places& places, const How& how)
        : m_log(log), m_db(log::connectionOf(log)), m_all(all), m_places(places), m_how(how),
          m_coming(deskOf(m_known, all, places)) {}

    /// Of one moment, which the caller holds. Whether no more than that many speak of what goes.
    bool read(std::size_t most) {
        auto before = m_how.reads == Reads::Whole
                          ? std::optional(desks::readDesk(m_known, m_log))
                          : desks::readAround(m_known, m_log, m_coming, most);
        if (!before)
            return false;
        m_before = std::move(*before);
        m_met = metBefore(m_db, m_known, m_before.desk, m_all, m_places);
        for (const Sixteen& uuid : m_how.usedUnseen)
            if (const Slot slot = m_known.find(uuid))
                m_met.usedUnseen.insert(slot);
        return true;
    }
    /// Nothing is read or written for it but choices that are known already.
    void workOut() {
        m_after = m_before.desk;
        m_taken = desks::take(m_known, m_after, m_coming, {}, &m_met);
        keepKnownChoices(m_db, m_known, m_before.desk, m_after, m_taken);
        std::erase_if(m_taken.touched, [&](Slot slot) { // numbered there and back
            const auto was = m_before.desk.find(slot);
            return was != m_before.desk.end() && was->second == m_after.at(slot);
        });
    }
    desks::MergeReport report() {
        return desks::reportOf(m_known, m_before.desk, m_after, m_taken);
    }
    /// So many things are to be written.
    std::size_t things() const { return m_taken.touched.size(); }
    /// In the caller's transaction. Gives what was noted last of the store.
    std::optional<log::Sent> write() {
        if (!m_taken.touched.empty())
            desks::writePart(m_log, m_known, m_before, m_after, m_taken.touched);
        return noteHeld(m_db, m_known, m_after, m_all,
                        m_how.stored == InStore::Yes ? m_places : Places());
    }

private:
    log::Log& m_log;
    log::Connection& m_db;
    const std::vector<Arrived>& m_all;
    const Places& m_places;
    const How& m_how;
    Slots m_known;
    const Desk m_coming;
    desks::ReadDesk m_before;
    desks::MetBefore m_met;
    Desk m_after;
    desks::Taken m_taken;
};

enum class Stays { Yes, No };
/// What was only tried is taken back.
class TakenBack : public std::exception {};
void unlessTried(Stays stays) {
    if (stays == Stays::No)
        throw TakenBack();
}

/// In one transaction, which nobody waits for for long. Nothing where it is too much for that.
std::optional<desks::MergeReport> takeSmall(log::Log& log, Footing& footing,
                                            const std::vector<Arrived>& all, const Places& places,
                                            const How& how, Stays stays) {
    std::optional<desks::MergeReport> report;
    std::optional<log::Sent> last;
    log.together([&] {
        footing.require(log);
        Unit unit(log, all, places, how);
        if (!unit.read(fewSpeak))
            return;
        unit.workOut();
        report = unit.report();
        last = unit.write();
        unlessTried(stays);
    });
    footing.wrote(last);
    return report;
}

/// Nothing was taken where somebody wrote meanwhile, or waits to, or types what it would keep
/// waiting.
struct Tried {
    std::optional<desks::MergeReport> report{};
    bool commitIsLong = false;
};

/// Read and worked out before its transaction, which is of what was read or of nothing.
Tried tryGreat(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
               const Places& places, const How& how, Stays stays) {
    log::GivesWay givesWay(log);
    Tried tried;
    try {
        Unit unit(log, all, places, how);
        long version = 0;
        {
            const log::Moment moment(log);
            version = log.dataVersion();
            unit.read(allSpeak);
        }
        unit.workOut();
        tried.commitIsLong = stays == Stays::Yes && unit.things() > how.patience.many;
        if (tried.commitIsLong)
            givesWay.alsoToTypists();
        std::optional<desks::MergeReport> report = unit.report();
        std::optional<log::Sent> last;
        log.together([&] {
            footing.require(log);
            if (log.dataVersion() != version) {
                report.reset();
                return;
            }
            last = unit.write();
            unlessTried(stays);
            givesWay.end();
        });
        footing.wrote(last);
        tried.report = std::move(report);
    } catch (const LogError&) {
        if (!givesWay.gaveWay())
            throw;
    }
    return tried;
}

desks::MergeReport takeOrTry(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                             const Places& places, const How& how, const Progress& progress,
                             Stays stays) {
    if (how.reads == Reads::Whole || (how.reads == Reads::Around && places.size() <= mostAtOnce))
        if (auto report = takeSmall(log, footing, all, places, how, stays))
            return std::move(*report);
    Pauses pauses(log, how.patience, progress);
    while (true) {
        Tried tried = tryGreat(log, footing, all, places, how, stays);
        if (tried.report)
            return std::move(*tried.report);
        pauses.await(tried.commitIsLong ? Quiet::NobodyTypes : Quiet::NothingEntered);
    }
}
} // namespace

desks::MergeReport takeUnit(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                            const Places& places, const How& how, const Progress& progress) {
    return takeOrTry(log, footing, all, places, how, progress, Stays::Yes);
}

std::optional<Words> whyNotTaken(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                                 const Places& places, const How& how, const Progress& progress) {
    try {
        takeOrTry(log, footing, all, places, how, progress, Stays::No);
    } catch (const BadInput& error) {
        return error.words();
    } catch (const TakenBack&) {
        return std::nullopt;
    }
    return std::nullopt;
}

} // namespace slopebook::meetings
