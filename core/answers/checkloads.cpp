// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/checkloads.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/figures.h"
#include "core/answers/sharedloads.h"
#include "core/model/phrases/answers.h"
#include "core/stats/dunnett.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
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

/// The change at the load from the baseline to a session; nothing where they cannot be compared.
/// Adds what is to be said of it.
std::optional<ChangeAt> changeFrom(const Lift& lift, const Answer<Mvt>& mvt,
                                   const LiftSession& baseline, const LiftSession& session,
                                   Mass load, ComparisonSettings settings,
                                   std::vector<Note>& notes) {
    settings.checkLoads = {load};
    const auto compared = compare(lift, mvt, baseline, session, settings);
    if (!compared)
        return std::nullopt;
    const auto fair = std::ranges::find(compared->notes, Note::Kind::AsManyReps, &Note::kind);
    if (fair != compared->notes.end() && !holds(notes, Note::Kind::AsManyReps))
        notes.push_back(*fair);
    return *std::ranges::find(compared->at, load, &ChangeAt::load);
}

/// The same from what was seen at exactly that load on both days.
std::optional<ReadChange> seenChangeFrom(const LiftSession& baseline, const LiftSession& session,
                                         Mass load, const ComparisonSettings& settings,
                                         const PointNoise& noise) {
    const auto shared = sharedLoadChanges(baseline, session, settings, noise);
    if (!shared)
        return std::nullopt;
    const auto at = std::ranges::find(*shared, load, &SharedLoadChange::load);
    return at == shared->end() ? std::nullopt : std::optional(at->read);
}

Answer<Trend> trendOf(const std::vector<Followed>& sessions, double level) {
    std::vector<double> weeks;
    std::vector<double> velocities;
    for (const Followed& f : sessions)
        if (f.line && !f.extrapolated && f.session.conditions.notComparable.empty()) {
            weeks.push_back(
                static_cast<double>(daysBetween(sessions.front().session.date, f.session.date)) /
                7.0);
            velocities.push_back(*f.line - f.bias.value_or(0));
        }
    if (weeks.size() < 3)
        return NoAnswer{NoAnswer::Why::TooFewSessions,
                        say("a trend needs three sessions that cover the load")};
    const auto line = stats::fitLine(weeks, velocities);
    if (!line)
        return NoAnswer{NoAnswer::Why::TooFewSessions,
                        say("a trend needs sessions on more than one day")};
    return Trend{.perWeek = line->slope,
                 .interval = stats::slopeInterval(*line, level),
                 .sessions = line->n,
                 .start = line->at(0)};
}

/// The half-width of a reading between two tests like the baseline, m/s.
std::optional<double> detectableFrom(const Lift& lift, const Answer<Mvt>& mvt,
                                     const LiftSession& baseline, Mass load,
                                     const ComparisonSettings& settings) {
    if (settings.dayNoise.origin == DayNoise::Origin::None)
        return std::nullopt;
    LiftSession again = baseline;
    again.session = SessionId{raw(baseline.session) + 1};
    ComparisonSettings alike = settings;
    alike.deviceBias.reset();
    alike.asManyReps = {};
    std::vector<Note> unsaid;
    const auto change = changeFrom(lift, mvt, baseline, again, load, alike, unsaid);
    if (!change)
        return std::nullopt;
    return change->read.interval.high;
}

/// The newest session beside the baseline is one look; those before it are many.
std::size_t newestBeside(std::size_t baseline, std::size_t count) {
    return baseline + 1 == count ? baseline : count - 1;
}

/// Dunnett's quantile over all sessions that are compared with the baseline at that load, by their
/// correlations; worked out once for each df and level.
CriticalOf manyLooks(const Lift& lift, const Answer<Mvt>& mvt,
                     std::span<const LiftSession> sessions, Mass load, std::size_t baseline,
                     const ComparisonSettings& settings) {
    const double x = kilograms(load);
    const auto varianceAt = [&](const LiftSession& session) -> std::optional<double> {
        const auto found = profile(lift, mvt, session, settings.level);
        if (!found || !found->line.hasInference())
            return std::nullopt;
        const double se = found->line.seAt(x);
        return se * se + dayOf(settings.dayNoise, found->line, found->referenceMax()).at(x);
    };
    const auto own = varianceAt(sessions[baseline]);
    if (!own || !(*own > 0))
        return stats::tOf;
    std::vector<double> shared;
    for (std::size_t i = 0; i < sessions.size(); ++i)
        if (const auto other = i == baseline ? std::nullopt : varianceAt(sessions[i]))
            shared.push_back(std::min(0.999, std::sqrt(*own / (*own + *other))));
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

std::vector<Note> notesOf(const Follow& f, const ComparisonSettings& settings) {
    std::vector<Note> notes;
    const Followed& base = f.sessions[f.baseline];
    if (!base.line)
        notes.push_back({Note::Kind::BaselineHasNoLine,
                         say("the baseline session has no line, so no change is judged: %1",
                             base.line.why().reason)});
    else if (!base.se)
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

} // namespace

Answer<Follow> follow(const Lift& lift, const Answer<Mvt>& mvt,
                      std::span<const LiftSession> sessions, Mass load, std::size_t baseline,
                      const ComparisonSettings& settings, Mass plateStep,
                      const std::map<SessionId, DeviceBias>& biases) {
    if (sessions.empty())
        return NoAnswer{NoAnswer::Why::TooFewSessions, say("no session of this lift")};
    if (baseline >= sessions.size())
        return NoAnswer{NoAnswer::Why::NoBaseline, say("the baseline is none of the sessions")};
    Follow f{.load = load, .baseline = baseline, .trend = NoAnswer{}};
    const PointNoise ofPoints = pointNoiseFrom(settings.dayNoise, sessions);
    std::vector<Note> ofChanges;
    const std::size_t newest = newestBeside(baseline, sessions.size());
    const CriticalOf familyWise = manyLooks(lift, mvt, sessions, load, baseline, settings);
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        f.sessions.push_back(seenAndLine(lift, mvt, sessions[i], load, settings, plateStep));
        ComparisonSettings own = settings;
        own.deviceBias = biasAgainst(sessions[baseline], sessions[i], settings, biases);
        if (i != newest)
            own.critical = familyWise;
        if (own.deviceBias)
            f.sessions.back().bias = own.deviceBias->first;
        if (i == baseline)
            continue;
        Followed& followed = f.sessions.back();
        followed.change =
            changeFrom(lift, mvt, sessions[baseline], sessions[i], load, own, ofChanges);
        if (!followed.change)
            followed.seenChange =
                seenChangeFrom(sessions[baseline], sessions[i], load, own, ofPoints);
    }
    if (std::ranges::any_of(f.sessions, [](const Followed& s) { return bool(s.seenChange); }))
        ofChanges.push_back(asSeenNote());
    f.trend = trendOf(f.sessions, settings.level);
    f.smallestDetectable = detectableFrom(lift, mvt, sessions[baseline], load, settings);
    f.notes = notesOf(f, settings);
    f.notes.insert(f.notes.end(), ofChanges.begin(), ofChanges.end());
    return f;
}

} // namespace slopebook::answers
