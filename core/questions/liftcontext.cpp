// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/liftcontext.h"

#include "core/answers/figures.h"
#include "core/answers/published.h"
#include "core/answers/threshold.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/blockquestions.h"
#include "core/questions/followmaxima.h"
#include "core/questions/keptcontext.h"

#include <algorithm>
#include <array>
#include <set>

namespace slopebook::questions {

namespace {

constexpr double contextLevel = 0.95; // of its intervals of noise

std::vector<answers::RepeatPair> onDevice(std::vector<answers::RepeatPair> pairs,
                                          std::optional<DeviceId> device) {
    if (device)
        std::erase_if(pairs,
                      [&](const auto& pair) { return pair.second.conditions.device != device; });
    return pairs;
}

/// The agreement of the devices of two sessions by what else the log holds of both. Nothing where
/// they have one device, or it is not known.
std::optional<Answer<answers::AgreementStudy>> studyBeside(std::span<const answers::DevicePair> all,
                                                           const LiftSession& one,
                                                           const LiftSession& other, double level) {
    if (!one.conditions.device || !other.conditions.device ||
        one.conditions.device == other.conditions.device)
        return std::nullopt;
    const std::array compared{one.session, other.session};
    const auto pairs = answers::withoutSessions({all.begin(), all.end()}, compared);
    return answers::agreementStudy(*one.conditions.device, *other.conditions.device, pairs, level);
}

/// Where the only days with both devices are those that are compared: said, for it would be asked.
std::optional<answers::Note> onlyTheCompared(std::span<const answers::DevicePair> all,
                                             const LiftSession& from, const LiftSession& to) {
    const std::array compared{from.session, to.session};
    if (answers::withoutSessions({all.begin(), all.end()}, compared).size() == all.size())
        return std::nullopt; // the study there is has nothing of these, and is too small
    const bool sameSets = std::ranges::any_of(all, [&](const answers::DevicePair& pair) {
        return (pair.first.session == from.session && pair.second.session == to.session) ||
               (pair.first.session == to.session && pair.second.session == from.session);
    });
    return answers::Note{
        answers::Note::Kind::NoStudyBeside,
        sameSets
            ? say("both devices measured these same sets, so the change is between the devices, "
                  "not in the athlete; too little is known of how the devices agree besides these "
                  "sessions, and a bias found in them would hide what they say: nothing is taken "
                  "off")
            : say("too little is known of how the devices agree besides these sessions, and a "
                  "bias found in them would hide what they say: nothing is taken off, and part of "
                  "the change may be the devices'")};
}

/// The bias of the later device and what is to be said of it; nothing where there is no study.
void correctDevices(const LiftContext& context, const LiftSession& from, const LiftSession& to,
                    answers::ComparisonSettings& settings) {
    if (!from.conditions.device || !to.conditions.device ||
        from.conditions.device == to.conditions.device)
        return;
    const auto all =
        answers::devicePairs(context.twoDevices, *from.conditions.device, *to.conditions.device);
    const auto study = *studyBeside(all, from, to, settings.level);
    if (!study) {
        if (auto note = onlyTheCompared(all, from, to))
            settings.ofTheDevice.push_back(std::move(*note));
        return;
    }
    settings.deviceBias = answers::biasOf(*study, from.conditions.device, to.conditions.device);
    settings.ofTheDevice.push_back(
        {answers::Note::Kind::DeviceStudy,
         say("the device's bias comes from %1 of %2 measured by both at once",
             study->figures.n == 1 ? say("1 set") : say("%1 sets", study->figures.n),
             study->athletes == 1 ? say("1 athlete") : say("%1 athletes", study->athletes))});
    if (study->figures.proportional())
        settings.ofTheDevice.push_back(study->notes.front());
}

/// Who has a day of the lift in either period, by their keys.
std::vector<AthleteId> testedIn(const LiftContext& context, const answers::Period& from,
                                const answers::Period& to) {
    std::vector<AthleteId> tested;
    for (const TestDay& day : context.days) {
        const auto in = [&](const answers::Period& period) {
            return period.first <= day.date && day.date <= period.last;
        };
        if ((in(from) || in(to)) && (tested.empty() || tested.back() != day.athlete))
            tested.push_back(day.athlete);
    }
    return tested;
}

/// Everybody who has sessions of the lift, by name; the sessions are read of those alone who were
/// tested in either period: what a log holds besides costs nothing.
std::vector<answers::SquadMember> squadMembers(const log::Log& log, const LiftContext& context,
                                               const answers::Period& from,
                                               const answers::Period& to,
                                               const Progress& progress) {
    // Half of the way is reading them, half comparing them.
    const auto tested = testedIn(context, from, to);
    const auto count = static_cast<std::int64_t>(std::max<std::size_t>(tested.size(), 1));
    const Stored<LiftId, Lift>& lift = context.lift;
    std::vector<answers::SquadMember> members;
    std::int64_t done = 0;
    for (auto& athlete : log.athletes()) {
        if (!std::ranges::binary_search(context.athletes, athlete.id))
            continue;
        answers::SquadMember member{.athlete = athlete.id, .name = std::move(athlete.value.name)};
        if (std::ranges::binary_search(tested, athlete.id)) {
            member.sessions = log.liftSessions({.athlete = athlete.id, .lift = lift.id});
            member.mvt = answers::mvtOf(lift.value, member.sessions);
            tell(progress, ++done * 500 / count, 1000);
        }
        member.checkLoads = log.checkLoads(athlete.id, lift.id);
        members.push_back(std::move(member));
    }
    return members;
}

} // namespace

LiftContext liftContext(const log::Log& log, LiftId lift) {
    return KeptContext(lift).taken(log);
}

const Answer<answers::LiftNoise>& noiseOf(const LiftContext& context,
                                          std::optional<DeviceId> device) {
    const auto known = context.noise.find(device);
    if (known != context.noise.end())
        return known->second;
    const Lift& lift = context.lift.value;
    return context.noise
        .emplace(device, answers::liftNoise(lift, answers::chooseMvt(lift, {}),
                                            onDevice(context.repeats, device), contextLevel))
        .first->second;
}

answers::DayNoise dayNoiseOf(const LiftContext& context, const Background& about,
                             std::optional<DeviceId> device) {
    const stats::RepeatSums own =
        answers::repeatSums(onDevice(answers::repeatPairs(about.sessions), device));
    const auto all = context.sums.find(device);
    return answers::chooseDayNoise(
        own, all == context.sums.end() ? stats::RepeatSums{} : all->second.without(own),
        publishedDayNoise(context.lift.value));
}

Background within(const LiftContext& context, Background about, std::optional<DeviceId> device) {
    about.dayNoise = dayNoiseOf(context, about, device);
    if (const auto made = answers::calibrate(context.estimates, about.athlete.id))
        about.calibration = *made;
    return about;
}

Answer<std::vector<answers::SharedLoadChange>>
sharedLoadsOf(const log::Log& log, const LiftContext& context, const Background& about,
              const LiftSession& from, const LiftSession& to, const AskSettings& settings) {
    answers::ComparisonSettings with = comparisonSettings(context, about, from, to, settings);
    with.asManyReps = asManyReps(log, about.lift.value);
    return answers::sharedLoadChanges(from, to, with,
                                      answers::pointNoiseFrom(with.dayNoise, about.sessions));
}

std::optional<answers::DeviceBias> deviceBiasOf(const LiftContext& context,
                                                const LiftSession& reference,
                                                const LiftSession& session, double level) {
    if (!reference.conditions.device || !session.conditions.device ||
        reference.conditions.device == session.conditions.device)
        return std::nullopt;
    const auto pairs = answers::devicePairs(context.twoDevices, *reference.conditions.device,
                                            *session.conditions.device);
    const auto study = studyBeside(pairs, reference, session, level);
    if (!study || !*study)
        return std::nullopt;
    return answers::biasOf(**study, reference.conditions.device, session.conditions.device);
}

std::vector<NoiseGroup> noiseGroups(const log::Log& log, LiftId lift,
                                    std::optional<AthleteId> athlete, double level) {
    return noiseGroups(log, liftContext(log, lift), athlete, level);
}

std::vector<NoiseGroup> noiseGroups(const log::Log& log, const LiftContext& context,
                                    std::optional<AthleteId> athlete, double level) {
    const Lift& value = context.lift.value;
    std::set<std::optional<DeviceId>> devices;
    for (const answers::RepeatPair& pair : context.repeats)
        devices.insert(pair.second.conditions.device);
    if (devices.empty())
        devices.insert(std::nullopt);
    std::optional<Background> about;
    if (athlete)
        about = background(log, *athlete, context.lift.id);
    const auto names = log.devices();
    std::vector<NoiseGroup> groups;
    for (const auto& device : devices) {
        const auto measured = [&](const std::vector<answers::RepeatPair>& all) {
            auto pairs = all;
            std::erase_if(
                pairs, [&](const auto& pair) { return pair.second.conditions.device != device; });
            return pairs;
        };
        NoiseGroup group{.lift = value, .device = device};
        for (const auto& each : names)
            if (each.id == device)
                group.deviceName = each.value.name;
        // Kept with the context; without a device it stands for any device there.
        group.noise = level == contextLevel && (device || devices.size() == 1)
                          ? noiseOf(context, device)
                          : answers::liftNoise(value, answers::chooseMvt(value, {}),
                                               measured(context.repeats), level);
        const stats::RepeatSums all = answers::repeatSums(measured(context.repeats));
        group.inUse = answers::chooseDayNoise({}, all, publishedDayNoise(value));
        groups.push_back(group);
        if (!about)
            continue;
        const auto own = measured(answers::repeatPairs(about->sessions));
        if (own.empty())
            continue;
        group.athlete = about->athlete.value.name;
        group.noise = answers::liftNoise(value, about->mvt, own, level);
        const stats::RepeatSums ofOwn = answers::repeatSums(own);
        group.inUse = answers::chooseDayNoise(ofOwn, all.without(ofOwn), publishedDayNoise(value));
        groups.push_back(std::move(group));
    }
    return groups;
}

std::vector<std::pair<DeviceId, DeviceId>> devicesCompared(const LiftContext& context) {
    std::set<DeviceId> devices;
    for (const LiftSession& session : context.twoDevices)
        devices.insert(*session.conditions.device);
    std::vector<std::pair<DeviceId, DeviceId>> pairs;
    for (auto first = devices.begin(); first != devices.end(); ++first)
        for (auto second = std::next(first); second != devices.end(); ++second)
            if (!answers::devicePairs(context.twoDevices, *first, *second).empty())
                pairs.emplace_back(*first, *second);
    return pairs;
}

Answer<answers::AgreementStudy> agreementOf(const LiftContext& context, DeviceId first,
                                            DeviceId second, double level) {
    return answers::agreementStudy(first, second,
                                   answers::devicePairs(context.twoDevices, first, second), level);
}

Answer<answers::AgreementStudy> agreementOf(const log::Log& log, LiftId lift, DeviceId first,
                                            DeviceId second, double level) {
    return agreementOf(liftContext(log, lift), first, second, level);
}

answers::ComparisonSettings comparisonSettings(const LiftContext& context, const Background& about,
                                               const LiftSession& from, const LiftSession& to,
                                               const AskSettings& settings) {
    answers::SmallestChanges smallest = context.smallest;
    if (!smallest.oneRm) // what is left is a published percentage of the earlier estimate
        if (const auto earlier = profileOf(about, from, settings); earlier && earlier->oneRm)
            smallest.oneRm =
                answers::smallestChanges(context.lift.value, {}, earlier->oneRm->estimate).oneRm;
    const auto device =
        from.conditions.device == to.conditions.device ? to.conditions.device : std::nullopt;
    answers::ComparisonSettings made{.level = settings.level,
                                     .variances = settings.variances,
                                     .checkLoads = about.checkLoads,
                                     .dayNoise = dayNoiseOf(context, about, device),
                                     .bend = about.bend,
                                     .smallestVelocity = std::move(smallest.velocity),
                                     .smallestAt = std::move(smallest.at),
                                     .smallestOneRm = std::move(smallest.oneRm),
                                     .devices = context.devices};
    correctDevices(context, from, to, made);
    return made;
}

std::map<SessionId, answers::DeviceBias> biasesAgainst(const LiftContext& context,
                                                       const LiftSession& baseline,
                                                       std::span<const LiftSession> sessions,
                                                       double level) {
    std::map<SessionId, answers::DeviceBias> biases;
    std::map<DeviceId, std::vector<answers::DevicePair>> pairs;
    for (const LiftSession& session : sessions) {
        if (!baseline.conditions.device || !session.conditions.device ||
            session.conditions.device == baseline.conditions.device)
            continue;
        if (!pairs.contains(*session.conditions.device))
            pairs[*session.conditions.device] = answers::devicePairs(
                context.twoDevices, *baseline.conditions.device, *session.conditions.device);
        const auto study = studyBeside(pairs[*session.conditions.device], baseline, session, level);
        if (study && *study)
            if (const auto bias =
                    answers::biasOf(**study, baseline.conditions.device, session.conditions.device))
                biases.emplace(session.session, *bias);
    }
    return biases;
}

Answer<answers::Follow> followOf(const log::Log& log, const LiftContext& context,
                                 const Background& about, Mass load,
                                 std::optional<SessionId> baseline, const AskSettings& settings) {
    const auto& sessions = about.sessions;
    const auto isBaseline = [&](const LiftSession& session) {
        return baseline ? session.session == *baseline : bool(profileOf(about, session, settings));
    };
    const auto base = std::ranges::find_if(sessions, isBaseline);
    if (base == sessions.end())
        return NoAnswer{NoAnswer::Why::NoBaseline,
                        baseline ? say("The baseline session does not hold this lift.")
                                 : say("No session of this lift has a line to start from.")};
    // Of one device against itself: what other devices read is told apart for each.
    auto with = comparisonSettings(context, about, *base, *base, settings);
    with.asManyReps = asManyReps(log, about.lift.value);
    auto follow =
        answers::follow(about.lift.value, about.mvt, sessions, load,
                        static_cast<std::size_t>(base - sessions.begin()), with, settings.plateStep,
                        biasesAgainst(context, *base, sessions, settings.level));
    if (follow)
        takeMaxima(*follow, context, about, settings);
    return follow;
}

Answer<answers::Squad> squadOf(const log::Log& log, LiftId lift, const answers::Period& from,
                               const answers::Period& to, const std::vector<Mass>& loads,
                               const AskSettings& settings, const Progress& progress) {
    tell(progress, 0, 1000);
    return squadOf(log, liftContext(log, lift), from, to, loads, settings, progress);
}

Answer<answers::Squad> squadOf(const log::Log& log, const LiftContext& context,
                               const answers::Period& from, const answers::Period& to,
                               const std::vector<Mass>& loads, const AskSettings& settings,
                               const Progress& progress) {
    const std::vector<answers::SquadMember> members =
        squadMembers(log, context, from, to, progress);
    std::set<AthleteId> seen;
    const auto compared = [&seen](AthleteId athlete) {
        seen.insert(athlete);
        return static_cast<std::int64_t>(seen.size()) - 1;
    };
    const auto count = static_cast<std::int64_t>(std::max<std::size_t>(members.size(), 1));
    const auto aboutOf = [&](const answers::SquadMember& member) {
        return Background{.athlete = {member.athlete, {.name = member.name}},
                          .lift = context.lift,
                          .sessions = member.sessions,
                          .mvt = member.mvt,
                          .checkLoads = member.checkLoads,
                          .bend = answers::bendOf(context.lift.value, member.mvt, member.sessions)};
    };
    const answers::SettingsOf settingsOf = [&](const answers::SquadMember& member,
                                               const LiftSession& first,
                                               const LiftSession& second) {
        tell(progress, 500 + compared(member.athlete) * 500 / count, 1000);
        auto with = comparisonSettings(context, aboutOf(member), first, second, settings);
        with.asManyReps = asManyReps(log, context.lift.value);
        return with;
    };
    Background ofMember; // of the one who is compared, whom the settings of blocks ask
    const answers::BlockSettingsOf ofBlocks = [&](const answers::SquadMember& member,
                                                  const LiftSession& first,
                                                  const LiftSession& second) {
        tell(progress, 500 + compared(member.athlete) * 500 / count, 1000);
        ofMember = aboutOf(member);
        return blockSettings(log, context, ofMember, first, second, settings);
    };
    return answers::squadChange(context.lift.value, members, from, to, loads, settingsOf,
                                settings.level, ofBlocks);
}

} // namespace slopebook::questions
