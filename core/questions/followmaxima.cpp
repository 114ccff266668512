// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/followmaxima.h"

#include "core/questions/liftcontext.h"

#include <map>

namespace slopebook::questions {

void takeMaxima(answers::Follow& follow, const LiftContext& context, const Background& about,
                const AskSettings& settings) {
    std::map<std::optional<DeviceId>, Background> onDevice;
    for (answers::Followed& followed : follow.sessions) {
        const auto device = followed.session.conditions.device;
        auto whole = onDevice.find(device);
        if (whole == onDevice.end())
            whole = onDevice.emplace(device, within(context, about, device)).first;
        const auto found = profileOf(whole->second, followed.session, settings);
        followed.oneRm = found ? found->oneRm : Answer<answers::OneRm>(found.why());
    }
}

} // namespace slopebook::questions
