// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/testcontext.h"

#include "core/model/phrases/answers.h"

namespace slopebook::answers {

std::string_view word(ContextChange::Of what) {
    switch (what) {
    case ContextChange::Of::Surface:
        return "surface";
    case ContextChange::Of::Device:
        return "device";
    case ContextChange::Of::Footwear:
        return "footwear";
    case ContextChange::Of::Technique:
        break;
    }
    return "technique";
}

Words changeWords(const ContextChange& change) {
    switch (change.what) {
    case ContextChange::Of::Surface:
        return say("surface: %1, then %2", change.before, change.after);
    case ContextChange::Of::Device:
        return say("device: %1, then %2", change.before, change.after);
    case ContextChange::Of::Footwear:
        return say("footwear: %1, then %2", change.before, change.after);
    case ContextChange::Of::Technique:
        break;
    }
    return say("technique: %1, then %2", change.before, change.after);
}

std::vector<ContextChange> contextChanges(const TestContext& before, const TestContext& after) {
    using Of = ContextChange::Of;
    std::vector<ContextChange> changes;
    const auto look = [&](Of what, const std::string& a, const std::string& b) {
        if (!a.empty() && !b.empty() && a != b)
            changes.push_back({what, a, b});
    };
    look(Of::Surface, before.surface, after.surface);
    look(Of::Device, before.device, after.device);
    look(Of::Footwear, before.footwear, after.footwear);
    look(Of::Technique, before.technique, after.technique);
    return changes;
}

Words contextNote(const ContextChange& change) {
    switch (change.what) {
    case ContextChange::Of::Surface:
        return say("The surface changed (%1, then %2): a difference may be its doing. Tests over "
                   "that change are marked.",
                   change.before, change.after);
    case ContextChange::Of::Device:
        return say("The device changed (%1, then %2): a difference may be its doing. Tests over "
                   "that change are marked.",
                   change.before, change.after);
    case ContextChange::Of::Footwear:
        return say("The footwear changed (%1, then %2): a difference may be its doing. Tests over "
                   "that change are marked.",
                   change.before, change.after);
    case ContextChange::Of::Technique:
        break;
    }
    return say("The technique changed (%1, then %2): a difference may be its doing. Tests over "
               "that change are marked.",
               change.before, change.after);
}

} // namespace slopebook::answers
