// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/agreement.h"

#include "core/answers/figures.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

namespace slopebook::answers {

namespace {

using Day = std::tuple<AthleteId, LiftId, Date>;

std::map<Day, std::vector<const LiftSession*>> byDay(std::span<const LiftSession> sessions,
                                                     DeviceId device) {
    std::map<Day, std::vector<const LiftSession*>> days;
    for (const LiftSession& s : sessions)
        if (s.conditions.device == device && !s.points.empty())
            days[{s.athlete, s.lift, s.date}].push_back(&s);
    for (auto& [day, list] : days)
        std::ranges::stable_sort(list, {}, &LiftSession::ordinal);
    return days;
}

bool repeats(const LiftSession& a, const LiftSession& b) {
    return a.repeatOf == b.session || b.repeatOf == a.session;
}

/// Indices of the points at each load, in order of entry.
std::map<Mass, std::vector<std::size_t>> byLoad(const LiftSession& session) {
    std::map<Mass, std::vector<std::size_t>> loads;
    for (std::size_t i = 0; i < session.points.size(); ++i)
        loads[massFromKilograms(session.points[i].load)].push_back(i);
    return loads;
}

using Groups = std::vector<std::vector<double>>;

template <class KeyOf>
Groups differencesBy(const AgreementStudy& study, KeyOf keyOf) {
    std::map<decltype(keyOf(study.sets.front())), std::vector<double>> groups;
    for (const PairedSet& set : study.sets)
        groups[keyOf(set)].push_back(set.difference());
    Groups list;
    for (auto& [key, differences] : groups)
        list.push_back(std::move(differences));
    return list;
}

/// Cluster-robust where that makes the wider interval, else of the sets.
stats::Variance varianceOfBias(const AgreementStudy& study, const Groups& groups) {
    const stats::Agreement& a = study.figures;
    const stats::Variance plain{a.biasSe * a.biasSe, a.n - 1.0};
    const auto k = static_cast<double>(groups.size());
    double squares = 0;
    for (const auto& group : groups) {
        double sum = 0;
        for (const double d : group)
            sum += d - a.bias;
        squares += sum * sum;
    }
    const stats::Variance clustered{squares / a.n / a.n * k / (k - 1), k - 1};
    const auto half = [&](const stats::Variance& v) {
        return stats::tCritical(study.level, v.df) * std::sqrt(v.value);
    };
    return half(clustered) > half(plain) ? clustered : plain;
}

/// Limits and intervals by groups, where sets have any.
void group(AgreementStudy& study) {
    using Grouped = AgreementStudy::Grouped;
    const auto tryBy = [&](Grouped by, const Groups& groups) {
        study.groups = stats::groupedLimits(groups, study.level);
        if (!study.groups)
            return false;
        study.grouped = by;
        study.biasVariance = varianceOfBias(study, groups);
        return true;
    };
    stats::Agreement& a = study.figures;
    study.biasVariance = {a.biasSe * a.biasSe, a.n - 1.0};
    if (!tryBy(Grouped::ByAthlete,
               differencesBy(study, [](const PairedSet& set) { return set.athlete; })) &&
        !tryBy(Grouped::BySession, differencesBy(study, [](const PairedSet& set) {
                   return std::pair{set.athlete, set.date};
               })))
        return;
    const double half =
        stats::tCritical(study.level, study.biasVariance.df) * std::sqrt(study.biasVariance.value);
    a.biasInterval = {a.bias - half, a.bias + half};
    a.sd = study.groups->sd;
    a.limits = study.groups->limits;
    a.lowerLimitInterval = study.groups->lowerLimitInterval;
    a.upperLimitInterval = study.groups->upperLimitInterval;
}

std::vector<Note> notesOf(const AgreementStudy& study) {
    std::vector<Note> notes;
    if (study.figures.proportional())
        notes.push_back({Note::Kind::Proportional,
                         say("the devices differ in proportion (least-products slope %1, its "
                             "interval leaves out 1): one bias for all speeds is too simple",
                             figure(study.figures.slope, 3))});
    if (study.unpaired > 0)
        notes.push_back(
            {Note::Kind::Unpaired,
             study.unpaired == 1
                 ? say("1 set of one device has no partner and is left out")
                 : say("%1 sets of one device have no partner and are left out", study.unpaired)});
    if (study.grouped == AgreementStudy::Grouped::ByAthlete)
        notes.push_back({Note::Kind::Other,
                         say("sets of one athlete resemble each other: the limits and the interval "
                             "of the bias count athletes, not sets")});
    if (study.grouped == AgreementStudy::Grouped::BySession)
        notes.push_back({Note::Kind::Other,
                         say("sets of one session resemble each other: the limits and the interval "
                             "of the bias count sessions, not sets, and hold for these athletes "
                             "alone")});
    return notes;
}

} // namespace

std::vector<DevicePair> devicePairs(std::span<const LiftSession> sessions, DeviceId first,
                                    DeviceId second) {
    std::vector<DevicePair> pairs;
    if (first == second)
        return pairs;
    const auto ones = byDay(sessions, first);
    const auto others = byDay(sessions, second);
    for (const auto& [day, list] : ones) {
        const auto there = others.find(day);
        if (there == others.end())
            continue;
        for (std::size_t i = 0; i < std::min(list.size(), there->second.size()); ++i) {
            DevicePair pair{.first = *list[i], .second = *there->second[i]};
            if (!repeats(pair.first, pair.second) && !pairedSets(pair).empty())
                pairs.push_back(std::move(pair));
        }
    }
    std::ranges::stable_sort(pairs, {}, [](const DevicePair& p) {
        return std::tuple{p.first.date, p.first.athlete, p.first.ordinal};
    });
    return pairs;
}

std::vector<PairedSet> pairedSets(const DevicePair& pair) {
    std::vector<PairedSet> sets;
    const auto others = byLoad(pair.second);
    const auto join = [&](std::size_t i, std::size_t j) {
        const Point& a = pair.first.points[i];
        sets.push_back({.athlete = pair.first.athlete,
                        .date = pair.first.date,
                        .load = a.load,
                        .first = a.velocity,
                        .second = pair.second.points[j].velocity});
    };
    for (const auto& [load, mine] : byLoad(pair.first)) {
        const auto there = others.find(load);
        if (there == others.end())
            continue;
        const auto& theirs = there->second;
        if (mine.size() == 1 && theirs.size() == 1) {
            join(mine.front(), theirs.front());
            continue;
        }
        for (const std::size_t i : mine)
            for (const std::size_t j : theirs)
                if (pair.first.points[i].set == pair.second.points[j].set)
                    join(i, j);
    }
    return sets;
}

std::vector<DevicePair> withoutSessions(std::vector<DevicePair> pairs,
                                        std::span<const SessionId> sessions) {
    const auto held = [&](const LiftSession& session) {
        return std::ranges::find(sessions, session.session) != sessions.end();
    };
    std::erase_if(pairs,
                  [&](const DevicePair& pair) { return held(pair.first) || held(pair.second); });
    return pairs;
}

Answer<AgreementStudy> agreementStudy(DeviceId first, DeviceId second,
                                      std::span<const DevicePair> pairs, double level) {
    AgreementStudy study{.first = first, .second = second, .level = level};
    std::set<AthleteId> athletes;
    std::vector<double> x, y;
    for (const DevicePair& pair : pairs) {
        const auto sets = pairedSets(pair);
        study.sessions.push_back(pair);
        athletes.insert(pair.first.athlete);
        study.unpaired += static_cast<int>(pair.first.points.size() + pair.second.points.size() -
                                           2 * sets.size());
        for (const PairedSet& set : sets) {
            x.push_back(set.first);
            y.push_back(set.second);
            study.sets.push_back(set);
        }
    }
    study.athletes = static_cast<int>(athletes.size());
    if (pairs.empty())
        return NoAnswer{
            NoAnswer::Why::TooFewSessions,
            say("no day has a session of this lift on each of the two devices, with the "
                "same loads")};
    const auto figures = stats::agreement(x, y, level);
    if (!figures)
        return NoAnswer{
            NoAnswer::Why::TooFewSets,
            x.size() == 1
                ? say("1 set seen by both devices: agreement needs three or more")
                : say("%1 sets seen by both devices: agreement needs three or more", x.size())};
    study.figures = *figures;
    group(study);
    study.notes = notesOf(study);
    return study;
}

std::optional<std::pair<double, stats::Variance>> biasOf(const AgreementStudy& study,
                                                         std::optional<DeviceId> earlier,
                                                         std::optional<DeviceId> later) {
    if (earlier == study.second && later == study.first)
        return std::pair{study.figures.bias, study.biasVariance};
    if (earlier == study.first && later == study.second)
        return std::pair{-study.figures.bias, study.biasVariance};
    return std::nullopt;
}

} // namespace slopebook::answers
