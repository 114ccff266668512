// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/followparts.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/datedspeeds.h"
#include "core/answers/method.h"
#include "core/model/phrases/answers.h"
#include "core/stats/dunnett.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iterator>
#include <memory>
#include <utility>

namespace slopebook::answers {

namespace {

std::vector<double> seenNear(const LiftSession& session, Mass load, Mass plateStep) {
    std::vector<double> seen;
    for (const Point& p : session.points)
        if (2 * std::llabs(massFromKilograms(p.load).grams - load.grams) <= plateStep.grams)
            seen.push_back(p.velocity);
    return seen;
}

} // namespace

Followed seenAndLine(const Lift& lift, const Answer<Mvt>& mvt, const LiftSession& session,
                     Mass load, const ComparisonSettings& settings, Mass plateStep) {
    const auto found =
        profile(lift, mvt, session, settings.level, {settings.dayNoise, settings.bend});
    Followed f{.session = session,
               .seen = seenNear(session, load, plateStep),
               .line = found ? Answer<double>(found->line.at(kilograms(load)))
                             : Answer<double>(found.why()),
               .oneRm = found ? found->oneRm : Answer<OneRm>(found.why())};
    if (!found)
        return f;
    const double x = kilograms(load);
    f.extrapolated = x < found->lightest || x > found->heaviest;
    if (found->line.hasInference()) {
        f.se = found->line.seAt(x);
        f.interval = stats::meanInterval(found->line, x, settings.level);
    }
    return f;
}

std::optional<DeviceBias> biasAgainst(const LiftSession& baseline, const LiftSession& session,
                                      const ComparisonSettings& settings,
                                      const std::map<SessionId, DeviceBias>& biases) {
    if (baseline.conditions.device == session.conditions.device)
        return std::nullopt;
    if (const auto own = biases.find(session.session); own != biases.end())
        return own->second;
    return settings.deviceBias;
}

bool holds(const std::vector<Note>& notes, Note::Kind kind) {
    return std::ranges::find(notes, kind, &Note::kind) != notes.end();
}

Answer<Trend> trendOf(const std::vector<Followed>& sessions, double level) {
    DatedSpeeds speeds;
    int count = 0;
    for (const Followed& f : sessions)
        if (f.line && !f.extrapolated && f.session.conditions.notComparable.empty()) {
            speeds.add(f.session.date, *f.line - f.bias.value_or(0));
            ++count;
        }
    if (count < daysOfASeasonsTrend)
        return NoAnswer{NoAnswer::Why::TooFewSessions,
                        say("a trend needs three sessions that cover the load")};
    auto trend = speeds.trend(level);
    if (trend) // its drawing begins with the season
        trend->start -=
            trend->perWeek / 7 *
            static_cast<double>(daysBetween(sessions.front().session.date, speeds.first()));
    return trend;
}

std::optional<double> VarianceAt::operator()(const LiftSession& session) const {
    const auto found = profile(m_lift, m_mvt, session, m_settings.level);
    if (!found || !found->line.hasInference())
        return std::nullopt;
    const double se = found->line.seAt(m_load);
    return se * se + dayOf(m_settings.dayNoise, found->line, found->referenceMax()).at(m_load);
}

CriticalOf manyLooks(const std::optional<double>& baseline, std::span<const double> others) {
    if (!baseline || !(*baseline > 0))
        return stats::tOf;
    std::vector<double> shared;
    for (const double other : others)
        shared.push_back(std::min(0.999, std::sqrt(*baseline / (*baseline + other))));
    if (shared.size() < 2)
        return stats::tOf;
    const auto known = std::make_shared<std::map<std::pair<double, double>, double>>();
    return [shared, known](double level) -> stats::Critical {
        return [shared, known, level](double df) {
            const auto [place, isNew] = known->try_emplace({level, df}, 0);
            if (isNew)
                place->second = stats::dunnettCritical(shared, df, level);
            return place->second;
        };
    };
}

std::vector<double> variancesOf(std::span<const LiftSession> sessions, const VarianceAt& variance,
                                const std::function<bool(const LiftSession&)>& isRead) {
    std::vector<double> all;
    for (const LiftSession& session : sessions)
        if (const auto own = isRead(session) ? variance(session) : std::nullopt)
            all.push_back(*own);
    return all;
}

namespace {

/// What was different around which days, told by what: another device has notes of its own.
std::vector<Note> conditionsOfDays(const Follow& f, Devices devices) {
    const Followed& base = f.sessions[f.baseline];
    std::vector<std::pair<Words, std::vector<const Followed*>>> told;
    for (const Followed& each : f.sessions) {
        if (!each.change && !each.seenChange)
            continue; // of the baseline, or nothing is said of it
        std::vector<ConditionChange> changes =
            conditionChanges(base.session.conditions, each.session.conditions, devices);
        std::erase_if(changes, [](const ConditionChange& change) {
            return change.what == ConditionChange::Of::Device;
        });
        if (changes.empty())
            continue;
        const Words under = underWords(changes);
        const auto same = std::ranges::find(told, under, [](const auto& of) { return of.first; });
        if (same != told.end())
            same->second.push_back(&each);
        else
            told.push_back({under, {&each}});
    }
    std::vector<Note> notes;
    for (const auto& [under, days] : told) {
        const Words first = sessionWords(days.front()->session.date, days.front()->session.ordinal);
        const std::size_t more = days.size() - 1;
        notes.push_back(
            {Note::Kind::ContextChanged,
             more == 0   ? say("%1 was tested %2 than the baseline: part of its change may be that",
                               first, under)
             : more == 1 ? say("%1 and one more session were tested %2 than the baseline: part of "
                               "their change may be that",
                               first, under)
                         : say("%1 and %3 more sessions were tested %2 than the baseline: part of "
                               "their change may be that",
                               first, under, more)});
    }
    return notes;
}

} // namespace

std::vector<Note> followNotes(const Follow& f, const ComparisonSettings& settings, bool ofABlock) {
    std::vector<Note> notes;
    const Followed& base = f.sessions[f.baseline];
    if (!base.line && !ofABlock)
        notes.push_back({Note::Kind::BaselineHasNoLine,
                         say("the baseline session has no line, so no change is judged: %1",
                             base.line.why().reason)});
    else if (!base.se && !ofABlock)
        notes.push_back({Note::Kind::TwoPointLine,
                         say("the baseline's line has two points, so no change can be judged: it "
                             "needs a third load")});
    const auto otherDevice = [&](const Followed& each) {
        return each.session.conditions.device != base.session.conditions.device;
    };
    const auto corrected = [&](const Followed& each) { return each.bias.has_value(); };
    if (std::ranges::any_of(f.sessions, corrected))
        notes.push_back({Note::Kind::DeviceCorrected,
                         say("changes across devices and the trend have the device's bias taken "
                             "off")});
    if (std::ranges::any_of(f.sessions, [&](const Followed& each) {
            return otherDevice(each) && !corrected(each);
        }))
        notes.push_back({Note::Kind::DifferentDevices,
                         say("some sessions were measured with another device than the baseline: "
                             "part of their change, and of the trend, may be the device's")});
    if (std::ranges::any_of(f.sessions, &Followed::extrapolated))
        notes.push_back({Note::Kind::LoadNotReached,
                         say("sessions whose loads do not reach %1 are shown as extrapolated and "
                             "take no part in the trend",
                             f.load)});
    if (std::ranges::any_of(f.sessions, [](const Followed& each) {
            return !each.session.conditions.notComparable.empty();
        }))
        notes.push_back({Note::Kind::ContextChanged,
                         say("sessions that are not comparable are shown, and take no part in the "
                             "trend")});
    std::ranges::move(conditionsOfDays(f, settings.devices), std::back_inserter(notes));
    if (f.trend && f.trend->interval)
        notes.push_back({Note::Kind::OfSeveral,
                         say("a trend takes days as alike, 0.5 from one to the next; where they "
                             "are 0.7, of nothing 9 % over six days and 17 % over twenty are read "
                             "as a trend instead of 5")});
    const auto own = settings.smallestAt.find(f.load);
    if (own != settings.smallestAt.end())
        notes.push_back(smallestSpeedNote(own->second));
    else if (settings.smallestVelocity)
        notes.push_back(smallestSpeedNote(*settings.smallestVelocity));
    if (settings.dayNoise.origin != DayNoise::Origin::None)
        notes.push_back(dayNoiseNote(settings.dayNoise));
    else
        notes.push_back({Note::Kind::DayNoiseSource,
                         say("no day-to-day noise is known: no smallest detectable change is "
                             "drawn")});
    if (own == settings.smallestAt.end() && settings.smallestVelocity)
        citeSmallest(*settings.smallestVelocity, notes);
    citeDayNoise(settings.dayNoise, notes);
    return notes;
}

} // namespace slopebook::answers
