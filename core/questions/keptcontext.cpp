// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/keptcontext.h"

#include "core/answers/threshold.h"
#include "core/log/snapshot.h"

#include <algorithm>
#include <functional>
#include <set>
#include <utility>

namespace slopebook::questions {

namespace {

/// The sessions of days on which the athlete was measured by more than one device.
std::vector<LiftSession> twoDeviceDays(const std::vector<LiftSession>& ofOne) {
    std::map<Date, std::set<DeviceId>> devices;
    for (const LiftSession& session : ofOne)
        if (session.conditions.device)
            devices[session.date].insert(*session.conditions.device);
    std::vector<LiftSession> found;
    for (const LiftSession& session : ofOne)
        if (session.conditions.device && devices[session.date].size() > 1)
            found.push_back(session);
    return found;
}

bool same(const answers::RepeatPair& one, const answers::RepeatPair& other) {
    return one.first == other.first && one.second == other.second;
}

/// Puts what is the athlete's in place of what was; all is in the athletes' order.
template <class T, class Whose>
void splice(std::vector<T>& all, AthleteId athlete, std::vector<T> fresh, Whose whose) {
    const auto first = std::ranges::lower_bound(all, athlete, {}, whose);
    const auto last = std::ranges::upper_bound(all, athlete, {}, whose);
    const auto common = std::min(last - first, std::ssize(fresh));
    std::ranges::move(fresh.begin(), fresh.begin() + common, first);
    if (first + common != last)
        all.erase(first + common, last);
    else
        all.insert(last, std::make_move_iterator(fresh.begin() + common),
                   std::make_move_iterator(fresh.end()));
}

AthleteId ofPair(const answers::RepeatPair& pair) {
    return pair.second.athlete;
}

} // namespace

const LiftContext& KeptContext::of(const log::Log& log) {
    const log::Moment moment(log);
    const long version = log.dataVersion();
    const bool settled = !log::beingWritten(log); // else it may be taken back without a trace
    if (m_read && settled && version == m_version)
        return m_context;
    auto lift = log.lift(m_lift);
    const bool asBefore = std::exchange(m_read, false) && lift.value == m_context.lift.value;
    const auto changed = m_watch.changed(log);
    m_context.lift = std::move(lift);
    m_context.devices = log.devices();
    if (!asBefore || !changed)
        readAll(log);
    else
        for (const AthleteId athlete : *changed)
            readAnew(log, athlete);
    if (!asBefore || !changed || !changed->empty())
        addUp();
    m_version = settled ? std::optional(version) : std::nullopt;
    m_read = true;
    return m_context;
}

LiftContext KeptContext::taken(const log::Log& log) && {
    of(log);
    m_read = false;
    return std::move(m_context);
}

void KeptContext::readAll(const log::Log& log) {
    m_context = {.lift = std::move(m_context.lift), .devices = std::move(m_context.devices)};
    m_squad = {};
    m_pairs.clear();
    std::vector<LiftSession> ofOne;
    const auto take = [&] {
        if (!ofOne.empty())
            put(ofOne.front().athlete, partOf(ofOne));
        ofOne.clear();
    };
    log.scan({.athlete = {}, .lift = m_lift}, [&](const LiftSession& session) {
        if (!ofOne.empty() && ofOne.front().athlete != session.athlete)
            take();
        m_squad.add(session);
        ofOne.push_back(session);
    });
    take();
}

void KeptContext::readAnew(const log::Log& log, AthleteId athlete) {
    m_squad.forget(athlete);
    std::vector<LiftSession> ofOne;
    log.scan({.athlete = athlete, .lift = m_lift}, [&](const LiftSession& session) {
        m_squad.add(session);
        ofOne.push_back(session);
    });
    put(athlete, partOf(ofOne));
}

KeptContext::Part KeptContext::partOf(const std::vector<LiftSession>& ofOne) const {
    Part part;
    if (std::ranges::any_of(ofOne, [](const auto& s) { return s.repeatOf.has_value(); }))
        part.repeats = answers::repeatPairs(ofOne);
    part.twoDevices = twoDeviceDays(ofOne);
    const Lift& lift = m_context.lift.value;
    if (std::ranges::any_of(ofOne, [](const auto& s) { return s.measuredOneRm.has_value(); }))
        part.estimates = answers::estimatePairs(lift, answers::mvtOf(lift, ofOne), ofOne);
    if (!ofOne.empty())
        part.athletes = {ofOne.front().athlete};
    for (const LiftSession& session : ofOne) {
        const TestDay day{session.athlete, session.date};
        if (!session.points.empty() && (part.days.empty() || part.days.back() != day))
            part.days.push_back(day);
    }
    return part;
}

void KeptContext::put(AthleteId athlete, Part part) {
    splice(m_context.twoDevices, athlete, std::move(part.twoDevices), &LiftSession::athlete);
    splice(m_context.days, athlete, std::move(part.days), &TestDay::athlete);
    splice(m_context.athletes, athlete, std::move(part.athletes), std::identity());
    splice(m_context.estimates, athlete, std::move(part.estimates),
           &answers::EstimatePair::athlete);
    const auto first = std::ranges::lower_bound(m_context.repeats, athlete, {}, ofPair);
    const auto last = std::ranges::upper_bound(m_context.repeats, athlete, {}, ofPair);
    if (std::equal(first, last, part.repeats.begin(), part.repeats.end(), same))
        return;
    // What was worked out of pairs that are others now holds no more.
    m_context.noise.erase(std::nullopt);
    for (auto pair = first; pair != last; ++pair)
        m_context.noise.erase(pair->second.conditions.device);
    for (const answers::RepeatPair& pair : part.repeats)
        m_context.noise.erase(pair.second.conditions.device);
    std::vector<PairSums> sums;
    for (const answers::RepeatPair& pair : part.repeats)
        sums.push_back({.athlete = athlete,
                        .device = pair.second.conditions.device,
                        .sums = answers::repeatSums({&pair, 1})});
    splice(m_pairs, athlete, std::move(sums), &PairSums::athlete);
    splice(m_context.repeats, athlete, std::move(part.repeats), ofPair);
}

// Pair by pair in their order, as repeatSums() of all does: the same to the last digit.
void KeptContext::addUp() {
    m_context.sums = {{std::nullopt, {}}};
    for (const PairSums& pair : m_pairs) {
        m_context.sums[std::nullopt] += pair.sums;
        if (pair.device)
            m_context.sums[pair.device] += pair.sums;
    }
    m_context.smallest = answers::smallestChanges(m_context.lift.value, m_squad, std::nullopt);
}

} // namespace slopebook::questions
