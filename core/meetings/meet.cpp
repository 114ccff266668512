// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meetings/meet.h"

#include "core/log/asking.h"
#include "core/log/hold.h"
#include "core/log/snapshot.h"
#include "core/meetings/coming.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"
#include "core/meetings/marks.h"
#include "core/meetings/refused.h"
#include "core/model/phrases/meetings.h"
#include "core/store/exchange.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <span>

namespace slopebook::meetings {

namespace {
using Answer = store::Pushed::Answer;

/// Desks that write without pause let each other in sooner or later: one of them in each round.
constexpr int mostRounds = 100;
/// Refused once more though nothing new came: it will not change.
constexpr int mostRefusals = 1;

store::Mark markOf(const log::Mark& mark) {
    return {.n = mark.n, .tag = mark.tag};
}

/// What the log knows of its store.
struct Known {
    log::JoinedStore store;
    std::vector<log::JoinedSquad> squads;
    std::optional<store::Mark> highest; ///< that it has seen
};

Known knownBy(const log::Log& log) {
    const log::Moment moment(log);
    log::Connection& db = log::connectionOf(log);
    Known known{.store = storeOf(log), .squads = log::joinedSquads(db), .highest = {}};
    if (const auto mark = log::highestMark(db))
        known.highest = markOf(*mark);
    return known;
}

/// It is no work that is taken back.
class StoppedOnTheWay : public Cancelled {
public:
    const char* what() const noexcept override {
        return "Stopped. What was taken and sent before stays; the next meeting goes on from "
               "there.";
    }
};

class Meeting {
public:
    Meeting(log::Log& log, store::Connection& store, const std::string& now,
            const Progress& progress, const Patience& patience)
        : m_log(log), m_letsIn(log), m_store(store), m_now(now), m_progress(progress),
          m_patience(patience) {}

    MeetingReport hold() {
        requireSameStore();
        int refusals = 0;
        for (int round = 0; round < mostRounds; ++round) {
            openSquads();
            if (takeNew())
                refusals = 0; // of what was not known here
            const Answer answer = giveNew();
            if (answer == Answer::Ok)
                return finish();
            if (answer != Answer::WentBack && ++refusals > mostRefusals) {
                auto refused =
                    giveInPieces(std::move(m_going), answer,
                                 [&](std::span<const store::Atom> some) { return give(some); });
                if (bringBack(inTheWay(m_log, refused))) {
                    refusals = 0;
                    continue;
                }
                keepChoicesOfOthers(refused);
                std::ranges::transform(refused, std::back_inserter(m_report.notTaken), why);
                return finish();
            }
        }
        throw store::StoreError(
            store::StoreError::Kind::Busy,
            say("Other desks write to the store at %1 without pause. What is not sent yet waits "
                "for the next meeting.",
                m_store.asked().place));
    }

private:
    /// In one transaction: nothing where the log has left the store meanwhile, or joined another.
    template <class Work>
    void together(const Work& work) {
        m_log.together([&] {
            log::Connection& db = log::connectionOf(m_log);
            m_footing.require(m_log);
            work(db);
        });
    }

    void requireSameStore() {
        const store::Sixteen id = knownBy(m_log).store.id;
        m_footing = Footing(id);
        if (store::idOf(m_store, m_progress) != id)
            throw store::StoreError(
                store::StoreError::Kind::NoStore,
                say("The store at %1 is another one than this log has met. Nothing was changed. "
                    "Leave the old one first, then join this one.",
                    m_store.asked().place));
    }

    /// The squads that are open to the login now.
    void openSquads() {
        const Known known = knownBy(m_log);
        std::vector<store::Squad> open = store::squadsOf(m_store, m_progress);
        const bool writes = std::ranges::any_of(open, &store::Squad::mayWrite);
        open.push_back({.uuid = store::everybody, .name = "Everybody", .mayWrite = writes});
        std::vector<log::JoinedSquad> now;
        for (const store::Squad& one : open) {
            const auto held = std::ranges::find(known.squads, one.uuid, &log::JoinedSquad::id);
            now.push_back({.id = one.uuid,
                           .name = one.name,
                           .mayWrite = one.mayWrite,
                           .taken = held == known.squads.end() ? 0 : held->taken});
            if (held == known.squads.end() && one.uuid != store::everybody)
                m_report.squadsCame.push_back(one.name);
        }
        std::vector<log::JoinedSquad> gone;
        for (const log::JoinedSquad& one : known.squads)
            if (std::ranges::find(now, one.id, &log::JoinedSquad::id) == now.end()) {
                gone.push_back(one);
                m_report.squadsWent.push_back(one.name);
            }
        std::erase_if(now, [&](const log::JoinedSquad& one) {
            return std::ranges::find(known.squads, one) != known.squads.end();
        });
        if (now.empty() && gone.empty())
            return;
        together([&](log::Connection& db) {
            for (const log::JoinedSquad& one : gone)
                log::eraseSquad(db, one.id);
            const std::vector<log::JoinedSquad> held = log::joinedSquads(db);
            for (log::JoinedSquad one : now) { // another program may have met the store meanwhile
                if (const auto at = std::ranges::find(held, one.id, &log::JoinedSquad::id);
                    at != held.end())
                    one.taken = at->taken;
                log::putSquad(db, one);
            }
        });
    }

    /// Whether that changed how far the store is known; what was left out, and comes each time,
    /// does not.
    bool takeNew() {
        std::vector<store::Atom> atoms;
        std::vector<store::Departed> departed;
        store::Look look;
        Known known;
        bool wentBack = false;
        std::vector<store::Cursor> since;
        do {
            known = knownBy(m_log);
            m_footing.asks(known.squads);
            since.clear();
            for (const log::JoinedSquad& squad : known.squads)
                since.push_back({.squad = squad.id, .version = squad.taken});
            atoms.clear();
            departed.clear();
            look = store::pull(
                m_store, known.highest, since,
                [&](store::Atom&& atom) { atoms.push_back(std::move(atom)); },
                [&](const store::Departed& one) { departed.push_back(one); }, m_progress);
            if (look.knowsMark)
                continue;
            const auto common = store::lastCommon(m_store, allMarks(), m_progress);
            noteWentBack(m_log, m_footing, common ? common->n : 0);
            m_report.wentBack = wentBack = true;
            if (!common)
                forgetMarks();
        } while (!look.knowsMark || !isStillSo(known));
        const bool first = !known.highest;
        if (atoms.empty() && departed.empty() && !first)
            return wentBack;
        letGoOf(departed, atoms);
        leaveOutOwn(atoms);
        m_report.came += static_cast<std::int64_t>(atoms.size());
        Came came = takeIn(m_log, m_footing, atoms, m_progress, {.patience = m_patience});
        add(m_report.taken, std::move(came.report));
        m_report.leftOut = std::move(came.leftOut); // of a second look the same once more
        return noteTaken(look.now, since, came.leftOutFrom) || wentBack;
    }

    void letGoOf(const std::vector<store::Departed>& departed,
                 const std::vector<store::Atom>& coming) {
        if (departed.empty())
            return;
        m_footing.forgetLast();
        std::set<store::Sixteen> athletes;
        for (const store::Atom& one : coming)
            if (one.kind == "athlete")
                athletes.insert(one.uuid);
        for (const store::Departed& one : departed)
            if (auto gone =
                    letGo(m_log, m_footing, one,
                          athletes.contains(one.athlete) ? Comes::ByAnotherSquad : Comes::No))
                m_report.departed.push_back(*gone);
    }

    std::vector<store::Mark> allMarks() const {
        std::vector<store::Mark> all;
        for (const log::Mark& mark : log::marksIn(log::connectionOf(m_log)))
            all.push_back(markOf(mark));
        return all;
    }

    /// Whether the log has taken as far as the store was asked by: while that answered, another
    /// program may have met it, or the log gone back to a backup.
    bool isStillSo(const Known& asked) const {
        const Known now = knownBy(m_log);
        requireMeets(m_log, m_footing.store());
        return now.squads == asked.squads && now.highest == asked.highest;
    }

    /// What this log gave itself comes back with a pull where others wrote too. (Under another
    /// version it was given again meanwhile, as a turn is of who was away: that is noted.)
    void leaveOutOwn(std::vector<store::Atom>& atoms) const {
        log::Connection& db = log::connectionOf(m_log);
        if (!log::hasSent(db))
            return;
        std::erase_if(atoms, [&](const store::Atom& atom) {
            const auto sent = log::sentOf(db, atom.uuid);
            return sent && sent->squad == atom.squad && sent->version == atom.version &&
                   sent->revision == atom.trail.back().revision;
        });
    }

    void forgetMarks() {
        together([](log::Connection& db) { log::eraseMarksAbove(db, -1); });
    }

    /// Only what was taken moves how far squads were taken; whether one moved.
    bool noteTaken(const store::Mark& now, const std::vector<store::Cursor>& since,
                   const std::map<store::Sixteen, std::int64_t>& leftOutFrom) {
        bool moved = false;
        together([&](log::Connection& db) {
            for (log::JoinedSquad squad : log::joinedSquads(db)) {
                // one that was not asked for, or that another program has taken on or back
                const auto asked = std::ranges::find(since, squad.id, &store::Cursor::squad);
                if (asked == since.end() || asked->version != squad.taken)
                    continue;
                const auto out = leftOutFrom.find(squad.id);
                const std::int64_t upTo =
                    out == leftOutFrom.end() ? now.n : std::min(now.n, out->second - 1);
                if (squad.taken >= upTo)
                    continue;
                squad.taken = upTo;
                log::putSquad(db, squad);
                moved = true;
            }
            noteMark(db, {.n = now.n, .tag = now.tag});
        });
        m_wrote = true;
        return moved;
    }

    Answer giveNew() {
        Going going = whatGoes(m_log);
        m_report.held = going.held;
        if (!going.untold.empty())
            forgetUntold(m_log, m_footing, going.untold);
        m_going = std::move(going.atoms);
        return m_going.empty() ? Answer::Ok : give(m_going);
    }

    /// All of them at once, and notes it. The mark first: what is noted as sent is never later than
    /// what the log knows of the store.
    Answer give(std::span<const store::Atom> atoms) {
        const auto highest = knownBy(m_log).highest;
        const store::Mark mark =
            highest ? *highest : store::lookAt(m_store, store::Mark{}, m_progress).now;
        const store::Pushed pushed = store::push(m_store, mark, atoms, m_progress);
        if (pushed.answer != Answer::Ok)
            return pushed.answer;
        m_report.went += pushed.wrote;
        together(
            [&](log::Connection& db) { noteMark(db, {.n = pushed.now.n, .tag = pushed.now.tag}); });
        noteSent(m_log, m_footing, atoms, pushed.now.n);
        if (pushed.wrote > 0 && pushed.now.n == mark.n + 1)
            passOwn(mark.n, pushed.now.n);
        m_wrote = true;
        return Answer::Ok;
    }

    /// Nobody else wrote between the two: what was taken up to the one is taken up to the other,
    /// and what this log gave does not all come back to it.
    void passOwn(std::int64_t from, std::int64_t to) {
        together([&](log::Connection& db) {
            for (log::JoinedSquad squad : log::joinedSquads(db))
                if (squad.taken == from) {
                    squad.taken = to;
                    log::putSquad(db, squad);
                }
        });
    }

    /// What is used is there: it comes back, so that one of its name becomes one with it, or
    /// yields. Each once in a meeting: what goes again all the same waits.
    bool bringBack(const std::vector<store::Sixteen>& inTheWay) {
        How how{.stored = InStore::NotYet, .usedUnseen = m_broughtBack, .patience = m_patience};
        bool any = false;
        for (const store::Sixteen& uuid : inTheWay) {
            if (!m_broughtBack.insert(uuid).second)
                continue;
            how.usedUnseen.insert(uuid);
            add(m_report.taken, meetings::bringBack(m_log, m_footing, uuid, how, m_progress));
            any = true;
        }
        m_wrote = m_wrote || any;
        return any;
    }

    /// A choice about what is everybody's may be worked out alike in two squads. The store has the
    /// one that came first, and the other squad does not see it: its coach chooses at this log.
    void keepChoicesOfOthers(std::vector<Refused>& refused) {
        std::vector<store::Sixteen> kept;
        std::erase_if(refused, [&](const Refused& one) {
            const auto choice =
                one.answer == Answer::NotOurs ? log::carried(m_log, one.atom.uuid) : std::nullopt;
            if (!choice || !isChoiceOfEverybodys(log::connectionOf(m_log), *choice))
                return false;
            kept.push_back(one.atom.uuid);
            return true;
        });
        if (kept.empty())
            return;
        together([&](log::Connection&) { keepHere(m_log, kept); });
        m_wrote = true;
    }

    /// When it was, where something is written anyhow: a log is not written to say that nothing was
    /// new.
    MeetingReport finish() {
        const Known known = knownBy(m_log);
        if (m_wrote || known.store.met.empty())
            together([&](log::Connection& db) {
                log::JoinedStore now = *log::joinedStore(db);
                now.met = m_now;
                log::setJoinedStore(db, now);
            });
        const log::Moment moment(m_log);
        m_report.waiting = log::countUnsent(log::connectionOf(m_log));
        return std::move(m_report);
    }

    log::Log& m_log;
    const log::LetsIn m_letsIn; ///< one step follows another at once
    store::Connection& m_store;
    const std::string& m_now;
    const Progress& m_progress;
    const Patience m_patience;
    MeetingReport m_report;
    std::vector<store::Atom> m_going;       ///< that were given last, all of them at once
    std::set<store::Sixteen> m_broughtBack; ///< as they are used where nobody sees here
    Footing m_footing{store::Sixteen{}};
    bool m_wrote = false;
};
} // namespace

MeetingReport meet(log::Log& log, store::Connection& store, const std::string& now,
                   const Progress& progress, const Patience& patience) {
    log::passHold(log);
    try {
        return Meeting(log, store, now, progress, patience).hold();
    } catch (const Cancelled&) {
        throw StoppedOnTheWay();
    }
}

} // namespace slopebook::meetings
