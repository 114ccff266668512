// SPDX-License-Identifier: GPL-3.0-or-later
// The half of Merge that deals with rows: sessions, sets, reps.
#include "core/exchange/merge.h"

#include "core/exchange/cells.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

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

void Merge::meet(const KnownThings& known) {
    m_known = &known;
    known.each<LiftId>("lift", [&](const std::string& name, LiftId id) { m_lifts.also(name, id); });
    known.each<DeviceId>("device",
                         [&](const std::string& name, DeviceId id) { m_devices.also(name, id); });
    known.each<BlockId>("block", [&](const std::string& name, BlockId id) {
        const auto held = std::ranges::find(m_blocks, id, &Stored<BlockId, Block>::id);
        if (held != m_blocks.end())
            m_blockNames.emplace(nameKey(name), held->value.name);
    });
}

void Merge::names(const Staging& staging) {
    const auto& athletes = staging.athletes.names();
    for (std::size_t i = m_athleteIds.size(); i < athletes.size(); ++i) {
        tell(m_settings.progress, 0, 1);
        m_athleteIds.push_back(athleteFor(athletes[i]));
    }
    for (std::size_t i = 0; i < staging.lifts.size(); ++i) {
        const StagedLift& staged = staging.lifts[i];
        if (i < m_liftIds.size() && (m_liftKindSaid[i] || !staged.kind))
            continue;
        tell(m_settings.progress, 0, 1);
        m_liftIds.resize(std::max(m_liftIds.size(), i + 1));
        m_liftKindSaid.resize(m_liftIds.size());
        m_liftKindSaid[i] = staged.kind ? 1 : 0;
        orRefuse([&] { m_liftIds[i] = liftFor(staged, staging); });
    }
}

void Merge::rows(const Staging& staging) {
    m_report.rows = staging.rows;
    names(staging);
    blocksOf(staging);
    m_sessionIds.assign(staging.sessions.size(), {});
    m_sessionIsNew.assign(staging.sessions.size(), 0);
    m_newConditions.clear();
    m_repeatsToCome.clear();
    const auto byDay = ordered(staging.sessions, [](const StagedSession& s) {
        return std::tuple(s.athlete, s.date, s.ordinal);
    });
    for (const std::size_t i : byDay) {
        tell(m_settings.progress, 0, 1);
        orRefuse([&] {
            const auto known = knownSession(staging, staging.sessions[i]);
            m_sessionIsNew[i] = !known;
            m_sessionIds[i] = known.value_or(SessionId{});
        });
    }
    conditions(staging);
    sets(staging, byDay);
    for (const std::size_t i : byDay)
        if (staging.sessions[i].repeatOf && m_sessionIds[i] != SessionId{} &&
            (!m_sessionIsNew[i] || m_repeatsToCome.contains(i)))
            m_repeats.emplace_back(staging.sessions[i], m_sessionIds[i]);
    takeGaps(staging);
}

// After all sessions are there: a repeat may stand before what it repeats.
void Merge::finishRows(const Staging& staging) {
    orRefuse([&] {
        for (const auto& [staged, id] : m_repeats)
            repeat(staging, staged, id);
    });
}

auto Merge::sessionsOf(AthleteId athlete) -> std::map<SessionKey, Stored<SessionId, SessionHead>>& {
    const auto [it, isNew] = m_sessions.try_emplace(athlete);
    auto& sessions = it->second;
    if (!isNew)
        return sessions;
    std::map<SessionId, Stored<SessionId, SessionHead>> held;
    for (auto& stored : m_log.sessions(athlete)) {
        sessions.emplace(SessionKey{stored.value.date, stored.value.ordinal}, stored);
        held.emplace(stored.id, stored);
    }
    if (m_known)
        m_known->eachSession(athlete, [&](const SessionKey& day, SessionId id) {
            if (const auto found = held.find(id); found != held.end())
                sessions.insert_or_assign(day, found->second);
        });
    return sessions;
}

/// The session where the log had it before; NotInOrder where it came with these rows.
std::optional<SessionId> Merge::knownSession(const Staging& staging, const StagedSession& staged) {
    const AthleteId athlete = m_athleteIds[static_cast<std::size_t>(staged.athlete)];
    const SessionKey key{staged.date, staged.ordinal};
    if (m_added.contains({athlete, key}))
        throw NotInOrder{};
    auto& held = sessionsOf(athlete);
    const auto it = held.find(key);
    if (it == held.end())
        return std::nullopt;
    if (!m_met.insert(it->second.id).second) // a part of it was handed over before
        throw NotInOrder{};
    fillHead(staging, staged, it->second);
    return it->second.id;
}

std::optional<SessionId> Merge::sessionOn(AthleteId athlete, const SessionKey& key) {
    if (const auto added = m_added.find({athlete, key}); added != m_added.end())
        return added->second;
    const auto& held = sessionsOf(athlete);
    const auto it = held.find(key);
    return it == held.end() ? std::nullopt : std::optional(it->second.id);
}

std::size_t Merge::OnDaySpread::operator()(const OnDay& day) const noexcept {
    return Spread{}(StagedDay{static_cast<int>(raw(day.athlete)), day.key.first, day.key.second});
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

/// "2026-03-14#2".
std::optional<Merge::SessionKey> Merge::repeatedDay(const std::string& key) {
    const auto hash = key.find('#');
    const auto date = parseIsoDate(std::string_view(key).substr(0, hash));
    const auto ordinal = hash == std::string::npos
                             ? std::optional(1)
                             : readCount(std::string_view(key).substr(hash + 1));
    return date && ordinal ? std::optional(SessionKey{*date, *ordinal}) : std::nullopt;
}

void Merge::repeat(const Staging& staging, const StagedSession& staged, SessionId id) {
    const auto refuse = [&](Phrase expected) {
        staging.contradict(staged.repeatOf->place, "repeat_of", found(staged.repeatOf->value),
                           say(expected));
    };
    const AthleteId athlete = m_athleteIds[static_cast<std::size_t>(staged.athlete)];
    const auto day = repeatedDay(staged.repeatOf->value);
    if (!day)
        refuse("the day of a session, such as 2026-03-14, or 2026-03-14#2");
    const auto target = sessionOn(athlete, *day);
    if (!target || target == id)
        refuse("another session of the same athlete, in the files or in the log");
    const SessionKey key{staged.date, staged.ordinal};
    if (m_added.contains({athlete, key})) {
        SessionHead head = m_log.session(id).head.value;
        head.repeatOf = target;
        m_log.change(id, head);
        return;
    }
    auto& held = sessionsOf(athlete).find(key)->second;
    if (held.value.repeatOf == target)
        return;
    if (held.value.repeatOf)
        refuse("the session that it repeats in the log");
    held.value.repeatOf = target;
    m_log.change(held.id, held.value);
    m_report.filledIn.push_back(english(about(staging, staged)) + ": repeats " +
                                staged.repeatOf->value);
}

// By session, the sessions in the given order.
void Merge::sets(const Staging& staging, const std::vector<std::size_t>& sessionsInOrder) {
    std::vector<std::size_t> rank(staging.sessions.size());
    for (std::size_t i = 0; i < sessionsInOrder.size(); ++i)
        rank[sessionsInOrder[i]] = i;
    const auto inOrder = ordered(staging.sets, [&](const StagedSet& s) {
        return std::tuple(rank[static_cast<std::size_t>(s.session)], s.lift, s.number);
    });
    std::size_t from = 0;
    for (const std::size_t at : sessionsInOrder) {
        std::size_t to = from;
        while (to < inOrder.size() &&
               static_cast<std::size_t>(staging.sets[inOrder[to]].session) == at)
            ++to;
        const auto itsSets = std::span(inOrder).subspan(from, to - from);
        from = to;
        told(itsSets.size(), inOrder.size());
        if (m_sessionIsNew[at])
            newSession(staging, at, itsSets);
        else if (m_sessionIds[at] != SessionId{}) // else it was refused itself
            knownSets(staging, at, itsSets);
    }
    writeNew(staging);
}

void Merge::told(std::size_t sets, std::size_t ofSets) {
    const std::int64_t before = m_setsDone / 256;
    m_setsDone += static_cast<std::int64_t>(sets);
    if (m_setsDone / 256 != before)
        tell(m_settings.progress, m_setsDone,
             std::max(m_setsDone, static_cast<std::int64_t>(ofSets)));
}

void Merge::newSession(const Staging& staging, std::size_t at,
                       std::span<const std::size_t> itsSets) {
    constexpr std::size_t together = 4096; // sets
    const StagedSession& staged = staging.sessions[at];
    log::NewSession made;
    made.head.athlete = m_athleteIds[static_cast<std::size_t>(staged.athlete)];
    made.head.date = staged.date;
    made.head.ordinal = staged.ordinal;
    if (staged.bodyMass)
        made.head.bodyMass = staged.bodyMass->value;
    if (staged.note)
        made.head.note = staged.note->value;
    if (const auto day = staged.repeatOf ? repeatedDay(staged.repeatOf->value) : std::nullopt)
        made.head.repeatOf = sessionOn(made.head.athlete, *day);
    if (staged.repeatOf && !made.head.repeatOf)
        m_repeatsToCome.insert(at);
    if (const auto conditions = m_newConditions.find(at); conditions != m_newConditions.end())
        made.conditions = std::move(conditions->second);
    for (const std::size_t i : itsSets) {
        const StagedSet& set = staging.sets[i];
        const LiftId lift = m_liftIds[static_cast<std::size_t>(set.lift)];
        if (lift == LiftId{})
            continue; // the lift itself was refused
        made.sets.push_back({.lift = lift, .ordinal = set.number, .set = asSet(staging, set)});
        ++m_report.setsAdded;
        m_report.repsAdded += static_cast<int>(set.reps.size());
    }
    ++m_report.sessionsAdded;
    m_newSets += made.sets.size();
    m_new.push_back(std::move(made));
    m_newAt.push_back(at);
    if (m_newSets >= together)
        writeNew(staging);
}

void Merge::writeNew(const Staging& staging) {
    const auto ids = log::addSessions(m_log, std::exchange(m_new, {}));
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const StagedSession& staged = staging.sessions[m_newAt[i]];
        m_sessionIds[m_newAt[i]] = ids[i];
        m_added.emplace(OnDay{m_athleteIds[static_cast<std::size_t>(staged.athlete)],
                              SessionKey{staged.date, staged.ordinal}},
                        ids[i]);
    }
    m_newAt.clear();
    m_newSets = 0;
}

void Merge::knownSets(const Staging& staging, std::size_t at,
                      std::span<const std::size_t> itsSets) {
    if (itsSets.empty())
        return;
    const std::vector<log::PlacedSet> held = m_log.session(m_sessionIds[at]).sets;
    for (const std::size_t i : itsSets) {
        const StagedSet& staged = staging.sets[i];
        const LiftId lift = m_liftIds[static_cast<std::size_t>(staged.lift)];
        if (lift == LiftId{})
            continue; // the lift itself was refused
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
    const bool lifted = staged.outcome ? file.outcome == Outcome::Lifted : !file.reps.empty();
    if (staged.outcome && file.outcome != set.outcome)
        staging.contradict(staged.outcome->place, "outcome", found(std::string(word(file.outcome))),
                           inLog(found(std::string(word(set.outcome)))));
    if (lifted && set.outcome == Outcome::NotLifted)
        staging.contradict(staged.load.place, "outcome", found(""),
                           inLog(found(std::string(word(set.outcome)))));
    if (staged.reason && !set.reason.empty() && staged.reason->value != set.reason)
        staging.contradict(staged.reason->place, "reason", found(staged.reason->value),
                           inLog(found(set.reason)));
    if (staged.reason)
        grown.reason = staged.reason->value;
    if (staged.effort && set.effort && staged.effort->value != *set.effort)
        staging.contradict(staged.effort->place, "rpe",
                           figure(writeNumber(staged.effort->value.value())),
                           inLog(figure(writeNumber(set.effort->value()))));
    if (staged.effort)
        grown.effort = staged.effort->value;
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
