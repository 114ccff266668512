// SPDX-License-Identifier: GPL-3.0-or-later
// The half of Merge that deals with rows: sessions, sets, reps.
#include "core/exchange/merge.h"

#include "core/exchange/cells.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace slopebook::exchange {

namespace {

Words setName(const Staging& staging, const StagedSet& set) {
    const StagedSession& session = staging.sessions[static_cast<std::size_t>(set.session)];
    return say("set %1 of %2 of %3 on %4", set.number,
               staging.lifts[static_cast<std::size_t>(set.lift)].name,
               staging.athletes.names()[static_cast<std::size_t>(session.athlete)],
               sayDay(session.date, session.ordinal));
}

// Indices of a list in the order of what key makes of its elements.
template <class List, class Key>
std::vector<std::size_t> ordered(const List& list, const Key& key) {
    std::vector<std::size_t> order(list.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t i) { return key(list[i]); });
    return order;
}

} // namespace

Merge::Merge(log::Log& log, const ImportSettings& settings, ImportReport& report)
    : m_log(log), m_settings(settings), m_report(report), m_athletes(log.athletes()),
      m_lifts(log.lifts()), m_devices(log.devices()), m_blocks(log.blocks()) {}

void Merge::rows(const Staging& staging) {
    m_report.rows = staging.rows;
    for (const std::string& name : staging.athletes.names()) {
        tell(m_settings.progress, 0, 1);
        m_athleteIds.push_back(athleteFor(name));
    }
    for (const StagedLift& staged : staging.lifts) {
        tell(m_settings.progress, 0, 1);
        m_liftIds.emplace_back();
        orRefuse([&] { m_liftIds.back() = liftFor(staged, staging); });
    }
    blocksOf(staging);
    sessions(staging);
    orRefuse([&] { repeats(staging); });
    conditions(staging);
    sets(staging);
}

void Merge::sessions(const Staging& staging) {
    m_sessionIds.resize(staging.sessions.size());
    m_sessionWasThere.resize(staging.sessions.size());
    const auto byDay = ordered(staging.sessions, [](const StagedSession& s) {
        return std::tuple(s.athlete, s.date, s.ordinal);
    });
    for (const std::size_t i : byDay) {
        tell(m_settings.progress, 0, 1);
        const int before = m_report.sessionsAdded;
        orRefuse([&] { m_sessionIds[i] = sessionFor(staging, staging.sessions[i]); });
        m_sessionWasThere[i] = m_report.sessionsAdded == before;
    }
}

auto Merge::sessionsOf(AthleteId athlete) -> std::map<SessionKey, Stored<SessionId, SessionHead>>& {
    const auto [it, isNew] = m_sessions.try_emplace(athlete);
    if (isNew)
        for (auto& stored : m_log.sessions(athlete))
            it->second.emplace(SessionKey{stored.value.date, stored.value.ordinal}, stored);
    return it->second;
}

SessionId Merge::sessionFor(const Staging& staging, const StagedSession& staged) {
    const AthleteId athlete = m_athleteIds[static_cast<std::size_t>(staged.athlete)];
    auto& held = sessionsOf(athlete);
    const SessionKey key{staged.date, staged.ordinal};
    if (const auto it = held.find(key); it != held.end()) {
        fillHead(staging, staged, it->second);
        return it->second.id;
    }
    SessionHead head;
    head.athlete = athlete;
    head.date = staged.date;
    head.ordinal = staged.ordinal;
    if (staged.bodyMass)
        head.bodyMass = staged.bodyMass->value;
    if (staged.note)
        head.note = staged.note->value;
    const SessionId id = m_log.add(head);
    held.emplace(key, Stored<SessionId, SessionHead>{id, head});
    ++m_report.sessionsAdded;
    return id;
}

Words Merge::about(const Staging& staging, const StagedSession& session) const {
    return say("the session of %1 on %2",
               staging.athletes.names()[static_cast<std::size_t>(session.athlete)],
               sayDay(session.date, session.ordinal));
}

void Merge::fillHead(const Staging& staging, const StagedSession& staged,
                     Stored<SessionId, SessionHead>& held) {
    SessionHead head = held.value;
    const auto inLog = [&](const Words& kept) {
        return say("%1, as the log has for %2", kept, about(staging, staged));
    };
    if (staged.bodyMass) {
        if (head.bodyMass && *head.bodyMass != staged.bodyMass->value)
            staging.contradict(staged.bodyMass->place, "body_mass_kg",
                               asKilograms(staged.bodyMass->value),
                               inLog(asKilograms(*head.bodyMass)));
        head.bodyMass = staged.bodyMass->value;
    }
    if (staged.note && head.note.empty())
        head.note = staged.note->value;
    else if (staged.note && !head.note.starts_with(staged.note->value)) // see spread()
        staging.contradict(staged.note->place, "session_note", found(staged.note->value),
                           inLog(found(head.note)));
    if (head == held.value)
        return;
    m_log.change(held.id, head);
    held.value = head;
    m_report.filledIn.push_back(english(about(staging, staged)) + ": body mass or note");
}

// After all sessions are there: a repeat may stand before what it repeats.
void Merge::repeats(const Staging& staging) {
    for (std::size_t i = 0; i < staging.sessions.size(); ++i) {
        const StagedSession& staged = staging.sessions[i];
        if (!staged.repeatOf)
            continue;
        const auto refuse = [&](Phrase expected) {
            staging.contradict(staged.repeatOf->place, "repeat_of", found(staged.repeatOf->value),
                               say(expected));
        };
        const std::string& key = staged.repeatOf->value;
        const auto hash = key.find('#');
        const auto date = parseIsoDate(std::string_view(key).substr(0, hash));
        const auto ordinal = hash == std::string::npos
                                 ? std::optional(1)
                                 : readCount(std::string_view(key).substr(hash + 1));
        if (!date || !ordinal)
            refuse("the day of a session, such as 2026-03-14, or 2026-03-14#2");
        auto& ofAthlete = sessionsOf(m_athleteIds[static_cast<std::size_t>(staged.athlete)]);
        const auto target = ofAthlete.find({*date, *ordinal});
        if (target == ofAthlete.end() || target->second.id == m_sessionIds[i])
            refuse("another session of the same athlete, in the files or in the log");
        auto& held = ofAthlete.find({staged.date, staged.ordinal})->second;
        if (held.value.repeatOf == target->second.id)
            continue;
        if (held.value.repeatOf)
            refuse("the session that it repeats in the log");
        held.value.repeatOf = target->second.id;
        m_log.change(held.id, held.value);
        if (m_sessionWasThere[i])
            m_report.filledIn.push_back(english(about(staging, staged)) + ": repeats " + key);
    }
}

void Merge::sets(const Staging& staging) {
    const auto inOrder = ordered(
        staging.sets, [](const StagedSet& s) { return std::tuple(s.session, s.lift, s.number); });
    int ofSession = -1;
    std::vector<log::PlacedSet> held;
    std::int64_t done = 0;
    for (const std::size_t i : inOrder) {
        if (done++ % 256 == 0)
            tell(m_settings.progress, done, static_cast<std::int64_t>(inOrder.size()));
        const StagedSet& staged = staging.sets[i];
        const auto at = static_cast<std::size_t>(staged.session);
        const LiftId lift = m_liftIds[static_cast<std::size_t>(staged.lift)];
        if (m_sessionIds[at] == SessionId{} || lift == LiftId{})
            continue; // the session or the lift itself was refused
        if (staged.session != ofSession) {
            ofSession = staged.session;
            held = m_sessionWasThere[at] ? m_log.session(m_sessionIds[at]).sets
                                         : std::vector<log::PlacedSet>{};
        }
        const auto known = std::ranges::find_if(held, [&](const log::PlacedSet& placed) {
            return placed.lift == lift && placed.ordinal == staged.number;
        });
        if (known == held.end())
            newSet(staging, staged);
        else
            orRefuse([&] { knownSet(staging, staged, *known); });
    }
}

void Merge::newSet(const Staging& staging, const StagedSet& staged) {
    m_log.add(m_sessionIds[static_cast<std::size_t>(staged.session)],
              m_liftIds[static_cast<std::size_t>(staged.lift)], asSet(staging, staged),
              staged.number);
    ++m_report.setsAdded;
    m_report.repsAdded += static_cast<int>(staged.reps.size());
}

// What the file leaves blank says nothing against the log: a rep that was excluded in the program
// after the file had been imported stays excluded.
void Merge::knownSet(const Staging& staging, const StagedSet& staged, const log::PlacedSet& held) {
    const auto inLog = [&](const Words& kept) {
        return say("%1, as the log has for %2", kept, setName(staging, staged));
    };
    const Set& set = held.set;
    if (set.load != staged.load.value)
        staging.contradict(staged.load.place, "load_kg", asKilograms(staged.load.value),
                           inLog(asKilograms(set.load)));
    if (staged.maximum && staged.maximum->value != set.trueMaximum)
        staging.contradict(staged.maximum->place, "maximum", inWords(staged.maximum->value ? 1 : 0),
                           inLog(inWords(set.trueMaximum ? 1 : 0)));
    if (staged.excluded && staged.excluded->value != set.excluded)
        staging.contradict(staged.excluded->place, "set_excluded", found(staged.excluded->value),
                           inLog(found(set.excluded)));
    Set grown = set;
    const Set file = asSet(staging, staged);
    for (std::size_t i = 0; i < file.reps.size(); ++i) {
        if (i >= set.reps.size()) {
            grown.reps.push_back(file.reps[i]);
            continue;
        }
        const Rep& rep = set.reps[i];
        if (rep.velocity != file.reps[i].velocity)
            staging.contradict(staged.reps[i].place, "velocity", asSpeed(file.reps[i].velocity),
                               inLog(asSpeed(rep.velocity)));
        if (!file.reps[i].excluded.empty() && file.reps[i].excluded != rep.excluded)
            staging.contradict(staged.reps[i].place, "excluded", found(file.reps[i].excluded),
                               inLog(found(rep.excluded)));
    }
    if (!file.note.empty() && set.note.empty())
        grown.note = file.note;
    else if (!file.note.empty() && set.note != file.note)
        flag(say("%1: another note than the log's, which stays (%2)",
                 staging.lineOf(staged.notes.front().place), setName(staging, staged)));
    ++m_report.setsAlreadyThere;
    if (grown == set)
        return;
    m_log.change(held.id, grown);
    m_report.repsAdded += static_cast<int>(grown.reps.size() - set.reps.size());
    m_report.filledIn.push_back(english(setName(staging, staged)) +
                                (grown.reps.size() > set.reps.size() ? ": reps" : ": note"));
}

} // namespace slopebook::exchange
