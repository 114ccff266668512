// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/going.h"

#include "core/log/carried.h"
#include "core/log/snapshot.h"
#include "core/log/storerows.h"
#include "core/meetings/joining.h"
#include "core/meetings/pace.h"
#include "core/store/thingjson.h"

#include <algorithm>
#include <map>
#include <set>

namespace slopebook::meetings {

namespace {
/// So many in the first transaction, and in each moment that only reads.
constexpr std::size_t firstPiece = 400;

/// No squad has this name.
constexpr Sixteen nowhere = [] {
    Sixteen all{};
    all.fill(0xFF);
    return all;
}();

/// To which squad a thing goes: where what it belongs to is.
class SquadOf {
public:
    SquadOf(log::Connection& db, const Sixteen& newOnes) : m_db(db), m_new(newOnes) {}

    Sixteen operator()(const log::Carried& one) {
        if (store::isEverybodys(one.kind))
            return store::everybody;
        if (one.parent)
            return of(one.parent->uuid);
        if (one.kind == "conflict")
            if (const auto about = log::aboutOf(one))
                if (const Sixteen squad = of(*about); squad != store::everybody)
                    return squad;
        return own(one.uuid);
    }

    /// A roster of one squad cannot name an athlete of another: who sees the one alone would be
    /// told of somebody unknown.
    bool isOfOne(const log::Carried& one, const Sixteen& squad) {
        if (one.kind != "roster" || one.content.empty())
            return true;
        return std::ranges::all_of(
            log::referencesOf(one.content), [&](const log::Reference& spoken) {
                return std::string_view(spoken.kind) != "athlete" || of(spoken.uuid) == squad;
            });
    }

private:
    Sixteen of(const Sixteen& uuid) {
        const auto [at, isNew] = m_squads.try_emplace(uuid);
        if (!isNew)
            return at->second;
        const auto one = log::carried(m_db, uuid);
        const Sixteen squad = one ? (*this)(*one) : own(uuid);
        return m_squads[uuid] = squad;
    }
    Sixteen own(const Sixteen& uuid) {
        if (const auto unsent = log::unsentOf(m_db, uuid); unsent && unsent->squad)
            return *unsent->squad; // where it was before the store forgot it
        if (const auto sent = log::sentOf(m_db, uuid))
            return sent->squad;
        return m_new;
    }

    log::Connection& m_db;
    Sixteen m_new;
    std::map<Sixteen, Sixteen> m_squads;
};

/// Of what was removed before logs kept what such things said nobody can be told who never had it;
/// nor of what belonged to such a one.
bool canBeTold(log::Connection& db, const log::Carried& one) {
    if (one.alive || log::sentOf(db, one.uuid))
        return true;
    if (one.content.empty())
        return false;
    return std::ranges::all_of(log::referencesOf(one.content), [&](const log::Reference& of) {
        const auto spoken = log::carried(db, of.uuid);
        return spoken && canBeTold(db, *spoken);
    });
}
} // namespace

namespace {
/// What waits, thing by thing.
class Waiting {
public:
    Waiting(const log::Log& log, const log::JoinedStore& store)
        : m_db(log::connectionOf(log)), m_writable(writableSquads(m_db)),
          m_squadOf(m_db, store.squad) {}

    void put(Going& going, const log::Unsent& one) {
        const auto carried = log::carried(m_db, one.uuid);
        if (!carried || !canBeTold(m_db, *carried)) {
            going.untold.push_back(one.uuid);
            return;
        }
        const Sixteen squad = m_squadOf(*carried);
        const bool ofOne = m_squadOf.isOfOne(*carried, squad);
        if (!ofOne && !carried->alive)
            going.untold.push_back(one.uuid); // the store never had it, or has none any more
        else if (!m_writable.contains(squad) || !ofOne)
            ++going.held;
        else
            going.atoms.push_back(store::atomOf(*carried, squad));
    }

private:
    log::Connection& m_db;
    std::set<Sixteen> m_writable;
    SquadOf m_squadOf;
};

void sortByKind(std::vector<store::Atom>& atoms) {
    std::vector<std::pair<std::ptrdiff_t, std::size_t>> order;
    order.reserve(atoms.size());
    for (const store::Atom& one : atoms)
        order.emplace_back(std::ranges::find(log::kindsInOrder, one.kind) -
                               log::kindsInOrder.begin(),
                           order.size());
    std::ranges::sort(order);
    std::vector<store::Atom> sorted;
    sorted.reserve(atoms.size());
    for (const auto& [kind, at] : order)
        sorted.push_back(std::move(atoms[at]));
    atoms = std::move(sorted);
}
} // namespace

Going whatGoes(const log::Log& log) {
    log::Connection& db = log::connectionOf(log);
    Going going;
    const auto store = log::joinedStore(db);
    if (!store)
        return going;
    Waiting waiting(log, *store);
    std::vector<log::Unsent> some;
    do {
        const log::Moment moment(log);
        const auto last = some.empty() ? std::nullopt : std::optional(some.back().uuid);
        some = log::unsentAfter(db, last, firstPiece);
        for (const log::Unsent& one : some)
            waiting.put(going, one);
    } while (some.size() == firstPiece);
    sortByKind(going.atoms);
    return going;
}

void forgetUntold(log::Log& log, const Footing& footing, std::span<const Sixteen> untold) {
    log.together([&] {
        footing.require(log);
        log::Connection& db = log::connectionOf(log);
        std::vector<Sixteen> gone;
        for (const Sixteen& uuid : untold)
            if (!log::atomOf(db, uuid)) // nobody has brought it back since
                gone.push_back(uuid);
        log::eraseUnsent(db, gone);
    });
}

void noteSent(log::Log& log, Footing& footing, std::span<const store::Atom> atoms,
              std::int64_t version) {
    Pace(log, firstPiece).inPieces(atoms, [&](std::span<const store::Atom> some) {
        std::vector<log::Sent> sent;
        log.together([&] {
            footing.require(log);
            log::Connection& db = log::connectionOf(log);
            std::vector<Sixteen> done;
            for (const store::Atom& one : some) {
                const Sixteen& revision = one.trail.back().revision;
                const log::Trail now = log::trailHere(db, one.uuid);
                if (!log::holds(now, revision))
                    Footing::wentBack(log); // it is to be taken
                sent.push_back({.uuid = one.uuid,
                                .squad = one.squad,
                                .version = version,
                                .revision = revision});
                if (log::revisionOf(now) == revision)
                    done.push_back(one.uuid);
            }
            const auto again = std::partition(sent.begin(), sent.end(), [&](const log::Sent& one) {
                return !log::sentOf(db, one.uuid);
            });
            log::putFirstSent(db, std::span(sent.begin(), again));
            log::putSent(db, std::span(again, sent.end()));
            log::eraseUnsent(db, done);
        });
        if (!sent.empty())
            footing.wrote(sent.back());
    });
}

// The marks last: where it ends early the next meeting finds the store gone back once more. The
// squads are taken from their beginning: who left one since is in it again, and what this log let
// go with him the store had before n.
void noteWentBack(log::Log& log, Footing& footing, std::int64_t n) {
    footing.forget();
    log::Connection& db = log::connectionOf(log);
    std::vector<log::Unsent> later;
    log::visitSent(db, n, [&](const log::Sent& one) {
        later.push_back({.uuid = one.uuid, .squad = one.squad});
    });
    Pace pace(log, firstPiece);
    pace.inPieces(std::span<const log::Unsent>(later), [&](std::span<const log::Unsent> some) {
        log.together([&] {
            footing.require(log);
            std::vector<log::Unsent> again;
            std::vector<Sixteen> uuids;
            for (const log::Unsent& one : some)
                if (const auto sent = log::sentOf(db, one.uuid); sent && sent->version > n) {
                    again.push_back({.uuid = one.uuid, .squad = sent->squad});
                    uuids.push_back(one.uuid);
                }
            log::noteUnsent(db, again);
            log::eraseSent(db, uuids);
        });
    });
    log.together([&] {
        footing.require(log);
        log::eraseMarksAbove(db, n);
        for (log::JoinedSquad squad : log::joinedSquads(db))
            if (squad.taken > 0) {
                squad.taken = 0;
                log::putSquad(db, squad);
            }
    });
}

void keepHere(log::Log& log, std::span<const Sixteen> uuids) {
    log::Connection& db = log::connectionOf(log);
    std::vector<log::Sent> sent;
    std::vector<log::Unsent> waiting;
    for (const Sixteen& uuid : uuids) {
        if (auto one = log::sentOf(db, uuid)) {
            one->squad = nowhere;
            sent.push_back(*one);
        }
        if (log::isUnsent(db, uuid))
            waiting.push_back({.uuid = uuid, .squad = nowhere});
    }
    log::putSent(db, sent);
    log::noteUnsent(db, waiting);
}

bool isKeptHere(const log::Sent& sent) {
    return sent.squad == nowhere;
}

} // namespace slopebook::meetings
