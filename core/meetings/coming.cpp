// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/coming.h"

#include "core/log/storerows.h"
#include "core/meetings/arrived.h"
#include "core/meetings/pace.h"
#include "core/meetings/units.h"
#include "core/meetings/wholesessions.h"
#include "core/model/errors.h"
#include "core/model/phrases/meetings.h"
#include "core/store/thingjson.h"

#include <algorithm>
#include <functional>
#include <map>
#include <numeric>
#include <utility>

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
using store::Atom;
using store::Sixteen;

void leaveOut(Came& came, const Atom& atom, const Words& why) {
    came.leftOut.push_back(why);
    const auto [at, isNew] = came.leftOutFrom.emplace(atom.squad, atom.version);
    at->second = std::min(at->second, atom.version);
}

/// Of a unit that cannot be taken: what of it can, all of that together. It is tried piece by
/// piece, and nothing is written: half of two that change their names is not to be taken without
/// the other.
class Standing {
public:
    using WhyNot = std::function<std::optional<Words>(const Places&)>;
    struct Bad {
        std::size_t place = 0;
        Words why{};
    };

    Standing(const Places& places, const WhyNot& whyNot) : m_whyNot(whyNot) {
        put(places);
        // what was tried before what it needs
        for (std::size_t before = m_bad.size() + 1; m_bad.size() < before;) {
            before = m_bad.size();
            for (const Bad& one : std::exchange(m_bad, {}))
                put({one.place});
        }
        std::ranges::sort(m_good);
    }
    const Places& good() const { return m_good; }
    const std::vector<Bad>& bad() const { return m_bad; }

private:
    void put(const Places& some) {
        Places together = m_good;
        together.insert(together.end(), some.begin(), some.end());
        const std::optional<Words> why = m_whyNot(together);
        if (!why) {
            m_good = std::move(together);
        } else if (some.size() == 1) {
            m_bad.push_back({.place = some.front(), .why = *why});
        } else {
            const auto middle = some.begin() + static_cast<std::ptrdiff_t>(some.size() / 2);
            put(Places(some.begin(), middle));
            put(Places(middle, some.end()));
        }
    }

    const WhyNot& m_whyNot;
    Places m_good;
    std::vector<Bad> m_bad;
};

/// Where something of it may not stand in a log the rest is taken.
void takeStanding(log::Log& log, Footing& footing, const std::vector<Arrived>& all,
                  const Places& places, const How& how, const Progress& progress, Came& came) {
    try {
        add(came.report, takeUnit(log, footing, all, places, how, progress));
        return;
    } catch (const BadInput& error) {
        if (places.size() == 1) {
            leaveOut(came, *all[places.front()].atom, error.words());
            return;
        }
    }
    const Standing standing(places, [&](const Places& some) {
        return whyNotTaken(log, footing, all, some, how, progress);
    });
    for (const Standing::Bad& one : standing.bad())
        leaveOut(came, *all[one.place].atom, one.why);
    if (!standing.good().empty())
        add(came.report, takeUnit(log, footing, all, standing.good(), how, progress));
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
    Taking(log::Log& log, Footing& footing, const std::vector<Arrived>& all, const How& how,
           const Progress& progress, Came& came)
        : m_log(log), m_footing(footing), m_all(all), m_how(how), m_progress(progress),
          m_came(came) {}

    void take() {
        if (m_all.empty())
            return;
        if (hangsTogether(m_log, m_all)) {
            takeUnits({everyPlace(m_all.size())});
            return;
        }
        std::vector<Places> whole;
        if (m_how.reads == Reads::Around)
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
        Pace pace(m_log, mostAtOnce);
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
        Pace pace(m_log, mostAtOnce);
        for (const Places& unit : units) {
            tellHow();
            pace.write(unit.size(), [&] {
                takeStanding(m_log, m_footing, m_all, unit, m_how, m_progress, m_came);
            });
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
    const How& m_how;
    const Progress& m_progress;
    Came& m_came;
    std::size_t m_done = 0;
};
} // namespace

desks::MergeReport bringBack(log::Log& log, Footing& footing, const Sixteen& uuid, const How& how,
                             const Progress& progress) {
    auto said = log::carried(log, uuid);
    if (!said || said->alive || said->content.empty())
        return {};
    said->alive = true;
    log::extend(said->trail, log::stepHash(said->hash, true));
    const Atom atom = store::atomOf(*said, store::everybody);
    return takeUnit(log, footing, {{.atom = &atom, .said = *said}}, {0}, how, progress);
}

Came takeIn(log::Log& log, Footing& footing, const std::vector<Atom>& all, const Progress& progress,
            const How& how) {
    Came came;
    const std::vector<Arrived> good = sensible(log::connectionOf(log), all, came);
    Taking(log, footing, good, how, progress, came).take();
    return came;
}

} // namespace slopebook::meetings
