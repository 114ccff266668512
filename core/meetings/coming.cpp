// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/coming.h"

#include "core/desks/part.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/snapshot.h"
#include "core/log/storerows.h"
#include "core/meetings/arrived.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"
#include "core/meetings/pace.h"
#include "core/meetings/units.h"
#include "core/meetings/wholesessions.h"
#include "core/model/errors.h"
#include "core/model/phrases/meetings.h"
#include "core/store/thingjson.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace slopebook::meetings {

void add(desks::MergeReport& all, desks::MergeReport&& more) {
    const auto move = [](auto& to, auto& from) {
        to.insert(to.end(), std::make_move_iterator(from.begin()),
                  std::make_move_iterator(from.end()));
    };
    all.nothingNew = all.nothingNew && more.nothingNew;
    all.added += more.added;
    all.changed += more.changed;
    all.removed += more.removed;
    all.becameOne += more.becameOne;
    move(all.joined, more.joined);
    move(all.revived, more.revived);
    move(all.renamed, more.renamed);
    move(all.listed, more.listed);
}

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

/// Whether what is taken is what the store has.
enum class InStore { Yes, NotYet };

/// In one transaction.
desks::MergeReport takeOne(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                           const Places& places, Reads reads, InStore stored = InStore::Yes) {
    desks::MergeReport report;
    std::optional<log::Sent> last;
    log.together([&] {
        log::Connection& db = log::connectionOf(log);
        footing.require(log);
        Slots known;
        const Desk coming = deskOf(known, all, places);
        const desks::ReadDesk before = reads == Reads::Around
                                           ? desks::readAround(known, log, coming)
                                           : desks::readDesk(known, log);
        const desks::MetBefore met = metBefore(db, known, before.desk, all, places);
        Desk after = before.desk;
        desks::Taken taken = desks::take(known, after, coming, {}, &met);
        keepKnownChoices(db, known, before.desk, after, taken);
        std::erase_if(taken.touched, [&](Slot slot) { // numbered there and back
            const auto was = before.desk.find(slot);
            return was != before.desk.end() && was->second == after.at(slot);
        });
        report = desks::reportOf(known, before.desk, after, taken);
        if (!taken.touched.empty())
            desks::writePart(log, known, before, after, taken.touched);
        last = noteHeld(db, known, after, all, stored == InStore::Yes ? places : Places());
    });
    footing.wrote(last);
    return report;
}

void leaveOut(Came& came, const Atom& atom, const Words& why) {
    came.leftOut.push_back(why);
    const auto [at, isNew] = came.leftOutFrom.emplace(atom.squad, atom.version);
    at->second = std::min(at->second, atom.version);
}

/// Piece by piece where one of them may not stand in a log: the others are taken.
void takePieces(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                const Places& places, Reads reads, Came& came) {
    try {
        add(came.report, takeOne(log, footing, all, places, reads));
        return;
    } catch (const BadInput& error) {
        if (places.size() == 1) {
            leaveOut(came, *all[places.front()].atom, error.words());
            return;
        }
    }
    const auto middle = places.begin() + static_cast<std::ptrdiff_t>(places.size() / 2);
    takePieces(log, footing, all, Places(places.begin(), middle), reads, came);
    takePieces(log, footing, all, Places(middle, places.end()), reads, came);
}

/// What can be taken: what says what it was sent as, and speaks of what comes or is known here.
/// Not of one moment: what is otherwise when it is taken is noticed then.
std::vector<Arrived> sensible(log::Connection& db, const std::vector<Atom>& atoms, Came& came) {
    std::vector<Arrived> good;
    good.reserve(atoms.size());
    std::map<Sixteen, std::vector<log::Reference>> spokenOf;
    for (const Atom& atom : atoms)
        try {
            std::vector<log::Reference> spoken;
            good.push_back({.atom = &atom, .said = store::carriedOf(atom, &spoken)});
            spokenOf.insert_or_assign(atom.uuid, std::move(spoken));
        } catch (const BadInput& error) {
            leaveOut(came, atom, error.words());
        }
    std::map<Sixteen, bool> looked;
    const auto isHere = [&](const Sixteen& uuid) {
        const auto [at, isNew] = looked.try_emplace(uuid);
        if (isNew)
            at->second = log::atomOf(db, uuid) || log::removedAtomOf(db, uuid);
        return at->second;
    };
    const auto isThere = [&](const log::Reference& of) {
        return spokenOf.contains(of.uuid) || isHere(of.uuid);
    };
    // of no use to who never had it, nor what belongs to it: a turn of somebody in another squad,
    // say
    std::erase_if(good, [&](const Arrived& one) {
        const Sixteen& uuid = one.atom->uuid;
        if (one.atom->alive || isHere(uuid) || std::ranges::all_of(spokenOf.at(uuid), isThere))
            return false;
        spokenOf.erase(uuid);
        return true;
    });
    for (std::size_t before = 0; before != good.size();) {
        before = good.size();
        std::erase_if(good, [&](const Arrived& one) {
            const Atom& atom = *one.atom;
            if (std::ranges::all_of(spokenOf.at(atom.uuid), isThere))
                return false;
            spokenOf.erase(atom.uuid);
            leaveOut(came, atom,
                     BadInput(say("a %1 of the store that speaks of what is not there", atom.kind),
                              say("what it speaks of in the same store"))
                         .words());
            return true;
        });
    }
    return good;
}

Places everyPlace(std::size_t count) {
    Places all(count);
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

/// Takes what is sensible of what came, piece by piece.
class Taking {
public:
    Taking(log::Log& log, Footing& footing, const std::vector<Arrived>& all, Reads reads,
           const Progress& progress, Came& came)
        : m_log(log), m_footing(footing), m_all(all), m_reads(reads), m_progress(progress),
          m_came(came) {}

    void take() {
        if (m_all.empty())
            return;
        if (hangsTogether(m_log, m_all)) {
            takeUnits({everyPlace(m_all.size())});
            return;
        }
        std::vector<Places> whole;
        if (m_reads == Reads::Around)
            whole = wholeSessions(m_all);
        std::vector<bool> isWhole(m_all.size());
        for (const Places& session : whole)
            for (const std::size_t i : session)
                isWhole[i] = true;
        Places rest;
        for (std::size_t i = 0; i < m_all.size(); ++i)
            if (!isWhole[i])
                rest.push_back(i);
        takeUnits(namedUnits(m_log, m_all, rest));
        for (const Places& left : takeSessions(std::move(whole)))
            rest.insert(rest.end(), left.begin(), left.end());
        takeUnits(otherUnits(m_log, m_all, rest));
    }

private:
    /// Those that nothing is in question about; gives the others. A repeat needs what it repeats.
    std::vector<Places> takeSessions(std::vector<Places> sessions) {
        Pace pace(mostAtOnce);
        for (std::size_t before = sessions.size() + 1; sessions.size() < before;) {
            before = sessions.size();
            std::vector<Places> left;
            for (auto from = sessions.begin(); from != sessions.end();) {
                std::size_t things = from->size();
                auto to = from + 1;
                for (; to != sessions.end() && things + to->size() <= pace.things(); ++to)
                    things += to->size();
                tellHow();
                pace.write(things, [&] {
                    for (Places& one : takeWhole(m_log, m_footing, m_all, std::span(from, to))) {
                        things -= one.size();
                        left.push_back(std::move(one));
                    }
                });
                m_came.report.added += things;
                m_came.report.nothingNew = m_came.report.nothingNew && things == 0;
                m_done += things;
                from = to;
            }
            sessions = std::move(left);
        }
        return sessions;
    }

    void takeUnits(const std::vector<Places>& units) {
        Pace pace(mostAtOnce);
        for (const Places& unit : units) {
            tellHow();
            pace.write(unit.size(),
                       [&] { takePieces(m_log, m_footing, m_all, unit, m_reads, m_came); });
            m_done += unit.size();
        }
    }

    void tellHow() const {
        tell(m_progress, static_cast<std::int64_t>(m_done),
             static_cast<std::int64_t>(m_all.size()));
    }

    log::Log& m_log;
    Footing& m_footing;
    const std::vector<Arrived>& m_all;
    Reads m_reads;
    const Progress& m_progress;
    Came& m_came;
    std::size_t m_done = 0;
};
} // namespace

desks::MergeReport bringBack(log::Log& log, Footing& footing, const Sixteen& uuid) {
    auto said = log::carried(log, uuid);
    if (!said || said->alive || said->content.empty())
        return {};
    said->alive = true;
    log::extend(said->trail, log::stepHash(said->hash, true));
    const Atom atom = store::atomOf(*said, store::everybody);
    return takeOne(log, footing, {{.atom = &atom, .said = *said}}, {0}, Reads::Around,
                   InStore::NotYet);
}

Came takeIn(log::Log& log, Footing& footing, const std::vector<Atom>& all, const Progress& progress,
            Reads reads) {
    Came came;
    const std::vector<Arrived> good = sensible(log::connectionOf(log), all, came);
    Taking(log, footing, good, reads, progress, came).take();
    return came;
}

} // namespace slopebook::meetings
