// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/going.h"

#include "core/log/carried.h"
#include "core/log/snapshot.h"
#include "core/log/storerows.h"
#include "core/meetings/joining.h"
#include "core/store/thingjson.h"

#include <algorithm>
#include <chrono>
#include <map>
#include <thread>

namespace slopebook::meetings {

namespace {
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

/// In pieces, so that who enters a set waits for no more than one.
template <class Each, class Work>
void inPieces(log::Log& log, std::span<const Each> all, const Work& work) {
    constexpr std::size_t piece = 400;
    for (std::size_t from = 0; from < all.size(); from += piece) {
        if (from > 0)
            std::this_thread::sleep_for(std::chrono::milliseconds(4));
        log.together([&] { work(all.subspan(from, std::min(piece, all.size() - from))); });
    }
}

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

Going whatGoes(const log::Log& log) {
    const log::Moment moment(log);
    log::Connection& db = log::connectionOf(log);
    const auto store = log::joinedStore(db);
    Going going;
    if (!store)
        return going;
    const std::set<Sixteen> writable = writableSquads(db);
    SquadOf squadOf(db, store->squad);
    std::vector<log::Unsent> unsent;
    log::visitUnsent(db, [&](const log::Unsent& one) { unsent.push_back(one); });
    for (const log::Unsent& one : unsent) {
        const auto carried = log::carried(db, one.uuid);
        if (!carried || !canBeTold(db, *carried)) {
            going.untold.push_back(one.uuid);
            continue;
        }
        const Sixteen squad = squadOf(*carried);
        const bool ofOne = squadOf.isOfOne(*carried, squad);
        if (!ofOne && !carried->alive)
            going.untold.push_back(one.uuid); // the store never had it, or has none any more
        else if (!writable.contains(squad) || !ofOne)
            ++going.held;
        else
            going.atoms.push_back(store::atomOf(*carried, squad));
    }
    std::ranges::stable_sort(going.atoms, {}, [](const store::Atom& one) {
        return std::ranges::find(log::kindsInOrder, one.kind);
    });
    return going;
}

void noteSent(log::Log& log, const Sixteen& store, std::span<const store::Atom> atoms,
              std::int64_t version) {
    inPieces(log, atoms, [&](std::span<const store::Atom> some) {
        requireMeets(log, store);
        log::Connection& db = log::connectionOf(log);
        std::vector<log::Sent> sent;
        std::vector<Sixteen> done;
        for (const store::Atom& one : some) {
            const Sixteen& revision = one.trail.back().revision;
            sent.push_back(
                {.uuid = one.uuid, .squad = one.squad, .version = version, .revision = revision});
            const auto now = log::carried(db, one.uuid);
            if (now && log::revisionOf(now->trail) == revision)
                done.push_back(one.uuid);
        }
        log::putSent(db, sent);
        log::eraseUnsent(db, done);
    });
}

// The marks last: where it ends early the next meeting finds the store gone back once more.
void noteWentBack(log::Log& log, const Sixteen& store, std::int64_t n) {
    std::vector<log::Unsent> later;
    {
        const log::Moment moment(log);
        log::visitSent(log::connectionOf(log), n, [&](const log::Sent& one) {
            later.push_back({.uuid = one.uuid, .squad = one.squad});
        });
    }
    inPieces(log, std::span<const log::Unsent>(later), [&](std::span<const log::Unsent> some) {
        requireMeets(log, store);
        log::Connection& db = log::connectionOf(log);
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
    log.together([&] {
        requireMeets(log, store);
        log::Connection& db = log::connectionOf(log);
        log::eraseMarksAbove(db, n);
        for (log::JoinedSquad squad : log::joinedSquads(db))
            if (squad.taken > n) {
                squad.taken = n;
                log::putSquad(db, squad);
            }
    });
}

void keepHere(log::Log& log, std::span<const Sixteen> uuids) {
    log::Connection& db = log::connectionOf(log);
    std::vector<log::Sent> now;
    for (const Sixteen& uuid : uuids)
        if (auto one = log::sentOf(db, uuid)) {
            one->squad = nowhere;
            now.push_back(*one);
        }
    log::putSent(db, now);
}

bool isKeptHere(const log::Sent& sent) {
    return sent.squad == nowhere;
}

} // namespace slopebook::meetings
