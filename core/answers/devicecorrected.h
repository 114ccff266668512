// SPDX-License-Identifier: GPL-3.0-or-later
// A session as the other device would have seen it.
#pragma once

#include "core/model/session.h"

namespace slopebook::answers {

/// The session with a device's bias, m/s, taken off every speed.
inline LiftSession withBiasOff(LiftSession session, double bias) {
    for (Point& point : session.points)
        point.velocity -= bias;
    return session;
}

} // namespace slopebook::answers
