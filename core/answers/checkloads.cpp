// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/checkloads.h"

#include "core/answers/comparisonnotes.h"
#include "core/answers/followparts.h"
#include "core/answers/sharedloads.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

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
    const VarianceAt variance(lift, mvt, load, settings);
    const CriticalOf familyWise =
        manyLooks(variance(sessions[baseline]),
                  variancesOf(sessions, variance, [&](const LiftSession& session) {
                      return session.session != sessions[baseline].session;
                  }));
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
    f.notes = followNotes(f, settings, false);
    f.notes.insert(f.notes.end(), ofChanges.begin(), ofChanges.end());
    return f;
}

} // namespace slopebook::answers
