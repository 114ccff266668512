// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/conditionchange.h"

#include "core/model/phrases/answers.h"

#include <algorithm>
#include <utility>

namespace slopebook::answers {

namespace {

/// Everything that is said of one kind of condition.
struct Saying {
    ConditionChange::Of what;
    std::string_view word;
    Phrase change, note, under;
};
using Of = ConditionChange::Of;
constexpr Saying sayings[]{
    {Of::Surface, "surface", "surface: %1, then %2",
     "the surface changed (%1, then %2): part of the change may be its doing",
     "on another surface"},
    {Of::Device, "device", "device: %1, then %2",
     "the device changed (%1, then %2): part of the change may be its doing", "by another device"},
    {Of::Footwear, "footwear", "footwear: %1, then %2",
     "the footwear changed (%1, then %2): part of the change may be its doing",
     "in other footwear"},
    {Of::Place, "place", "place: %1, then %2",
     "the place changed (%1, then %2): part of the change may be its doing", "at another place"},
    {Of::Technique, "technique", "technique: %1, then %2",
     "the technique changed (%1, then %2): part of the change may be its doing",
     "by another technique"},
};

const Saying& sayingOf(Of what) {
    return *std::ranges::find(sayings, what, &Saying::what);
}

std::string deviceName(const std::optional<DeviceId>& id, Devices devices) {
    if (!id)
        return {};
    const auto held = std::ranges::find(devices, *id, &Stored<DeviceId, Device>::id);
    return held == devices.end() ? std::to_string(raw(*id)) : held->value.name;
}

} // namespace

std::string_view word(ConditionChange::Of what) {
    return sayingOf(what).word;
}

Words changeWords(const ConditionChange& change) {
    return say(sayingOf(change.what).change, change.before, change.after);
}

Words conditionNote(const ConditionChange& change) {
    return say(sayingOf(change.what).note, change.before, change.after);
}

std::vector<ConditionChange> conditionChanges(const Conditions& before, const Conditions& after,
                                              Devices devices) {
    std::vector<ConditionChange> changes;
    const auto look = [&](Of what, const std::string& a, const std::string& b) {
        if (!a.empty() && !b.empty() && a != b)
            changes.push_back({what, a, b});
    };
    look(Of::Surface, before.surface, after.surface);
    look(Of::Device, deviceName(before.device, devices), deviceName(after.device, devices));
    look(Of::Footwear, before.footwear, after.footwear);
    look(Of::Place, before.place, after.place);
    look(Of::Technique, before.technique, after.technique);
    return changes;
}

Words underWords(std::span<const ConditionChange> changes) {
    Words all;
    for (const ConditionChange& change : changes) {
        const Words one = say(sayingOf(change.what).under);
        all = all.empty() ? one : say("%1, %2", all, one);
    }
    return all;
}

Words notComparableWords(const Conditions& before, const Conditions& after) {
    if (!before.notComparable.empty() && !after.notComparable.empty() &&
        before.notComparable != after.notComparable)
        return say("%1, %2", before.notComparable, after.notComparable);
    return asIs(before.notComparable.empty() ? after.notComparable : before.notComparable);
}

Under underOf(const Conditions& before, const Conditions& after, Devices devices,
              bool biasTakenOff) {
    Under under{.changes = conditionChanges(before, after, devices),
                .notComparable = notComparableWords(before, after)};
    const auto device = std::ranges::find(under.changes, Of::Device, &ConditionChange::what);
    if (device == under.changes.end())
        return under;
    if (biasTakenOff)
        under.changes.erase(device);
    else if (under.notComparable.empty())
        under.notComparable = say("measured by another device (%1, then %2), and no study says how "
                                  "the two differ",
                                  device->before, device->after);
    return under;
}

} // namespace slopebook::answers
